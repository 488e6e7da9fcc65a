package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.WirelessFixture.aWirelessCard;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Bus;
import rigbrief.part.CardPlace;
import rigbrief.part.ExpansionSlot;
import rigbrief.part.M2Slot;
import rigbrief.part.Share;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class SlotPlaceRuleTest {
    @Test
    void a_card_with_a_slot_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_wireless_card_below_the_graphics_card_is_met() {
        BuildFixture build = aBuild().with(aWirelessCard());

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_card_that_covers_the_only_x1_slot_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aWirelessCard()).with(aGraphicsCard().slots(3.1));

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding)
                .isBreachOf(1)
                .saying("no free PCIe x1 slot")
                .saying("the graphics card covers 1 to 4");
    }

    @Test
    void without_a_card_the_x1_slot_is_free() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aWirelessCard());

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void without_any_slot_the_words_name_no_graphics_card() {
        BuildFixture build =
                aBuild().without(Slot.GRAPHICS).with(aWirelessCard()).with(aBoard().slots());

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isBreachOf(1);
        org.assertj.core.api.Assertions.assertThat(finding.text()).doesNotContain("graphics card");
    }

    @Test
    void an_x1_slot_beyond_the_openings_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aWirelessCard()).with(aCase().expansionSlots(3));

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void an_x1_slot_switched_off_by_a_drive_is_a_breach_of_one() {
        BuildFixture build =
                aBuild().with(aWirelessCard())
                        .with(
                                aBoard().m2(new M2Slot(80, List.of(Bus.GEN4X4)))
                                        .shares(new Share(1, List.of(), List.of(4))));

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_key_e_card_needs_a_key_e_slot() {
        BuildFixture build = aBuild().with(aWirelessCard().place(CardPlace.M2_E));

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isBreachOf(1).saying("M.2 (key E)");
    }

    @Test
    void a_key_e_card_with_a_key_e_slot_is_met() {
        BuildFixture build =
                aBuild().with(aWirelessCard().place(CardPlace.M2_E))
                        .with(
                                aBoard().m2(
                                                new M2Slot(80, List.of(Bus.GEN4X4)),
                                                new M2Slot(30, List.of(Bus.KEY_E))));

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_board_without_an_x16_slot_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aBoard().slots(new ExpansionSlot(4, 3, 2)));

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isBreachOf(1).saying("no x16 slot");
    }

    @Test
    void no_slots_at_all_are_a_breach_of_two() {
        BuildFixture build = aBuild().with(aWirelessCard()).with(aBoard().slots());

        Finding finding = check(new SlotPlaceRule(), build);

        assertThat(finding).isBreachOf(2);
    }
}
