package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.model.power.EcodesignEnergy.Category;

class EcodesignEnergyTest {

    /** Source: Regulation (EU) No 617/2013, Annex II: 133 + (16 - 2) + 25. */
    @Test
    @DisplayName("TEC-04: category A with 16 GB and one further drive may use 172 kWh a year")
    void a_limit_with_its_adjustments() {
        int addedKwh = EcodesignEnergy.equipmentKwh(Category.A, 16, 1, 0);

        assertThat(addedKwh).isEqualTo(14 + 25);
        assertThat(Category.A.from2014Kwh() + addedKwh).isEqualTo(172);
    }

    /** Weights from memory; by hand 8.76 x (0.55 x 0.5 + 0.05 x 2 + 0.40 x 30). */
    @Test
    @DisplayName("TEC-05: 0.5, 2 and 30 W are 108.405 kWh by the regulation's weights")
    void a_year_by_the_regulation() {
        assertThat(EcodesignEnergy.kwh(0.5, 2, 30)).isCloseTo(108.405, within(0.001));
    }

    /** Source: the same annex; limits of 2016 and the 4 GB of category D as stated there. */
    @ParameterizedTest
    @CsvSource({"A,133,94,2", "B,158,112,2", "C,188,134,2", "D,211,150,4"})
    void categories_are_those_of_the_regulation(
            Category category, int from2014, int from2016, int baseGb) {
        assertThat(category.from2014Kwh()).isEqualTo(from2014);
        assertThat(category.from2016Kwh()).isEqualTo(from2016);
        assertThat(EcodesignEnergy.equipmentKwh(category, baseGb, 0, 0)).isZero();
        assertThat(EcodesignEnergy.equipmentKwh(category, baseGb + 1, 0, 0)).isEqualTo(1);
        assertThat(EcodesignEnergy.equipmentKwh(category, 0, 0, 0)).isZero();
    }

    /** Source: the same annex: 15 kWh each for a discrete tuner and a discrete sound card. */
    @Test
    void tuner_and_sound_card_add_fifteen_each() {
        assertThat(EcodesignEnergy.equipmentKwh(Category.B, 2, 0, 2)).isEqualTo(30);
        assertThat(EcodesignEnergy.equipmentKwh(Category.B, 2, 2, 0)).isEqualTo(50);
    }

    /** Source: the same annex, first and further graphics cards of classes G1 to G7. */
    @ParameterizedTest
    @CsvSource({
        "0,0,0",
        "1,34,20",
        "2,54,32",
        "3,69,41",
        "4,100,59",
        "5,133,78",
        "6,166,98",
        "7,225,133"
    })
    void graphics_cards_add_by_their_class(int cardClass, int firstKwh, int furtherKwh) {
        assertThat(EcodesignEnergy.graphicsKwh(cardClass, true)).isEqualTo(firstKwh);
        assertThat(EcodesignEnergy.graphicsKwh(cardClass, false)).isEqualTo(furtherKwh);
    }

    /** Source: the same annex: idle power replaces sleep power up to 10 W. */
    @Test
    void a_thrifty_machine_needs_no_sleep_mode() {
        assertThat(EcodesignEnergy.sleepWithoutModeW(10)).isEqualTo(10);
        assertThat(EcodesignEnergy.sleepWithoutModeW(4)).isEqualTo(4);
        refused("idleW", () -> EcodesignEnergy.sleepWithoutModeW(10.1));
    }

    @Test
    void nonsense_is_refused() {
        refused("offW", () -> EcodesignEnergy.kwh(-1, 0, 0));
        refused("sleepW", () -> EcodesignEnergy.kwh(0, -1, 0));
        refused("idleW", () -> EcodesignEnergy.kwh(0, 0, -1));
        refused("idleW", () -> EcodesignEnergy.sleepWithoutModeW(-1));
        refused("memoryGb", () -> EcodesignEnergy.equipmentKwh(Category.A, -1, 0, 0));
        refused("furtherDrives", () -> EcodesignEnergy.equipmentKwh(Category.A, 0, -1, 0));
        refused("extraCards", () -> EcodesignEnergy.equipmentKwh(Category.A, 0, 0, -1));
        refused("cardClass", () -> EcodesignEnergy.graphicsKwh(8, true));
        refused("cardClass", () -> EcodesignEnergy.graphicsKwh(-1, true));
    }
}
