package rigbrief.rule.need;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WholeGbTest {
    @Test
    void amounts_are_rounded_up() {
        assertThat(WholeGb.of(11.2)).isEqualTo(12);
        assertThat(WholeGb.of(12)).isEqualTo(12);
    }

    @Test
    void a_binary_fraction_s_rounding_costs_no_gb() {
        assertThat(WholeGb.of(0.1 * 3 * 100)).isEqualTo(30);
    }
}
