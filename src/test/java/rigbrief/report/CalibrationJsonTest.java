package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CalibrationJsonTest {
    private static final Contract CONTRACT = Contract.of("calibration");

    @Test
    void a_calibration_keeps_the_contract() {
        assertThat(CONTRACT.broken(json(CalibrationAnswers.all()))).isEmpty();
    }

    @Test
    void a_calibration_by_few_measurements_keeps_the_contract() {
        String json = json(CalibrationAnswers.few());

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(json).contains("\"standing\" : \"held\"");
    }

    private static String json(CalibrationAnswer answer) {
        return new CalibrationJson().write(answer, Style.PLAIN);
    }
}
