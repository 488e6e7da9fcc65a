package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class RadiatorPlaceRuleTest {
    @Test
    void an_air_cooler_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new RadiatorPlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_radiator_with_a_side_is_met() {
        BuildFixture build = aBuild().with(aCooler().liquid(240));

        Finding finding = check(new RadiatorPlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_radiator_as_thick_as_the_side_takes_is_met() {
        BuildFixture build = aBuild().with(aCooler().liquid(240).thicknessMm(30));

        Finding finding = check(new RadiatorPlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_radiator_one_millimetre_too_thick_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aCooler().liquid(240).thicknessMm(31));

        Finding finding = check(new RadiatorPlaceRule(), build);

        assertThat(finding).isBreachOf(1).saying("240 mm radiator of 31 mm");
    }

    @Test
    void a_size_no_side_takes_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aCooler().liquid(420));

        Finding finding = check(new RadiatorPlaceRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void an_empty_thickness_is_a_caution() {
        BuildFixture build = aBuild().with(aCooler().liquid(240).unknown("thickness_mm"));

        Finding finding = check(new RadiatorPlaceRule(), build);

        assertThat(finding).isUnknown("cooler-1", "thickness_mm");
    }

    @Test
    void an_empty_thickness_does_not_hide_a_size_no_side_takes() {
        BuildFixture build = aBuild().with(aCooler().liquid(420).unknown("thickness_mm"));

        Finding finding = check(new RadiatorPlaceRule(), build);

        assertThat(finding).isBreachOf(1).saying("unknown thickness");
    }

    @Test
    void no_cooler_is_met() {
        BuildFixture build = aBuild().without(Slot.COOLER);

        Finding finding = check(new RadiatorPlaceRule(), build);

        assertThat(finding).isMet();
    }
}
