package rigbrief.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected values by hand; the normal distribution's from any printed table. */
class CalculatorTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1 + 2 x 3; 7",
                "2 x 3^2; 18",
                "(1 + 2) x -3; -9",
                "8 - 3 - 2; 3",
                "100 / 5 / 4; 5",
                "max(1, sqrt(16)); 4",
                "10 x log10(10^(30/10) + 10^(30/10)); 33.0103",
                "normal(1.96); 0.9750",
                "normal(-1); 0.1587",
                "floor(2.9) + ln(1); 2"
            })
    void an_expression_is_worked_out_by_the_usual_precedence(String expression, double value) {
        assertThat(Calculator.of(expression)).isCloseTo(value, within(1e-4));
    }
}
