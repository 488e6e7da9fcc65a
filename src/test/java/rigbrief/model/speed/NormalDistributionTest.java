package rigbrief.model.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalDistributionTest {
    private static final org.apache.commons.math3.distribution.NormalDistribution REFERENCE =
            new org.apache.commons.math3.distribution.NormalDistribution();

    /** Source: the usual table of the normal distribution, from memory. */
    @ParameterizedTest
    @CsvSource({"0,0.5", "1,0.8413447", "1.959964,0.975", "2.326348,0.99", "-1.281552,0.1"})
    void printed_values_are_met(double z, double share) {
        assertThat(NormalDistribution.atMost(z)).isCloseTo(share, within(1e-7));
        assertThat(NormalDistribution.quantile(share)).isCloseTo(z, within(1e-6));
    }

    /** Reference: commons-math3. */
    @Property(tries = 2000)
    void the_chance_is_that_of_a_mathematics_library(
            @ForAll @DoubleRange(min = -38, max = 9) @Scale(6) double z) {
        double expected = REFERENCE.cumulativeProbability(z);

        assertThat(NormalDistribution.atMost(z)).isCloseTo(expected, within(1e-14));
        if (expected > 1e-300) {
            assertThat(NormalDistribution.atMost(z)).isCloseTo(expected, withinPercentage(1e-6));
        }
    }

    /** Reference: commons-math3. */
    @Property(tries = 2000)
    void the_quantile_is_that_of_a_mathematics_library(
            @ForAll @DoubleRange(min = 0.0001, max = 0.9999) @Scale(8) double share) {
        assertThat(NormalDistribution.quantile(share))
                .isCloseTo(REFERENCE.inverseCumulativeProbability(share), within(1e-10));
    }

    /** Reference: commons-math3. */
    @Property(tries = 500)
    void the_density_is_that_of_a_mathematics_library(
            @ForAll @DoubleRange(min = -10, max = 10) double z) {
        assertThat(NormalDistribution.density(z)).isCloseTo(REFERENCE.density(z), within(1e-15));
    }

    @Property(tries = 500)
    void chance_and_quantile_are_each_other_s_inverse(
            @ForAll @DoubleRange(min = 0.0001, max = 0.9999) @Scale(6) double share) {
        assertThat(NormalDistribution.atMost(NormalDistribution.quantile(share)))
                .isCloseTo(share, within(1e-13));
    }

    @Test
    void far_tails_end_at_nothing_and_at_certainty() {
        assertThat(NormalDistribution.atMost(-39)).isZero();
        assertThat(NormalDistribution.atMost(39)).isEqualTo(1);
        assertThat(NormalDistribution.atMost(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(NormalDistribution.atMost(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(NormalDistribution.atMost(-37.5)).isPositive();
    }

    /** Reference: commons-math3, at the two places where one approximation follows another. */
    @ParameterizedTest
    @CsvSource({"0.02425", "0.02424999", "0.02425001", "0.97575", "0.5", "0.50000001", "0.000001"})
    void approximations_join_without_a_step(double share) {
        assertThat(NormalDistribution.quantile(share))
                .isCloseTo(REFERENCE.inverseCumulativeProbability(share), within(1e-10));
    }

    @Test
    void nonsense_is_refused() {
        refused("z", () -> NormalDistribution.atMost(Double.NaN));
        refused("share", () -> NormalDistribution.quantile(0));
        refused("1 - share", () -> NormalDistribution.quantile(1));
        refused("share", () -> NormalDistribution.quantile(Double.NaN));
    }
}
