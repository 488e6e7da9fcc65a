package rigbrief.rule.fit;

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

class CardHeightRuleTest {
    @Test
    void a_lower_card_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new CardHeightRule(), build);

        assertThat(finding).isMet().hasMargin(150, 120, Unit.MILLIMETRE);
    }

    @Test
    void a_card_as_tall_as_the_room_is_met() {
        BuildFixture build = aBuild().with(aGraphicsCard().heightMm(150));

        Finding finding = check(new CardHeightRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_card_one_millimetre_too_tall_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aGraphicsCard().heightMm(151));

        Finding finding = check(new CardHeightRule(), build);

        assertThat(finding).isBreachOf(1).saying("151 mm tall");
    }

    @Test
    void no_card_is_met() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS);

        Finding finding = check(new CardHeightRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void an_empty_height_is_a_caution() {
        BuildFixture build = aBuild().with(aGraphicsCard().unknown("height_mm"));

        Finding finding = check(new CardHeightRule(), build);

        assertThat(finding).isUnknown("graphics-1", "height_mm");
    }

    @Test
    void an_empty_room_is_a_caution() {
        BuildFixture build = aBuild().with(aCase().unknown("graphics_height_mm"));

        Finding finding = check(new CardHeightRule(), build);

        assertThat(finding).isUnknown("case-1", "graphics_height_mm");
    }
}
