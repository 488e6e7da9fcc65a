package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ExplanationTextTest {

    @Test
    void an_explanation_shows_formula_inputs_steps_and_source() {
        String text =
                text(ExplanationJsonTest.answer(ExplanationJsonTest.topic("heat.processor-c")));

        assertThat(text)
                .startsWith("heat.processor-c ")
                .contains("\nFormula\n", "\nInputs\n", "\nSteps\n", "\nSource\n")
                .contains("sustained_power_w");
    }

    @Test
    void no_line_is_wider_than_the_page() {
        assertThat(text(ExplanationJsonTest.answer(ExplanationJsonTest.topic("noise.load-dba"))))
                .satisfies(
                        text ->
                                assertThat(text.lines())
                                        .allMatch(line -> TextPage.length(line) <= TextPage.WIDTH));
    }

    @Test
    void without_a_number_the_names_are_listed() {
        String text = text(ExplanationJsonTest.names());

        assertThat(text).contains("power.sustained-w", "cost.total", "utility");
    }

    private static String text(ExplanationAnswer answer) {
        return new ExplanationText().write(answer, Style.PLAIN);
    }
}
