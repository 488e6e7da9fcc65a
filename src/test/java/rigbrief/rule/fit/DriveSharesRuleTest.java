package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FindingAssert.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.fixture.BoardFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Bus;
import rigbrief.part.M2Slot;
import rigbrief.part.Share;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class DriveSharesRuleTest {
    @Test
    void nothing_shared_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void ports_lost_with_enough_left_are_a_caution() {
        BuildFixture build = aBuild().with(sharing());

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding)
                .isCaution()
                .saying("M.2 slot 1 switches off SATA ports 3, 4")
                .saying("2 SATA ports left over");
    }

    @Test
    void a_shared_slot_without_a_drive_is_met() {
        BuildFixture build = aBuild().with(sharing()).with(aDrive().sata25());

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void just_enough_ports_left_are_a_caution() {
        BuildFixture build =
                aBuild().with(sharing().sataPorts(3)).with(Slot.SECOND_DRIVE, aDrive().sata25());

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding).isCaution();
    }

    @Test
    void one_port_too_few_is_a_breach_of_one() {
        BuildFixture build =
                aBuild().with(sharing().sataPorts(2)).with(Slot.SECOND_DRIVE, aDrive().sata25());

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void ports_that_were_never_there_are_told_elsewhere() {
        // By hand: with 0 ports and 2 lost the count is 3 short, 1 of them without any sharing.
        BuildFixture build =
                aBuild().with(sharing().sataPorts(0)).with(Slot.SECOND_DRIVE, aDrive().sata25());

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding).isBreachOf(2);
    }

    @Test
    void a_card_slot_switched_off_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(oneSlot().shares(new Share(1, List.of(), List.of(1))));

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding).isBreachOf(1).saying("switches off slot 1;");
    }

    @Test
    void another_slot_switched_off_is_a_caution() {
        BuildFixture build = aBuild().with(oneSlot().shares(new Share(1, List.of(), List.of(4))));

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding).isCaution();
    }

    @Test
    void a_card_slot_switched_off_without_a_card_is_a_caution() {
        BuildFixture build =
                aBuild().without(Slot.GRAPHICS)
                        .with(oneSlot().shares(new Share(1, List.of(), List.of(1))));

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding).isCaution();
    }

    private static BoardFixture oneSlot() {
        return aBoard().m2(new M2Slot(80, List.of(Bus.GEN4X4)));
    }

    private static BoardFixture sharing() {
        return oneSlot().shares(new Share(1, List.of(3, 4), List.of()));
    }

    @Test
    void a_port_and_a_slot_lost_together_are_a_caution() {
        Share both = new Share(1, List.of(3), List.of(4));
        BuildFixture build = aBuild().with(oneSlot().shares(both));

        Finding finding = check(new DriveSharesRule(), build);

        assertThat(finding).isCaution();
    }
}
