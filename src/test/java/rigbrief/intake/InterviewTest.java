package rigbrief.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.BriefWriter;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Drive;
import rigbrief.part.Plug;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.part.Tally;

class InterviewTest {
    private static final Catalogue CATALOGUE = sample();

    private static Catalogue sample() {
        try {
            return CatalogueReader.read(Path.of("catalog-sample"));
        } catch (BadInput e) {
            throw new IllegalStateException(e);
        }
    }

    private static Interview interview() {
        return new Interview("brief", CATALOGUE, brief -> new Least.Unknown());
    }

    private static String say(Interview interview, String line) throws NotUnderstood {
        return interview.answer(interview.question().orElseThrow(), line).consequence().toString();
    }

    private static Interview upTo(String question, Map<String, String> told) throws NotUnderstood {
        Interview interview = interview();
        Question next = interview.question().orElseThrow();
        while (!next.id().equals(question)) {
            interview.answer(next, told.getOrDefault(next.id(), usual(next)));
            next = interview.question().orElseThrow();
        }
        return interview;
    }

    private static String usual(Question question) {
        return question.usual().isEmpty() ? "1500" : question.usual();
    }

    /** Any answers that are offered, and none other, make a brief that the reader takes whole. */
    @Property(tries = 150)
    void any_answers_make_a_brief_that_reads_back_as_it_was_written(@ForAll long seed)
            throws NotUnderstood, BadInput {
        Random random = new Random(seed);
        Interview interview = interview();
        Map<String, String> typed = new LinkedHashMap<>();

        for (Optional<Question> next = interview.question();
                next.isPresent();
                next = interview.question()) {
            String line = anything(next.get(), random);
            typed.put(next.get().id(), line);
            interview.answer(next.get(), line);
        }

        Brief brief = interview.brief();
        assertThat(read(BriefWriter.write(brief))).as("answers %s", typed).isEqualTo(brief);
        Interview again = interview();
        again.resume(interview.answers());
        assertThat(again.brief()).isEqualTo(brief);
    }

    private static Brief read(String text) throws BadInput {
        Brief read =
                BriefReader.read(
                        new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                        "-",
                        CATALOGUE);
        return new BriefDraft(read).name("brief").toBrief();
    }

    private static String anything(Question question, Random random) {
        if (question.several() && random.nextBoolean() && !question.choices().isEmpty()) {
            List<String> words = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                words.add(question.choices().get(random.nextInt(question.choices().size())).word());
            }
            return String.join(", ", words);
        }
        if (!question.choices().isEmpty() && random.nextInt(4) > 0) {
            // The fastest step is beyond what some games ever draw.
            int most = question.id().startsWith("smoothness") ? 3 : question.choices().size();
            return Integer.toString(1 + random.nextInt(most));
        }
        if (question.id().equals("parts-kept") && random.nextBoolean()) {
            return question.names().get(random.nextInt(question.names().size()));
        }
        return usual(question);
    }

    @Test
    void the_least_money_is_not_spoken_of_before_it_is_known_what_will_run() throws NotUnderstood {
        Interview interview = interview();
        say(interview, "Fenwick");
        say(interview, "1");

        assertThat(interview.least()).isEmpty();
        say(interview, "none");
        assertThat(interview.least()).isPresent();
    }

    @Test
    void back_offers_what_was_said_and_forgets_nothing_behind_it() throws NotUnderstood {
        Interview interview = interview();
        say(interview, "Fenwick");
        say(interview, "4");
        say(interview, "1, 2");
        interview.back();
        interview.back();

        say(interview, "5");

        assertThat(interview.brief().quantity()).isEqualTo(5);
        assertThat(interview.question().orElseThrow().usual())
                .isEqualTo("harbour-of-glass, tallow-and-thorn");
    }

    @Test
    void back_at_the_first_question_stays_there() {
        Interview interview = interview();

        assertThat(interview.back()).isFalse();
        assertThat(interview.question().orElseThrow().id()).isEqualTo("client");
    }

    @Test
    void questions_come_only_where_the_answers_before_call_for_them() throws NotUnderstood {
        Interview interview = upTo("write", Map.of("screen", "unknown"));

        assertThat(interview.answers().keySet())
                .doesNotContain("picture", "sockets", "noise-is-a-must", "colour-is-a-must", "fee")
                .noneMatch(id -> id.startsWith("smoothness"));
    }

    @Test
    void a_game_left_as_usual_is_held_at_no_settings_of_its_own() throws NotUnderstood {
        Interview interview = upTo("write", Map.of("workloads", "skirl"));

        var need = interview.brief().workloads().get(0);
        assertThat(need.settings().preset()).isEmpty();
        assertThat(need.must().orElseThrow().averageFps()).hasValue(60);
        assertThat(need.must().orElseThrow().lowFps()).hasValue(40);
        assertThat(need.wish().orElseThrow().averageFps()).hasValue(90);
    }

    @Test
    void rates_of_ones_own_may_be_typed() throws NotUnderstood {
        Interview interview =
                upTo("write", Map.of("workloads", "skirl", "smoothness skirl", "72/50"));

        var must = interview.brief().workloads().get(0).must().orElseThrow();
        assertThat(must.averageFps()).hasValue(72);
        assertThat(must.lowFps()).hasValue(50);
    }

    @Test
    void a_rate_beyond_what_a_game_ever_draws_is_refused_with_that_limit() throws NotUnderstood {
        Interview interview =
                upTo("smoothness harbour-of-glass", Map.of("workloads", "harbour-of-glass"));

        assertThat(refusal(interview, "400"))
                .isEqualTo(
                        "found \"400\", expected at most 300 pictures a second, all that this game"
                                + " ever draws; choose fewer");
    }

    private static String refusal(Interview interview, String line) {
        try {
            return say(interview, line);
        } catch (NotUnderstood e) {
            return e.getMessage();
        }
    }

    @Test
    void a_rate_the_screen_can_not_show_is_taken_and_told_of() throws NotUnderstood {
        Interview interview = upTo("smoothness skirl", Map.of("workloads", "skirl"));

        assertThat(say(interview, "fluid")).endsWith("The screen shows 60 of them at most.");
    }

    @Test
    void part_of_a_name_will_do_where_it_is_plain_which_part_is_meant() throws NotUnderstood {
        Interview interview = upTo("parts-kept", Map.of());

        assertThat(refusal(interview, "glimmerhythe"))
                .startsWith("found \"glimmerhythe\", expected the name of a part; type more of");
        assertThat(say(interview, "Pane 32 Fine"))
                .isEqualTo("Glimmerhythe Pane 32 Fine will be used and not paid for.");
        assertThat(interview.brief().keep()).hasSize(1);
    }

    @Test
    void more_of_a_kind_than_a_computer_has_places_for_is_refused() throws NotUnderstood {
        Interview interview = upTo("parts-kept", Map.of());

        assertThat(refusal(interview, "glimmerhythe-pane-24, glimmerhythe-pane-27"))
                .contains("expected no further display");
    }

    @Test
    void the_count_of_questions_to_come_falls_to_one_at_the_last() throws NotUnderstood {
        Interview interview = interview();
        int before = interview.remaining();
        say(interview, "Fenwick");

        assertThat(interview.remaining()).isEqualTo(before - 1);
        assertThat(upTo("write", Map.of()).remaining()).isEqualTo(1);
    }

    @Test
    void kept_answers_that_no_longer_fit_are_asked_again() {
        Interview interview = interview();

        int count = interview.resume(Map.of("client", "Fenwick", "quantity", "dozens"));

        assertThat(count).isEqualTo(1);
        assertThat(interview.question().orElseThrow().usual()).isEqualTo("1");
    }

    @Test
    void every_question_explains_itself_and_every_answer_says_what_follows() throws NotUnderstood {
        Interview interview = interview();
        Map<String, String> told =
                Map.of(
                        "workloads", "harbour-of-glass, kiln-drafting, glaze-archive",
                        "picture-settings", "each",
                        "noise", "quiet",
                        "colour", "white",
                        "more-figures", "yes");

        for (Optional<Question> next = interview.question();
                next.isPresent();
                next = interview.question()) {
            Question question = next.get();
            assertThat(question.explanation().toString())
                    .as(question.id())
                    .hasSizeGreaterThan(30)
                    .endsWith(".");
            Answer answer =
                    interview.answer(question, told.getOrDefault(question.id(), usual(question)));
            assertThat(answer.consequence().toString()).as(question.id()).isNotBlank();
        }
    }

    @Test
    void the_client_s_country_sets_the_mains_voltage_and_the_manner_of_writing()
            throws NotUnderstood {
        Interview interview = upTo("language", Map.of("more-figures", "yes"));

        assertThat(refusal(interview, "tlhIngan")).contains("expected a language and a country");
        assertThat(say(interview, "en-US")).contains("115 volts");
        assertThat(interview.brief().locale()).isEqualTo(java.util.Locale.US);
        assertThat(interview.brief().place().mainsV()).isEqualTo(115);
    }

    /** The figures are those typed; what was not asked is as a brief leaves it. */
    @Test
    void a_part_that_no_catalogue_knows_is_kept_by_the_figures_on_its_label()
            throws NotUnderstood, BadInput {
        Map<String, String> told =
                Map.of(
                        "parts-kept", "other supply, other drive",
                        "own-supply-name", "Grindlewick Pendulum 750",
                        "own-supply-watts", "750",
                        "own-supply-length", "160 mm",
                        "own-supply-efficiency", "gold",
                        "own-supply-8pin", "3",
                        "own-drive-name", "Slatecombe Ledger 2",
                        "own-drive-sort", "disk",
                        "own-drive-gb", "4000");
        Interview interview = upTo("makers-avoided", told);

        List<Kept> kept = interview.brief().keep();
        assertThat(kept).extracting(Kept::slot).containsExactly(Slot.SUPPLY, Slot.SECOND_DRIVE);
        Supply supply = (Supply) kept.get(0).part();
        assertThat(supply.watts()).isEqualTo(750);
        assertThat(supply.name()).isEqualTo("Grindlewick Pendulum 750");
        assertThat(supply.plugs().or(Tally.none()).of(Plug.PCIE8)).isEqualTo(3);
        assertThat(((Drive) kept.get(1).part()).capacityGb()).isEqualTo(4_000);
        assertThat(read(BriefWriter.write(interview.brief())).keep()).isEqualTo(kept);
    }

    @Test
    void going_back_over_an_own_part_forgets_it_and_its_answers_can_be_resumed()
            throws NotUnderstood {
        Interview interview = upTo("makers-avoided", Map.of("parts-kept", "other drive"));
        Map<String, String> answers = Map.copyOf(interview.answers());
        assertThat(interview.brief().keep()).hasSize(1);

        interview.back();
        assertThat(interview.question().orElseThrow().id()).isEqualTo("own-drive-gb");
        assertThat(interview.brief().keep()).isEmpty();
        Interview again = interview();
        again.resume(answers);

        assertThat(again.question().orElseThrow().id()).isEqualTo("makers-avoided");
        assertThat(again.brief().keep()).hasSize(1);
    }

    @Test
    void the_builder_may_set_the_room_and_ask_for_memory_that_corrects_errors()
            throws NotUnderstood {
        Interview interview =
                upTo(
                        "ceiling",
                        Map.of(
                                "more-figures", "yes",
                                "room-temperature", "31.5",
                                "memory-ecc", "yes"));

        assertThat(interview.brief().place().roomC()).isEqualTo(31.5);
        assertThat(interview.brief().memory().ecc()).isTrue();
    }
}
