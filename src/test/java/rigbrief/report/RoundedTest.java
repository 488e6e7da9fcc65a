package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundedTest {

    @Test
    void a_figure_is_rounded_half_up_and_keeps_its_decimals() {
        assertThat(Rounded.to(1, 63)).contains(new BigDecimal("63.0"));
        assertThat(Rounded.to(1, 71.25)).contains(new BigDecimal("71.3"));
        assertThat(Rounded.to(0, -0.5)).contains(new BigDecimal("-1"));
    }

    @Test
    void what_is_no_figure_is_printed_as_a_dash() {
        assertThat(Rounded.to(1, Double.NaN)).isEmpty();
        assertThat(Rounded.to(1, Double.POSITIVE_INFINITY)).isEmpty();
        assertThat(Rounded.print(1, Double.MAX_VALUE / 1e6, " s")).isEqualTo("-");
    }

    @ParameterizedTest
    @CsvSource({"60, 60", "59.94, 59.94", "1.50, 1.5", "100, 100", "0, 0"})
    void what_was_asked_is_printed_with_no_more_decimals_than_it_needs(double asked, String text) {
        assertThat(Rounded.asAsked(asked).toPlainString()).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.0", "0.0001, 0.1", "1.21, 1.3", "1.3, 1.3"})
    void a_gap_that_exists_is_never_printed_as_nought(double percent, String text) {
        assertThat(Rounded.gap(1, new BigDecimal(Double.toString(percent)).doubleValue()))
                .hasValueSatisfying(
                        gap ->
                                assertThat(gap)
                                        .isBetween(
                                                new BigDecimal(text),
                                                new BigDecimal(text).add(new BigDecimal("0.1"))));
    }

    @Test
    void a_gap_without_bound_has_no_number() {
        assertThat(Rounded.gap(1, Double.POSITIVE_INFINITY)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1, 100 %", "0.9999, > 99 %", "0.97, 97 %", "0.5, 50 %", "0.0099, < 1 %", "0, 0 %"})
    void a_chance_is_never_printed_as_certainty_that_is_not_there(double chance, String text) {
        assertThat(Rounded.chance(chance)).isEqualTo(text);
    }
}
