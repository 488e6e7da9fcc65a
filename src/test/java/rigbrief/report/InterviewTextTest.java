package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.intake.Choice;
import rigbrief.intake.Interview.Said;
import rigbrief.intake.Least;
import rigbrief.intake.Question;
import rigbrief.quantity.Money;
import rigbrief.wording.Phrase;
import rigbrief.wording.Texts;

class InterviewTextTest {
    private final InterviewText text = new InterviewText(Style.PLAIN, Texts.ENGLISH);

    private static Money euro(String amount) {
        return new Money(new BigDecimal(amount), Currency.getInstance("EUR"));
    }

    private static Question question(boolean several, String usual) {
        return new Question(
                "noise",
                Phrase.data("Noise"),
                Phrase.data("How loud may it be?"),
                Phrase.data("Decibels are explained here."),
                List.of(
                        new Choice(
                                "quiet",
                                Phrase.data("quiet, 33 dB(A)"),
                                Phrase.data("like a whisper")),
                        new Choice(
                                "any",
                                Phrase.data("no limit"),
                                Phrase.data("noise decides nothing"))),
                several,
                List.of(),
                usual,
                typed -> {
                    throw new IllegalStateException("not asked here");
                });
    }

    @Test
    void a_question_shows_its_answers_by_number_and_the_usual_one_by_its_label() {
        assertThat(text.question(question(false, "any"), 3, 5))
                .isEqualTo(
                        """

                        Noise                                                               3 of about 7
                        --------------------------------------------------------------------------------
                        How loud may it be?
                           1  quiet, 33 dB(A)  like a whisper
                           2  no limit         noise decides nothing
                        (Enter alone: no limit; ? explains, back goes back)
                        """);
    }

    @Test
    void several_usual_answers_are_shown_by_their_labels() {
        assertThat(text.question(question(true, "quiet, any"), 1, 1))
                .contains("1, the last\n")
                .contains("(Enter alone: quiet, 33 dB(A), no limit; ");
    }

    @Test
    void where_something_has_to_be_typed_no_usual_answer_is_named() {
        assertThat(text.question(question(false, ""), 1, 2))
                .endsWith("(? explains, back goes back)\n");
    }

    @Test
    void the_least_money_comes_with_what_changed() {
        Optional<Least> before = Optional.of(new Least.Known(euro("870.00")));

        assertThat(text.least(before, Optional.of(new Least.Known(euro("912.10")))))
                .isEqualTo("  = Least so far: EUR 912.10, EUR 42.10 more than before.\n");
        assertThat(text.least(before, Optional.of(new Least.Known(euro("800.00")))))
                .isEqualTo("  = Least so far: EUR 800.00, EUR 70.00 less than before.\n");
        assertThat(text.least(before, before)).isEmpty();
    }

    @Test
    void what_is_not_proven_or_not_known_is_said_to_be_so() {
        Least between = new Least.Between(euro("800.00"), euro("912.10"));

        assertThat(text.least(Optional.empty(), Optional.of(between)))
                .contains("at most EUR 912.10, not below EUR 800.00")
                .contains("before it knew");
        assertThat(text.least(Optional.empty(), Optional.of(new Least.Unknown())))
                .contains("not found out");
        assertThat(text.least(Optional.empty(), Optional.of(new Least.Impossible())))
                .contains("No computer in this catalogue");
    }

    @Test
    void the_summary_lists_each_answer_by_its_label_under_its_topic() {
        String summary =
                text.summary(
                        List.of(
                                new Said(question(false, "any"), "quiet"),
                                new Said(question(false, "any"), "any")),
                        Optional.of(new Least.Known(euro("870.00"))));

        assertThat(summary)
                .contains("  Noise  noise  quiet, 33 dB(A)\n         noise  no limit\n")
                .endsWith(
                        "  Least so far: EUR 870.00, the least money for a computer"
                                + " that does all you\n  said.\n");
    }

    @Test
    void nothing_out_of_a_file_acts_on_a_terminal() {
        assertThat(text.refusal(Phrase.data("found \u001b[2J")))
                .isEqualTo("  ! found \\u001B[2J\n");
        assertThat(text.consequence(Phrase.data("a\u202eb"))).doesNotContain("\u202e");
    }
}
