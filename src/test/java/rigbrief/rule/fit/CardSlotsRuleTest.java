package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class CardSlotsRuleTest {
    @Test
    void a_card_within_the_openings_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new CardSlotsRule(), build);

        assertThat(finding).isMet().hasMargin(7, 3, Unit.PIECE);
    }

    @Test
    void a_card_that_reaches_to_the_last_opening_is_met() {
        // FORM-06: 2.95 slots of 20.32 mm are 60 mm and occupy 3 slots.
        BuildFixture build = aBuild().with(aCase().expansionSlots(3));

        Finding finding = check(new CardSlotsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_card_one_opening_too_wide_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aCase().expansionSlots(2));

        Finding finding = check(new CardSlotsRule(), build);

        assertThat(finding).isBreachOf(1).saying("reaches to opening 3, the case has 2");
    }

    @Test
    void a_whole_number_of_slots_is_not_rounded_up() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().slots(2)).with(aCase().expansionSlots(2));

        Finding finding = check(new CardSlotsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void no_card_is_met() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aCase().expansionSlots(0));

        Finding finding = check(new CardSlotsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_board_without_a_slot_is_told_elsewhere() {
        BuildFixture build = aBuild().with(aBoard().slots()).with(aCase().expansionSlots(0));

        Finding finding = check(new CardSlotsRule(), build);

        assertThat(finding).isMet();
    }
}
