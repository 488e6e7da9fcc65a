package rigbrief.model.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import rigbrief.model.noise.SoundDistance.Field;

class SoundDistanceTest {

    /** Source: Master Handbook of Acoustics, which prints 76.5 and 83.1; feet on both sides. */
    @Test
    @DisplayName("SND-06: 80 dB at 10 ft is 76.48 dB at 15 ft and 83.10 dB at 7 ft")
    void the_handbook_s_example() {
        assertThat(SoundDistance.atDistanceDba(80, 10, 15)).isCloseTo(76.48, within(0.01));
        assertThat(SoundDistance.atDistanceDba(80, 10, 7)).isCloseTo(83.10, within(0.01));
    }

    /** By hand: 40 - 10 log10(2 pi x 0.25) = 40 - 1.961; the plane's constant is from memory. */
    @Test
    @DisplayName("SND-07: a sound power of 40 dB at 0.5 m over a plane makes 38.04 dB")
    void a_sound_power_over_a_desk() {
        assertThat(SoundDistance.fromPowerDb(40, 0.5, Field.OVER_PLANE))
                .isCloseTo(38.04, within(0.01));
    }

    /** Source: university note "Free field" (-11 dB at 1 m); -8 dB over a plane is from memory. */
    @Test
    void constants_at_one_metre_are_those_of_the_handbooks() {
        assertThat(SoundDistance.fromPowerDb(0, 1, Field.FREE)).isCloseTo(-10.99, within(0.005));
        assertThat(SoundDistance.fromPowerDb(0, 1, Field.OVER_PLANE))
                .isCloseTo(-7.98, within(0.005));
    }

    @Test
    void at_one_metre_the_seat_hears_the_sheet_s_level() {
        assertThat(SoundDistance.atSeatDba(31, 1)).isEqualTo(31);
        assertThat(SoundDistance.atSeatDba(SoundSum.SILENCE_DBA, 0.5))
                .isEqualTo(SoundSum.SILENCE_DBA);
    }

    @Test
    void a_far_seat_gets_a_caution() {
        assertThat(SoundDistance.DISTANCE_M.remark(5)).isPresent();
        assertThat(SoundDistance.DISTANCE_M.remark(0.6)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("toM", () -> SoundDistance.atSeatDba(30, 0));
        refused("fromM", () -> SoundDistance.atDistanceDba(30, 0, 1));
        refused("levelDba", () -> SoundDistance.atDistanceDba(Double.NaN, 1, 1));
        refused("distanceM", () -> SoundDistance.fromPowerDb(30, -1, Field.FREE));
        refused("powerDb", () -> SoundDistance.fromPowerDb(Double.NaN, 1, Field.FREE));
    }

    /** Source: inverse-square law, 6.02 dB per doubling. */
    @Property(tries = 300)
    void twice_the_distance_takes_six_decibels(
            @ForAll @DoubleRange(min = 0, max = 90) double levelDba,
            @ForAll @DoubleRange(min = 0.1, max = 10) double distanceM) {
        double near = SoundDistance.atSeatDba(levelDba, distanceM);
        double far = SoundDistance.atSeatDba(levelDba, 2 * distanceM);

        assertThat(near - far).isCloseTo(6.0206, within(1e-4));
    }
}
