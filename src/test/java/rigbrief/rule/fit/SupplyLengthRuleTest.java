package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class SupplyLengthRuleTest {
    @Test
    void a_shorter_supply_is_met() {
        // An ATX body is 140 mm deep at its least (ATX design guide).
        BuildFixture build = aBuild();

        Finding finding = check(new SupplyLengthRule(), build);

        assertThat(finding).isMet().hasMargin(200, 140, Unit.MILLIMETRE);
    }

    @Test
    void a_supply_as_long_as_the_room_is_met() {
        BuildFixture build = aBuild().with(aSupply().lengthMm(200));

        Finding finding = check(new SupplyLengthRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_supply_one_millimetre_too_long_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aSupply().lengthMm(201));

        Finding finding = check(new SupplyLengthRule(), build);

        assertThat(finding).isBreachOf(1).saying("supply 201 mm, case takes 200 mm");
    }

    @Test
    void a_drive_cage_in_use_shortens_the_room() {
        BuildFixture build =
                aBuild().with(Slot.SECOND_DRIVE, aDrive().sata35()).with(aSupply().lengthMm(161));

        Finding finding = check(new SupplyLengthRule(), build);

        assertThat(finding).isBreachOf(1).saying("with the drive cage in use");
    }

    @Test
    void a_supply_as_long_as_the_room_beside_the_cage_is_met() {
        BuildFixture build =
                aBuild().with(Slot.SECOND_DRIVE, aDrive().sata35()).with(aSupply().lengthMm(160));

        Finding finding = check(new SupplyLengthRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void an_empty_length_is_a_caution() {
        BuildFixture build = aBuild().with(aSupply().unknown("length_mm"));

        Finding finding = check(new SupplyLengthRule(), build);

        assertThat(finding).isUnknown("supply-1", "length_mm");
    }

    @Test
    void an_empty_room_is_a_caution() {
        BuildFixture build = aBuild().with(aCase().unknown("supply_length_mm"));

        Finding finding = check(new SupplyLengthRule(), build);

        assertThat(finding).isUnknown("case-1", "supply_length_mm");
    }

    @Test
    void an_empty_room_beside_the_cage_is_a_caution_when_it_is_in_use() {
        BuildFixture build =
                aBuild().with(aDrive().sata35())
                        .with(aCase().unknown("supply_length_with_cage_mm"));

        Finding finding = check(new SupplyLengthRule(), build);

        assertThat(finding).isUnknown("case-1", "supply_length_with_cage_mm");
    }

    @Test
    void an_empty_room_beside_the_cage_does_not_hide_a_supply_too_long_without_it() {
        BuildFixture build =
                aBuild().with(aDrive().sata35())
                        .with(aSupply().lengthMm(201))
                        .with(aCase().unknown("supply_length_with_cage_mm"));

        Finding finding = check(new SupplyLengthRule(), build);

        assertThat(finding).isBreachOf(1);
    }
}
