package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class MemoryUnderCoolerRuleTest {
    @Test
    void lower_memory_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isMet().hasMargin(45, 34, Unit.MILLIMETRE);
    }

    @Test
    void memory_as_tall_as_the_room_is_met() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(45));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void memory_one_millimetre_taller_raises_the_fan() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(46));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isCaution().saying("raised by 1 mm").hasMargin(55, 46, Unit.MILLIMETRE);
    }

    @Test
    void memory_at_the_end_of_the_raise_is_a_caution() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(55));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isCaution().saying("raised by 10 mm");
    }

    @Test
    void memory_one_millimetre_beyond_the_raise_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(56));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isBreachOf(1).hasMargin(55, 56, Unit.MILLIMETRE);
    }

    @Test
    void a_raise_that_just_fits_the_case_is_a_caution() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(50)).with(aCooler().heightMm(160));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isCaution().hasMargin(50, 50, Unit.MILLIMETRE);
    }

    @Test
    void a_raise_one_millimetre_too_far_for_the_case_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(51)).with(aCooler().heightMm(160));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding)
                .isBreachOf(1)
                .hasMargin(50, 51, Unit.MILLIMETRE)
                .saying(
                        "memory 51 mm tall, 45 mm under the cooler, and its fan can be raised by 5 mm");
    }

    @Test
    void a_cooler_already_too_tall_leaves_no_raise() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(46)).with(aCooler().heightMm(170));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_fan_that_does_not_move_is_a_breach_of_the_difference() {
        // Common practice: a twin tower is checked against memory height.
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(48)).with(aCooler().fanRaiseMm(0));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isBreachOf(3);
    }

    @Test
    void a_liquid_cooler_is_met() {
        BuildFixture build = aBuild().with(aMemoryKit().heightMm(60)).with(aCooler().liquid(240));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void an_empty_memory_height_is_a_caution() {
        BuildFixture build = aBuild().with(aMemoryKit().unknown("height_mm"));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isUnknown("memory-1", "height_mm");
    }

    @Test
    void an_empty_room_is_a_caution() {
        BuildFixture build = aBuild().with(aCooler().unknown("memory_clearance_mm"));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isUnknown("cooler-1", "memory_clearance_mm");
    }

    @Test
    void a_raise_under_an_unknown_panel_is_a_caution() {
        BuildFixture build =
                aBuild().with(aMemoryKit().heightMm(50)).with(aCase().unknown("cooler_height_mm"));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isUnknown("case-1", "cooler_height_mm");
    }

    @Test
    void a_raise_of_an_unknown_cooler_height_is_a_caution() {
        BuildFixture build =
                aBuild().with(aMemoryKit().heightMm(50)).with(aCooler().unknown("height_mm"));

        Finding finding = check(new MemoryUnderCoolerRule(), build);

        assertThat(finding).isUnknown("cooler-1", "height_mm");
    }
}
