package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class CardLengthRuleTest {
    @Test
    void a_shorter_card_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new CardLengthRule(), build);

        assertThat(finding).isMet().hasMargin(340, 267, Unit.MILLIMETRE);
    }

    @Test
    void a_card_exactly_as_long_as_the_room_is_met() {
        BuildFixture build = aBuild().with(aGraphicsCard().lengthMm(340));

        Finding finding = check(new CardLengthRule(), build);

        assertThat(finding).isMet().hasMargin(340, 340, Unit.MILLIMETRE);
    }

    @Test
    void a_card_one_millimetre_too_long_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aGraphicsCard().lengthMm(341));

        Finding finding = check(new CardLengthRule(), build);

        assertThat(finding).isBreachOf(1).saying("card 341 mm, case takes 340 mm");
    }

    @Test
    void no_card_is_met() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS);

        Finding finding = check(new CardLengthRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_front_radiator_takes_its_thickness_and_its_fans() {
        // By hand: 340 mm less a radiator of 27 mm and fans of 25 mm.
        BuildFixture build =
                aBuild().with(aCooler().liquid(360)).with(aGraphicsCard().lengthMm(288));

        Finding finding = check(new CardLengthRule(), build);

        assertThat(finding).isMet().hasMargin(288, 288, Unit.MILLIMETRE);
    }

    @Test
    void a_card_one_millimetre_into_the_front_radiator_is_a_breach_of_one() {
        BuildFixture build =
                aBuild().with(aCooler().liquid(360)).with(aGraphicsCard().lengthMm(289));

        Finding finding = check(new CardLengthRule(), build);

        assertThat(finding).isBreachOf(1).saying("less 52 mm for the radiator at the front");
    }

    @Test
    void an_empty_length_is_a_caution() {
        BuildFixture build = aBuild().with(aGraphicsCard().unknown("length_mm"));

        Finding finding = check(new CardLengthRule(), build);

        assertThat(finding).isUnknown("graphics-1", "length_mm");
    }

    @Test
    void an_empty_room_is_a_caution() {
        BuildFixture build = aBuild().with(aCase().unknown("graphics_length_mm"));

        Finding finding = check(new CardLengthRule(), build);

        assertThat(finding).isUnknown("case-1", "graphics_length_mm");
    }
}
