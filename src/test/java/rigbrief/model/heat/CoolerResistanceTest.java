package rigbrief.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CoolerResistanceTest {

    /** By hand: 0.2 / sqrt(0.25); the square root is that of laminar flow along a plate. */
    @Test
    void a_quarter_of_the_speed_doubles_the_resistance() {
        assertThat(CoolerResistance.atSpeed(0.2, 1)).isEqualTo(0.2);
        assertThat(CoolerResistance.atSpeed(0.2, 0.25)).isCloseTo(0.4, within(1e-12));
    }

    /** By hand: (0.2 / 0.4)². */
    @Test
    void half_the_resistance_asks_for_four_times_the_speed() {
        assertThat(CoolerResistance.speedFor(0.2, 0.4)).isCloseTo(0.25, within(1e-12));
        assertThat(CoolerResistance.speedFor(0.2, 0.1)).isCloseTo(4, within(1e-12));
    }

    @Test
    void no_speed_reaches_a_resistance_of_nothing() {
        assertThat(CoolerResistance.speedFor(0.2, 0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(CoolerResistance.speedFor(0, 0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(CoolerResistance.speedFor(0.2, -1)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(CoolerResistance.speedFor(0.2, Double.NaN)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void a_part_without_heat_needs_no_speed() {
        assertThat(CoolerResistance.speedFor(0.2, Double.POSITIVE_INFINITY)).isZero();
    }

    @Test
    void a_fan_slower_than_planned_gets_a_caution() {
        assertThat(CoolerResistance.SPEED_SHARE.remark(0.2)).isPresent();
        assertThat(CoolerResistance.SPEED_SHARE.remark(CoolerResistance.LEAST_SPEED_SHARE))
                .isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("fullSpeedKw", () -> CoolerResistance.atSpeed(-0.1, 1));
        refused("speedShare", () -> CoolerResistance.atSpeed(0.1, 0));
        refused("fullSpeedKw", () -> CoolerResistance.speedFor(-0.1, 1));
    }

    @Property(tries = 500)
    void resistance_and_speed_are_each_other_s_inverse(
            @ForAll @DoubleRange(min = 0.05, max = 1) double fullSpeedKw,
            @ForAll @DoubleRange(min = 0.1, max = 2) double speedShare) {
        double resistanceKw = CoolerResistance.atSpeed(fullSpeedKw, speedShare);

        assertThat(CoolerResistance.speedFor(fullSpeedKw, resistanceKw))
                .isCloseTo(speedShare, within(1e-9));
    }

    @Property(tries = 500)
    void a_faster_fan_never_warms(
            @ForAll @DoubleRange(min = 0.1, max = 1) double slow,
            @ForAll @DoubleRange(min = 0, max = 1) double more) {
        assertThat(CoolerResistance.atSpeed(0.2, slow + more))
                .isLessThanOrEqualTo(CoolerResistance.atSpeed(0.2, slow));
    }
}
