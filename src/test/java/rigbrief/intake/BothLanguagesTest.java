package rigbrief.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.BriefWriter;
import rigbrief.file.CatalogueReader;
import rigbrief.report.InterviewText;
import rigbrief.report.Style;
import rigbrief.wording.Texts;
import rigbrief.wording.Untold;

/** The interview in each language: nothing said that is in no bundle, the same briefs written. */
class BothLanguagesTest {
    /** Three interviews that come by every question there is. */
    private static final List<Map<String, String>> TOLD =
            List.of(
                    Map.of(
                            "quantity", "3",
                            "workloads", "harbour-of-glass, kiln-drafting, glaze-archive",
                            "picture-settings", "each",
                            "noise", "quiet",
                            "colour", "white",
                            "parts-kept", "other supply, other drive",
                            "more-figures", "yes",
                            "days-to-wait", "12",
                            "shops", "2"),
                    Map.of("screen", "buy", "workloads", "kiln-drafting"),
                    Map.of("screen", "unknown"));

    /**
     * The usual names of parts that nobody can name stand in the brief; labels of efficiency are
     * trade marks; the country's name is Unicode's; steps of pictures are the game's own.
     */
    private static final List<String> DATA =
            List.of(
                    "Unknown supply",
                    "Unknown drive",
                    "80 PLUS Bronze",
                    "80 PLUS Silver",
                    "80 PLUS Gold",
                    "80 PLUS Platinum",
                    "80 PLUS Titanium",
                    "80 PLUS",
                    "Vereinigtes Königreich",
                    "balanced",
                    "medium",
                    "high",
                    "ultra");

    private static Catalogue catalogue;
    private static Untold untold;

    @BeforeAll
    static void read() throws Exception {
        catalogue = CatalogueReader.read(Path.of("catalog-sample"));
        untold = new Untold(catalogue);
    }

    private static Interview interview() {
        return new Interview("brief", catalogue, brief -> new Least.Unknown());
    }

    private static String usual(Question question) {
        return question.usual().isEmpty() ? "1500" : question.usual();
    }

    @Test
    void an_interview_says_nothing_that_is_in_no_bundle() throws NotUnderstood {
        Set<String> families = new LinkedHashSet<>();
        for (Map<String, String> told : TOLD) {
            StringBuilder said = new StringBuilder();
            InterviewText text = new InterviewText(Style.PLAIN, Untold.marking());
            Interview interview = interview();
            said.append(text.welcome("1.1")).append(text.reckoning());
            for (Optional<Question> next = interview.question();
                    next.isPresent();
                    next = interview.question()) {
                Question question = next.get();
                families.add(question.id().split(" ")[0]);
                said.append(text.question(question, 3, 4)).append(text.explanation(question));
                said.append(refusal(text, question));
                String line = told.getOrDefault(question.id(), usual(question));
                said.append(text.consequence(interview.answer(question, line).consequence()));
            }
            said.append(
                    new InterviewText(new Style(false, 160), Untold.marking())
                            .summary(interview.said(), Optional.empty()));
            String joined = said.toString().replaceAll("\\s+", " ");
            assertThat(untold.in(joined, DATA)).isEmpty();
        }
        assertThat(families).as("questions come by").isEqualTo(asked());
    }

    /** Every question that the bundles have a word for. */
    private static Set<String> asked() {
        Set<String> asked = new LinkedHashSet<>();
        for (String key : ResourceBundle.getBundle("rigbrief.words.intake", Locale.ROOT).keySet()) {
            if (key.startsWith("short.")) {
                asked.add(key.substring("short.".length()));
            }
        }
        return asked;
    }

    private static String refusal(InterviewText text, Question question) {
        try {
            question.reading().read("\u00a7\u00a7");
            return "";
        } catch (NotUnderstood refused) {
            return text.refusal(refused.told());
        }
    }

    /** What names one answer in one language names no other in any, as a word or a beginning. */
    @Test
    void whatever_is_shown_for_an_answer_may_be_typed_for_it_in_each_language() throws Exception {
        Map<String, String> mistaken = new TreeMap<>();
        int count = 0;
        for (Map<String, String> told : TOLD) {
            Interview interview = interview();
            for (Optional<Question> next = interview.question();
                    next.isPresent();
                    next = interview.question()) {
                Question question = next.get();
                for (Choice choice : question.choices()) {
                    for (Locale language : Texts.LANGUAGES) {
                        Texts texts = Texts.of(language);
                        InterviewText text = new InterviewText(Style.PLAIN, texts);
                        for (String typed :
                                List.of(texts.say(choice.label()), text.typed(choice))) {
                            Optional<String> taken =
                                    Entries.find(question.choices(), typed).map(Choice::word);
                            count++;
                            if (!taken.equals(Optional.of(choice.word()))) {
                                mistaken.put(
                                        question.id() + ": " + typed, taken.orElse("none alone"));
                            }
                        }
                    }
                }
                interview.answer(question, told.getOrDefault(question.id(), usual(question)));
            }
        }

        assertThat(mistaken).isEmpty();
        assertThat(count).isGreaterThan(500);
    }

    /** The same answers, as they are called in each language, make the same bytes. */
    @Test
    void the_words_of_either_language_write_the_same_brief() throws NotUnderstood {
        for (Map<String, String> told : TOLD) {
            List<String> briefs = new ArrayList<>();
            for (Locale language : Texts.LANGUAGES) {
                briefs.add(BriefWriter.write(called(told, Texts.of(language))));
            }
            assertThat(Set.copyOf(briefs)).as(told.toString()).hasSize(1);
        }
    }

    private static Brief called(Map<String, String> told, Texts texts) throws NotUnderstood {
        InterviewText text = new InterviewText(Style.PLAIN, texts);
        Interview interview = interview();
        for (Optional<Question> next = interview.question();
                next.isPresent();
                next = interview.question()) {
            Question question = next.get();
            String answer = told.getOrDefault(question.id(), usual(question));
            List<String> words = new ArrayList<>();
            for (String word : answer.split(", ")) {
                words.add(called(question, word, text, texts));
            }
            interview.answer(question, String.join(", ", words));
        }
        return interview.brief();
    }

    private static String called(Question question, String word, InterviewText text, Texts texts) {
        for (Choice choice : question.choices()) {
            if (choice.word().equals(word)) {
                return text.typed(choice);
            }
        }
        String key = "word." + word.replace(' ', '-');
        return texts.has(key) ? texts.text(key) : word;
    }

    @Test
    void a_time_may_be_typed_with_the_units_of_either_language() throws NotUnderstood {
        Map<String, String> same = new LinkedHashMap<>();
        same.put("90 Sekunden", "90s");
        same.put("5 Minuten", "5m");
        same.put("2 Stunden", "2h");
        same.put("1,5 Std", "1.5h");
        for (Map.Entry<String, String> each : same.entrySet()) {
            Interview interview = interview();
            Question next = interview.question().orElseThrow();
            while (!next.id().equals("time kiln-drafting")) {
                interview.answer(
                        next, next.id().equals("workloads") ? "kiln-drafting" : usual(next));
                next = interview.question().orElseThrow();
            }
            assertThat(interview.answer(next, each.getKey()).text()).isEqualTo(each.getValue());
        }
    }
}
