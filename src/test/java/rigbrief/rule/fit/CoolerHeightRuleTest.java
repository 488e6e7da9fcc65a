package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class CoolerHeightRuleTest {
    @Test
    void a_lower_cooler_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isMet().hasMargin(165, 155, Unit.MILLIMETRE);
    }

    @Test
    void a_cooler_exactly_as_tall_as_the_clearance_is_met() {
        BuildFixture build = aBuild().with(aCooler().heightMm(165));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_cooler_one_millimetre_too_tall_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aCooler().heightMm(166));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isBreachOf(1).saying("cooler 166 mm, case takes 165 mm");
    }

    @Test
    void a_fan_raised_over_tall_memory_counts() {
        // By hand: memory 50 mm over 45 mm of room raises the fan by 5 mm.
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(50)).with(aCooler().heightMm(160));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isMet().hasMargin(165, 165, Unit.MILLIMETRE);
    }

    @Test
    void a_fan_raised_one_millimetre_too_far_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(51)).with(aCooler().heightMm(160));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isBreachOf(1).saying("with its fan raised over the memory");
    }

    @Test
    void a_fan_that_can_not_be_raised_far_enough_stays_where_it_is() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(56)).with(aCooler().heightMm(165));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_liquid_cooler_is_met() {
        BuildFixture build = aBuild().with(aCooler().liquid(240).heightMm(300));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_boxed_cooler_is_met() {
        BuildFixture build = aBuild().without(Slot.COOLER);

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_twin_tower_of_168_mm_is_checked_against_a_case_for_165_mm() {
        // Common practice: twin towers with 140 mm fans stand 165 to 168 mm tall.
        BuildFixture build = aBuild().with(aCooler().heightMm(168).fans(2));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isBreachOf(3);
    }

    @Test
    void an_empty_height_is_a_caution() {
        BuildFixture build = aBuild().with(aCooler().unknown("height_mm"));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isUnknown("cooler-1", "height_mm");
    }

    @Test
    void an_empty_clearance_is_a_caution() {
        BuildFixture build = aBuild().with(aCase().unknown("cooler_height_mm"));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isUnknown("case-1", "cooler_height_mm");
    }

    @Test
    void a_fan_raised_as_far_as_it_can_be_counts() {
        // By hand: memory 55 mm over 45 mm of room raises the fan by 10 mm, all that it can be.
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(55)).with(aCooler().heightMm(155));

        Finding finding = check(new CoolerHeightRule(), build);

        assertThat(finding).isMet().hasMargin(165, 165, Unit.MILLIMETRE);
    }
}
