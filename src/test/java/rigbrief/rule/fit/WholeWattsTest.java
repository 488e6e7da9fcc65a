package rigbrief.rule.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WholeWattsTest {
    @Test
    void loads_are_rounded_up_and_allowances_down() {
        assertThat(WholeWatts.load(430.2)).isEqualTo(431);
        assertThat(WholeWatts.given(1_147.5)).isEqualTo(1_147);
    }

    @Test
    void a_binary_fraction_s_rounding_costs_no_watt() {
        assertThat(WholeWatts.load(0.1 * 3 * 100)).isEqualTo(30);
        assertThat(WholeWatts.given(29.9999999999)).isEqualTo(30);
    }
}
