package rigbrief.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CardCoolingTest {
    private static final double SILENT = Double.NEGATIVE_INFINITY;

    /** By hand: (75 - 25) / 300 at the usual reference, (80 - 20) / 300 at another. */
    @Test
    void the_reference_gives_the_card_s_resistance() {
        assertThat(CardCooling.referenceKw(300)).isCloseTo(0.16667, within(0.00001));
        assertThat(CardCooling.referenceKw(300, 20, 80)).isCloseTo(0.2, within(1e-12));
        assertThat(CardCooling.referenceKw(300, 80, 80)).isZero();
    }

    @Test
    void at_the_reference_the_card_runs_at_its_load_level() {
        double ratio = CardCooling.ratioFor(CardCooling.referenceKw(300), 75, 25, 300);

        assertThat(ratio).isCloseTo(1, within(1e-12));
        assertThat(CardCooling.levelDba(36, 20, ratio)).isCloseTo(36, within(1e-9));
    }

    /** By hand: (50 / 45)² = 1.2346, and 50 log10 of it 4.576 dB. */
    @Test
    void warmer_air_makes_the_card_louder() {
        double ratio = CardCooling.ratioFor(CardCooling.referenceKw(300), 75, 30, 300);

        assertThat(ratio).isCloseTo(1.2346, within(0.0001));
        assertThat(CardCooling.levelDba(36, 20, ratio)).isCloseTo(40.576, within(0.001));
    }

    /** By hand: half the power needs a quarter of the speed, 50 log10(1/4) = -30.1 dB. */
    @Test
    void a_card_at_half_its_power_is_held_up_by_its_idle_level() {
        double ratio = CardCooling.ratioFor(CardCooling.referenceKw(300), 75, 25, 150);

        assertThat(ratio).isCloseTo(0.25, within(1e-12));
        assertThat(CardCooling.levelDba(36, 20, ratio)).isEqualTo(20);
        assertThat(CardCooling.levelDba(36, SILENT, ratio)).isCloseTo(5.897, within(0.001));
    }

    @Test
    void a_resting_card_needs_no_fan_and_air_at_the_limit_no_fan_is_enough() {
        assertThat(CardCooling.ratioFor(0.2, 75, 25, 0)).isZero();
        assertThat(CardCooling.ratioFor(0.2, 75, 75, 300)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(CardCooling.ratioFor(0.2, 75, 80, 300)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void beyond_its_greatest_speed_a_card_is_too_hot() {
        assertThat(CardCooling.isTooHot(CardCooling.MOST_RATIO)).isFalse();
        assertThat(CardCooling.isTooHot(Math.nextUp(CardCooling.MOST_RATIO))).isTrue();
        assertThat(CardCooling.isTooHot(Double.NaN)).isTrue();
    }

    /** By hand: 10 dB below the load level is a ratio of 10^(-10/50) = 0.631. */
    @Test
    void the_slowest_speed_is_that_of_the_idle_level() {
        assertThat(CardCooling.leastRatio(35, 25)).isCloseTo(0.631, within(0.001));
        assertThat(CardCooling.leastRatio(35, 35)).isCloseTo(1, within(1e-12));
    }

    @Test
    void the_slowest_speed_stays_between_its_bounds() {
        assertThat(CardCooling.leastRatio(35, SILENT)).isEqualTo(CardCooling.LEAST_RATIO);
        assertThat(CardCooling.leastRatio(60, 10)).isEqualTo(CardCooling.LEAST_RATIO);
        assertThat(CardCooling.leastRatio(20, 60)).isEqualTo(CardCooling.MOST_RATIO);
        assertThat(CardCooling.leastRatio(SILENT, SILENT)).isEqualTo(CardCooling.LEAST_RATIO);
    }

    @Test
    void a_card_of_900_watts_gets_a_caution() {
        assertThat(CardCooling.CARD_W.remark(900)).isPresent();
        assertThat(CardCooling.CARD_W.remark(450)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("powerW", () -> CardCooling.referenceKw(0));
        refused("(cardC - inletC) / boardPowerW", () -> CardCooling.referenceKw(300, 80, 75));
        refused("powerW", () -> CardCooling.ratioFor(0.2, 75, 25, -1));
        refused("fullSpeedKw", () -> CardCooling.ratioFor(-0.2, 75, 25, 1));
        refused("loadDba", () -> CardCooling.leastRatio(Double.NaN, 20));
        refused("idleDba", () -> CardCooling.leastRatio(35, Double.NaN));
        refused("idleDba", () -> CardCooling.levelDba(35, Double.NaN, 1));
        refused("speedRatio", () -> CardCooling.levelDba(35, 20, -1));
    }

    @Property(tries = 500)
    void more_watts_or_warmer_air_never_slow_the_fans(
            @ForAll @DoubleRange(min = 0, max = 400) double powerW,
            @ForAll @DoubleRange(min = 15, max = 70) double inletC,
            @ForAll @DoubleRange(min = 0, max = 50) double more) {
        double ratio = CardCooling.ratioFor(0.15, 80, inletC, powerW);

        assertThat(CardCooling.ratioFor(0.15, 80, inletC, powerW + more))
                .isGreaterThanOrEqualTo(ratio);
        assertThat(CardCooling.ratioFor(0.15, 80, inletC + more, powerW))
                .isGreaterThanOrEqualTo(ratio);
    }
}
