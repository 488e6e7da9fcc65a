package rigbrief.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rigbrief.model.speed.PredictionRange;

class SurenessTest {
    private static final double CLOSE = 1e-9;

    /** Standard normal table: 80 % lie below 0.8416 deviations, and within 1.2816 of the mean. */
    @Test
    void at_80_percent_a_rate_of_100_with_a_spread_of_a_tenth_is_at_least_92() {
        Sureness sureness = new Sureness(0.1, 80);

        assertThat(sureness.atLeast(100)).isCloseTo(100 * Math.exp(-0.08416), within(0.01));
        assertThat(sureness.atMost(100)).isCloseTo(100 * Math.exp(0.08416), within(0.01));
        assertThat(sureness.low(100)).isCloseTo(100 * Math.exp(-0.12816), within(0.01));
        assertThat(sureness.high(100)).isCloseTo(100 * Math.exp(0.12816), within(0.01));
    }

    @Test
    void its_range_is_that_of_the_published_model() {
        Sureness sureness = new Sureness(0.07, 90);
        PredictionRange range = new PredictionRange(60, 0.07);

        assertThat(sureness.low(60)).isCloseTo(range.low(0.9), within(CLOSE));
        assertThat(sureness.high(60)).isCloseTo(range.high(0.9), within(CLOSE));
        assertThat(range.chanceOfAtLeast(sureness.atLeast(60))).isCloseTo(0.9, within(CLOSE));
    }
}
