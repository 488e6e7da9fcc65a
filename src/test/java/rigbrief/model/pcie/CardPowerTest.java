package rigbrief.model.pcie;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;
import static rigbrief.model.pcie.AuxiliaryConnector.EIGHT_PIN;
import static rigbrief.model.pcie.AuxiliaryConnector.SIX_PIN;
import static rigbrief.model.pcie.AuxiliaryConnector.TWELVE_TWO_BY_SIX;
import static rigbrief.model.pcie.CardPower.SLOT_X16_W;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CardPowerTest {

    /** Source: three restatements of the card specification's power limits. */
    @Test
    @DisplayName("PCIE-04: slot, one 8-pin and one 6-pin give 300 W")
    void slot_and_two_plugs() {
        assertThat(CardPower.availableW(SLOT_X16_W, List.of(EIGHT_PIN, SIX_PIN))).isEqualTo(300);
    }

    /** Source: as above. */
    @Test
    @DisplayName("PCIE-05: slot and two 8-pin give 375 W")
    void slot_and_two_larger_plugs() {
        assertThat(CardPower.availableW(SLOT_X16_W, List.of(EIGHT_PIN, EIGHT_PIN))).isEqualTo(375);
    }

    /** Source: ATX design guide 336521 revision 2.1a, chapter on add-in cards. */
    @Test
    @DisplayName("PCIE-06: slot and one 12V-2x6 at 600 W give 675 W")
    void slot_and_the_sixteen_contact_plug() {
        assertThat(CardPower.availableW(SLOT_X16_W, List.of(TWELVE_TWO_BY_SIX)))
                .isEqualTo(675)
                .isEqualTo(CardPower.CARD_5_1_W);
    }

    /** By hand: 75 + 150 = 225; 340 - 225 = 115. */
    @Test
    @DisplayName("PCIE-07: a 340 W card on slot and one 8-pin is 115 W short")
    void too_few_plugs_are_short_by_the_difference() {
        int availableW = CardPower.availableW(SLOT_X16_W, List.of(EIGHT_PIN));

        assertThat(CardPower.shortfallW(340, availableW)).isEqualTo(115);
        assertThat(CardPower.shortfallW(225, availableW)).isZero();
        assertThat(CardPower.shortfallW(200, availableW)).isZero();
    }

    /** Source: ATX design guide 336521 revision 2.0, page 29. */
    @ParameterizedTest
    @DisplayName("PCIE-08: 600 W of cards are 1 x 600, 2 x 300, 3 or 4 x 150")
    @CsvSource({"1,600", "2,300", "3,150", "4,150", "5,0"})
    void several_cards_share_in_signalled_steps(int cards, int eachW) {
        assertThat(CardPower.signalledEachW(600, cards)).isEqualTo(eachW);
    }

    /**
     * Source: restatements of the card specification (25 and 10 W), design guide (300 and 600 W).
     */
    @Test
    void other_limits_are_those_of_the_card_specification() {
        assertThat(CardPower.SLOT_X4_W).isEqualTo(25);
        assertThat(CardPower.SLOT_X1_W).isEqualTo(10);
        assertThat(CardPower.CARD_BEFORE_5_0_W).isEqualTo(300);
        assertThat(CardPower.CARD_5_0_W).isEqualTo(600);
    }

    @Test
    void a_card_beyond_every_standard_gets_a_caution() {
        assertThat(CardPower.CARD_W.remark(900)).isPresent();
        assertThat(CardPower.CARD_W.remark(675)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("slotW", () -> CardPower.availableW(-1, List.of()));
        refused("cardW", () -> CardPower.shortfallW(-1, 0));
        refused("availableW", () -> CardPower.shortfallW(1, -1));
        refused("cards", () -> CardPower.signalledEachW(600, 0));
        refused("budgetW", () -> CardPower.signalledEachW(-600, 1));
    }
}
