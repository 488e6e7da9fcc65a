package rigbrief.model.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FanNoiseTest {

    /** By hand: 21 + 50 log10(900 / 1500) = 21 - 11.09. */
    @Test
    @DisplayName("SND-10: a fan of 21 dB slowed from 1500 to 900 rpm makes 9.91 dB")
    void a_slower_fan_is_quieter() {
        assertThat(FanNoise.atSpeedDba(21, 900.0 / 1_500)).isCloseTo(9.91, within(0.01));
    }

    /** Source: "Basic Fan Laws", which print 11.7 and 6.25 dB for these two voltage changes. */
    @ParameterizedTest
    @CsvSource({"12,7,-11.70", "12,9,-6.25", "1500,900,-11.09", "2,1,-15.05"})
    void changes_are_those_of_the_published_fan_laws(double before, double after, double changeDb) {
        assertThat(FanNoise.changeDb(after / before)).isCloseTo(changeDb, within(0.006));
    }

    /** Source: handbooks print 50 to 60; the law with 55 gives 16.56 dB for a doubling. */
    @Property(tries = 200)
    void doubling_the_speed_adds_fifteen_to_sixteen_and_a_half_decibels(
            @ForAll @DoubleRange(min = 0.1, max = 2) double share) {
        double doubledDb = FanNoise.atSpeedDba(30, 2 * share) - FanNoise.atSpeedDba(30, share);

        assertThat(doubledDb).isBetween(15.0, 16.6);
    }

    @Test
    void full_speed_changes_nothing_and_a_fan_that_stops_is_silent() {
        assertThat(FanNoise.atSpeedDba(32, 1)).isEqualTo(32);
        assertThat(FanNoise.atSpeedDba(32, 0)).isEqualTo(SoundSum.SILENCE_DBA);
        assertThat(FanNoise.energyFactor(0)).isZero();
        assertThat(FanNoise.ratioForChange(SoundSum.SILENCE_DBA)).isZero();
    }

    @Test
    void a_fan_that_barely_turns_gets_a_caution() {
        assertThat(FanNoise.SPEED_SHARE.remark(0.2)).isPresent();
        assertThat(FanNoise.SPEED_SHARE.remark(0.3)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("speedRatio", () -> FanNoise.changeDb(-0.1));
        refused("fullSpeedDba", () -> FanNoise.atSpeedDba(Double.NaN, 1));
    }

    @Property(tries = 300)
    void energy_factor_and_ratio_agree_with_the_change(
            @ForAll @DoubleRange(min = 0.1, max = 2) double ratio) {
        double changeDb = FanNoise.changeDb(ratio);

        assertThat(SoundSum.levelDba(FanNoise.energyFactor(ratio)))
                .isCloseTo(changeDb, within(1e-9));
        assertThat(FanNoise.ratioForChange(changeDb)).isCloseTo(ratio, within(1e-9));
    }

    @Property(tries = 300)
    void a_faster_fan_is_never_quieter(
            @ForAll @DoubleRange(min = 0, max = 2) double slow,
            @ForAll @DoubleRange(min = 0, max = 1) double more) {
        assertThat(FanNoise.atSpeedDba(30, slow + more))
                .isGreaterThanOrEqualTo(FanNoise.atSpeedDba(30, slow));
    }
}
