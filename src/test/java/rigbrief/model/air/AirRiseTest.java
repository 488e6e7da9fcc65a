package rigbrief.model.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AirRiseTest {
    private static final double USUAL_KG_M3 = 1.2;

    /** By hand: AIR-03 turned round, 500 W in 149.25 m³/h at 1206 J/(m³ K) rise by 10 K. */
    @Test
    void the_rise_is_the_heat_over_what_the_air_can_carry() {
        assertThat(AirRise.kelvin(500, 149.25, USUAL_KG_M3)).isCloseTo(10, within(0.001));
        assertThat(AirRise.kelvin(0, 149.25, USUAL_KG_M3)).isZero();
    }

    /** Common practice: 10 m³/h move by themselves; by hand 100 x 3600 / (1206 x 10) = 29.85 K. */
    @Test
    void a_case_without_fans_stays_finite() {
        assertThat(AirRise.kelvin(100, 0, USUAL_KG_M3)).isCloseTo(29.85, within(0.01));
        assertThat(AirRise.kelvin(100, 9, USUAL_KG_M3))
                .isEqualTo(AirRise.kelvin(100, 10, USUAL_KG_M3));
        assertThat(AirRise.kelvin(100, 11, USUAL_KG_M3))
                .isLessThan(AirRise.kelvin(100, 10, USUAL_KG_M3));
    }

    @Test
    void more_heat_than_desktops_make_gets_a_caution() {
        assertThat(AirRise.HEAT_W.remark(2_000)).isPresent();
        assertThat(AirRise.HEAT_W.remark(600)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("heatW", () -> AirRise.kelvin(-1, 50, USUAL_KG_M3));
        refused("flowM3h", () -> AirRise.kelvin(1, -50, USUAL_KG_M3));
        refused("densityKgM3", () -> AirRise.kelvin(1, 50, 0));
    }

    @Property(tries = 1000)
    void more_watts_never_cool_and_more_air_never_warms(
            @ForAll @DoubleRange(min = 0, max = 1_000) double heatW,
            @ForAll @DoubleRange(min = 0, max = 400) double flowM3h,
            @ForAll @DoubleRange(min = 0, max = 200) double more) {
        double riseK = AirRise.kelvin(heatW, flowM3h, USUAL_KG_M3);

        assertThat(AirRise.kelvin(heatW + more, flowM3h, USUAL_KG_M3))
                .isGreaterThanOrEqualTo(riseK);
        assertThat(AirRise.kelvin(heatW, flowM3h + more, USUAL_KG_M3)).isLessThanOrEqualTo(riseK);
    }
}
