package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CalibrationTextTest {

    @Test
    void errors_figures_machines_and_measurements_are_shown_in_this_order() {
        String text = text(CalibrationAnswers.all());

        assertThat(text)
                .startsWith("Calibration ")
                .containsSubsequence(
                        "360 measurements of 30 machines\n",
                        "\nHow far measured lies from predicted\n",
                        "\nWorkloads\n",
                        "\nDemands, as factors on the catalogue's\n",
                        "\nRates of parts, as factors on the catalogue's\n",
                        "\nMachines that run unlike their parts\n",
                        "  bench-05: its card runs ",
                        "  bench-19: its processor runs ",
                        "\nMeasurements that disagree with the others, and hardly counted\n",
                        "\nHow it was fitted\n",
                        "\nWritten\n  fitted/workloads.yaml\n");
    }

    @Test
    void what_can_not_be_told_apart_is_said_with_what_to_measure() {
        String text = text(CalibrationAnswers.few());

        assertThat(text)
                .contains("9 measurements of 1 machine\n")
                .contains("\nWhat these measurements can't say\n")
                .contains("Held: no other part ran the workloads that these ran")
                .contains("Measured in one machine alone");
    }

    @Test
    void no_line_is_wider_than_the_page() {
        assertThat(text(CalibrationAnswers.all()).lines())
                .allMatch(line -> TextPage.length(line) <= TextPage.WIDTH);
        assertThat(text(CalibrationAnswers.few()).lines())
                .allMatch(line -> TextPage.length(line) <= TextPage.WIDTH);
    }

    private static String text(CalibrationAnswer answer) {
        return new CalibrationText().write(answer, Style.PLAIN);
    }
}
