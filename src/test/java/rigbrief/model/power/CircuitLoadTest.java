package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;
import static rigbrief.model.power.CircuitLoad.NORTH_AMERICAN_SHARE;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CircuitLoadTest {

    /** Source: restatements of NEC 210.19(A)(1): 15 A x 120 V x 80 %, 20 A likewise 1920 W. */
    @Test
    @DisplayName("ELEC-01: a 15 A, 120 V circuit bears 1440 W for hours")
    void the_continuous_share() {
        assertThat(CircuitLoad.continuousW(15, 120, NORTH_AMERICAN_SHARE)).isEqualTo(1_440);
        assertThat(CircuitLoad.continuousW(20, 120, NORTH_AMERICAN_SHARE)).isEqualTo(1_920);
    }

    /** By hand: 850 / 0.9 = 944.44 W; / (115 x 0.99) = 8.296 A. */
    @Test
    @DisplayName("ELEC-02: 850 W at 90 % and power factor 0.99 draw 944.44 W and 8.296 A at 115 V")
    void the_current_of_a_large_build() {
        double acW = 850 / 0.9;

        assertThat(acW).isCloseTo(944.44, within(0.01));
        assertThat(CircuitLoad.mainsA(acW, 115, 0.99)).isCloseTo(8.296, within(0.01));
    }

    /** By hand: 944.44 + 60 = 1004.44 of 1440 W. */
    @Test
    @DisplayName("ELEC-03: that load and a 60 W display use 1004 of 1440 W, which fits")
    void a_build_and_its_display_on_one_circuit() {
        var statement = CircuitLoad.statement(850 / 0.9 + 60, 15, 120, NORTH_AMERICAN_SHARE);

        assertThat(statement.fits()).isTrue();
        assertThat(statement.loadMw()).isEqualTo(1_004_444);
        assertThat(statement.limitMw()).isEqualTo(1_440_000);
        assertThat(statement.text()).startsWith("1004 W of the 1440 W ");
    }

    /** Rule of this project: local code and licensed practice decide, and every text says so. */
    @Test
    @DisplayName("ELEC-05: every statement about a circuit carries the deferral")
    void every_statement_defers_to_local_codes() {
        for (double acW : new double[] {0, 500, 1_440, 1_441, 10_000}) {
            assertThat(CircuitLoad.statement(acW, 15, 120, NORTH_AMERICAN_SHARE).text())
                    .endsWith(CircuitLoad.DEFERRAL);
        }
        assertThat(CircuitLoad.DEFERRAL)
                .contains("Local electrical codes")
                .contains("licensed practice decide");
    }

    @Test
    void a_load_at_the_limit_fits_and_a_milliwatt_more_does_not() {
        assertThat(CircuitLoad.statement(1_440, 15, 120, NORTH_AMERICAN_SHARE).fits()).isTrue();
        assertThat(CircuitLoad.statement(1_440.001, 15, 120, NORTH_AMERICAN_SHARE).fits())
                .isFalse();
    }

    /** From memory: elsewhere the 80 % is not the rule; 16 A at 230 V are 3680 W. */
    @Test
    void elsewhere_the_whole_rating_can_be_given() {
        assertThat(CircuitLoad.continuousW(16, 230, 1)).isEqualTo(3_680);
        assertThat(CircuitLoad.continuousW(13, 230, 1)).isEqualTo(2_990);
    }

    @Test
    void nonsense_is_refused() {
        refused("breakerA", () -> CircuitLoad.continuousW(0, 120, 0.8));
        refused("mainsV", () -> CircuitLoad.continuousW(15, 0, 0.8));
        refused("share", () -> CircuitLoad.continuousW(15, 120, 0));
        refused("share", () -> CircuitLoad.continuousW(15, 120, 1.1));
        refused("acW", () -> CircuitLoad.mainsA(-1, 120, 1));
        refused("mainsV", () -> CircuitLoad.mainsA(1, 0, 1));
        refused("powerFactor", () -> CircuitLoad.mainsA(1, 120, 0));
        refused("powerFactor", () -> CircuitLoad.mainsA(1, 120, 1.1));
        refused("acW", () -> CircuitLoad.statement(-1, 15, 120, 0.8));
    }
}
