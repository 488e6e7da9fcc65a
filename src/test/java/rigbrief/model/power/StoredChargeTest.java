package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class StoredChargeTest {

    /** By hand: 470e-6 x 390² / 2. */
    @Test
    @DisplayName("ELEC-04: 470 µF at 390 V hold 35.74 J")
    void a_bulk_capacitor() {
        assertThat(StoredCharge.energyJ(470e-6, 390)).isCloseTo(35.74, within(0.01));
    }

    /** By hand: 200 kOhm x 470 µF x ln(390 / 60) = 176 s. */
    @Test
    void it_takes_minutes_to_become_harmless() {
        assertThat(StoredCharge.dischargeS(470e-6, 200_000, 390, 60)).isCloseTo(176, within(0.5));
        assertThat(StoredCharge.dischargeS(470e-6, 200_000, 390, 390)).isZero();
    }

    @Test
    void nonsense_is_refused() {
        refused("capacitanceF", () -> StoredCharge.energyJ(-1, 390));
        refused("chargedV", () -> StoredCharge.energyJ(1, -390));
        refused("capacitanceF", () -> StoredCharge.dischargeS(0, 1, 2, 1));
        refused("resistanceOhm", () -> StoredCharge.dischargeS(1, 0, 2, 1));
        refused("fromV", () -> StoredCharge.dischargeS(1, 1, 0, 1));
        refused("toV", () -> StoredCharge.dischargeS(1, 1, 2, 0));
        refused("toV", () -> StoredCharge.dischargeS(1, 1, 60, 390));
    }
}
