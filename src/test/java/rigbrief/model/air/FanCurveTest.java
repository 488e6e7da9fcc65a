package rigbrief.model.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;

class FanCurveTest {
    private static final FanCurve FAN = new FanCurve(100, 20);

    /** By hand: the line through (0, 20 Pa) and (100 m³/h, 0). */
    @Test
    void the_curve_is_the_line_between_its_two_figures() {
        assertThat(FAN.pressurePa(0)).isEqualTo(20);
        assertThat(FAN.pressurePa(25)).isCloseTo(15, within(1e-12));
        assertThat(FAN.pressurePa(100)).isZero();
        assertThat(FAN.pressurePa(150)).isCloseTo(-10, within(1e-12));
    }

    /** Source: affinity laws, flow with the speed and pressure with its square. */
    @Test
    void half_the_speed_is_half_the_flow_and_a_quarter_of_the_pressure() {
        assertThat(FAN.atSpeed(0.5)).isEqualTo(new FanCurve(50, 5));
        assertThat(FAN.atSpeed(1)).isEqualTo(FAN);
    }

    @Test
    void nonsense_is_refused() {
        refused("freeFlowM3h", () -> new FanCurve(0, 20));
        refused("shutoffPressurePa", () -> new FanCurve(100, -1));
        refused("flowM3h", () -> FAN.pressurePa(Double.NaN));
        refused("freeFlowM3h", () -> FAN.atSpeed(0));
    }
}
