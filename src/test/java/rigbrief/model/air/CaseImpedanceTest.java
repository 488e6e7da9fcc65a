package rigbrief.model.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;

class CaseImpedanceTest {

    /** By hand: p = K Q², so twice the flow needs four times the pressure. */
    @Test
    void pressure_grows_with_the_square_of_flow() {
        var impedance = new CaseImpedance(0.001);

        assertThat(impedance.pressurePa(100)).isCloseTo(10, within(1e-12));
        assertThat(impedance.pressurePa(200)).isCloseTo(40, within(1e-12));
        assertThat(impedance.pressurePa(0)).isZero();
    }

    @Test
    void an_open_case_needs_no_pressure() {
        assertThat(new CaseImpedance(0).pressurePa(200)).isZero();
    }

    @Test
    void nonsense_is_refused() {
        refused("paPerM3h2", () -> new CaseImpedance(-0.001));
        refused("flowM3h", () -> new CaseImpedance(0.001).pressurePa(-1));
    }
}
