package rigbrief.model.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class FanLawsTest {

    /** Source: affinity laws in "Basic Fan Laws": flow ~ n, pressure ~ n², power ~ n³. */
    @Test
    @DisplayName("FAN-05: from 60 m³/h, 2.0 Pa, 1.5 W at 1200 rpm to 30, 0.5, 0.1875 at 600 rpm")
    void half_the_speed() {
        assertThat(FanLaws.flowM3h(60, 0.5)).isEqualTo(30);
        assertThat(FanLaws.pressurePa(2.0, 0.5)).isEqualTo(0.5);
        assertThat(FanLaws.powerW(1.5, 0.5)).isEqualTo(0.1875);
    }

    /** By hand: 1.5 x (2/3)³ = 0.4444 W. */
    @Test
    @DisplayName("LAW-05: 1.5 W at 1200 rpm are 0.4444 W at 800 rpm")
    void two_thirds_of_the_speed() {
        assertThat(FanLaws.powerW(1.5, 800.0 / 1_200)).isCloseTo(0.4444, within(0.0001));
    }

    @Test
    void a_fan_that_stands_moves_and_draws_nothing() {
        assertThat(FanLaws.flowM3h(60, 0)).isZero();
        assertThat(FanLaws.pressurePa(2, 0)).isZero();
        assertThat(FanLaws.powerW(1.5, 0)).isZero();
    }

    @Test
    void a_very_slow_fan_gets_a_caution() {
        assertThat(FanLaws.SPEED_SHARE.remark(0.1)).isPresent();
        assertThat(FanLaws.SPEED_SHARE.remark(0.2)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("flowM3h", () -> FanLaws.flowM3h(-1, 1));
        refused("pressurePa", () -> FanLaws.pressurePa(-1, 1));
        refused("powerW", () -> FanLaws.powerW(-1, 1));
        refused("speedRatio", () -> FanLaws.flowM3h(1, -1));
        refused("speedRatio", () -> FanLaws.pressurePa(1, -1));
        refused("speedRatio", () -> FanLaws.powerW(1, Double.NaN));
    }
}
