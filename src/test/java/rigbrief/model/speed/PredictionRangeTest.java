package rigbrief.model.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;

class PredictionRangeTest {
    private static final PredictionRange RANGE = new PredictionRange(100, 0.1);

    /** By hand: 95 % two-sided is 1.959964 deviations, so 100 x exp(-+ 0.1959964). */
    @Test
    void both_ends_lie_the_same_ratio_away() {
        assertThat(RANGE.low(0.95)).isCloseTo(82.201, within(0.001));
        assertThat(RANGE.high(0.95)).isCloseTo(121.653, within(0.001));
        assertThat(RANGE.low(0)).isCloseTo(100, within(1e-9));
    }

    /** By hand: ln(100/90) / 0.1 = 1.0536 deviations, a chance of 0.854. */
    @Test
    void the_chance_of_a_must_follows_from_the_spread() {
        assertThat(RANGE.chanceOfAtLeast(100)).isCloseTo(0.5, within(1e-12));
        assertThat(RANGE.chanceOfAtLeast(90)).isCloseTo(0.854, within(0.0005));
        assertThat(RANGE.chanceOfAtMost(100)).isCloseTo(0.5, within(1e-12));
        assertThat(RANGE.chanceOfAtMost(90)).isCloseTo(0.146, within(0.0005));
    }

    @Test
    void without_a_spread_the_middle_decides() {
        var certain = new PredictionRange(100, 0);

        assertThat(certain.chanceOfAtLeast(100)).isEqualTo(1);
        assertThat(certain.chanceOfAtLeast(100.01)).isZero();
        assertThat(certain.chanceOfAtMost(100)).isEqualTo(1);
        assertThat(certain.chanceOfAtMost(99.99)).isZero();
        assertThat(certain.low(0.9)).isEqualTo(100);
        assertThat(certain.high(0.9)).isEqualTo(100);
    }

    @Test
    void a_spread_too_small_or_too_wide_to_be_true_gets_a_caution() {
        assertThat(PredictionRange.SIGMA.remark(0.001)).isPresent();
        assertThat(PredictionRange.SIGMA.remark(0.6)).isPresent();
        assertThat(PredictionRange.SIGMA.remark(0.1)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("middle", () -> new PredictionRange(0, 0.1));
        refused("sigma", () -> new PredictionRange(100, -0.1));
        refused("confidence", () -> RANGE.low(1.1));
        refused("1 - share", () -> RANGE.high(1));
        refused("required", () -> RANGE.chanceOfAtLeast(0));
        refused("allowed", () -> RANGE.chanceOfAtMost(0));
    }

    /** Reference: commons-math3. */
    @Property(tries = 500)
    void chances_are_those_of_a_lognormal_distribution(
            @ForAll @DoubleRange(min = 10, max = 300) double required,
            @ForAll @DoubleRange(min = 0.02, max = 0.4) double sigma) {
        var range = new PredictionRange(100, sigma);
        var reference = new LogNormalDistribution(Math.log(100), sigma);
        double below = reference.cumulativeProbability(required);

        assertThat(range.chanceOfAtMost(required)).isCloseTo(below, within(1e-12));
        assertThat(range.chanceOfAtLeast(required)).isCloseTo(1 - below, within(1e-12));
    }

    @Property(tries = 300)
    void the_truth_is_within_both_ends_as_often_as_said(
            @ForAll @DoubleRange(min = 0.02, max = 0.4) double sigma,
            @ForAll @DoubleRange(min = 0.05, max = 0.99) double confidence) {
        var range = new PredictionRange(100, sigma);
        double chance =
                range.chanceOfAtMost(range.high(confidence))
                        - range.chanceOfAtMost(range.low(confidence));

        assertThat(chance).isCloseTo(confidence, within(1e-9));
    }
}
