package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FindingAssert.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Bus;
import rigbrief.part.DriveForm;
import rigbrief.part.M2Slot;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class DrivePlaceRuleTest {
    @Test
    void a_drive_with_a_slot_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void as_many_drives_as_slots_are_met() {
        BuildFixture build = aBuild().with(Slot.SECOND_DRIVE, aDrive());

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void one_drive_too_many_is_a_breach_of_one() {
        BuildFixture build =
                aBuild().with(Slot.SECOND_DRIVE, aDrive())
                        .with(aBoard().m2(new M2Slot(80, List.of(Bus.GEN4X4))));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isBreachOf(1).saying("1 drive finds no M.2 slot");
    }

    @Test
    void a_drive_longer_than_the_slot_is_a_breach_of_one() {
        // STO-03: a 22110 module is rejected where the slot ends at 2280 (PCI Express M.2
        // specification: lengths).
        BuildFixture build = aBuild().with(aDrive().form(DriveForm.M2_22110));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_slot_for_wireless_takes_no_drive() {
        // PCI Express M.2 specification: key E carries no drive.
        BuildFixture build = aBuild().with(aBoard().m2(new M2Slot(80, List.of(Bus.KEY_E))));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_sata_module_needs_a_slot_with_sata() {
        BuildFixture build =
                aBuild().with(aDrive().bus(Bus.SATA))
                        .with(aBoard().m2(new M2Slot(80, List.of(Bus.GEN4X4))));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_drive_faster_than_its_slot_is_a_note() {
        BuildFixture build = aBuild().with(aDrive().bus(Bus.GEN5X4));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isNote().saying("is faster than M.2 slot 1");
    }

    @Test
    void two_lanes_of_generation_3_are_slower_than_four_of_generation_4() {
        BuildFixture build = aBuild().with(aBoard().m2(new M2Slot(80, List.of(Bus.GEN3X2))));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isNote();
    }

    @Test
    void a_slower_drive_in_a_faster_slot_is_met() {
        BuildFixture build = aBuild().with(aDrive().bus(Bus.GEN3X4));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void as_many_bay_drives_as_bays_and_ports_are_met() {
        BuildFixture build =
                aBuild().with(aDrive().sata35())
                        .with(Slot.SECOND_DRIVE, aDrive().sata35())
                        .with(aBoard().sataPorts(2));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void one_sata_port_short_is_a_breach_of_one() {
        BuildFixture build =
                aBuild().with(aDrive().sata35())
                        .with(Slot.SECOND_DRIVE, aDrive().sata35())
                        .with(aBoard().sataPorts(1));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isBreachOf(1).saying("2 SATA drives, 1 port");
    }

    @Test
    void one_bay_short_is_a_breach_of_one() {
        BuildFixture build =
                aBuild().with(aDrive().sata35())
                        .with(Slot.SECOND_DRIVE, aDrive().sata35())
                        .with(aCase().bays35(1));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isBreachOf(1).saying("1 no bay");
    }

    @Test
    void lacking_bays_of_both_sizes_add_up() {
        BuildFixture build =
                aBuild().with(aDrive().sata35())
                        .with(Slot.SECOND_DRIVE, aDrive().sata25())
                        .with(aCase().bays35(0).bays25(0));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isBreachOf(2);
    }

    @Test
    void the_drive_on_the_slower_slot_is_the_one_that_is_named() {
        BuildFixture build =
                aBuild().with(aDrive())
                        .with(Slot.SECOND_DRIVE, aDrive().id("drive-2"))
                        .with(
                                aBoard().m2(
                                                new M2Slot(80, List.of(Bus.GEN4X4)),
                                                new M2Slot(80, List.of(Bus.GEN3X4))));

        Finding finding = check(new DrivePlaceRule(), build);

        assertThat(finding).isNote().saying("is faster than M.2 slot 2");
    }
}
