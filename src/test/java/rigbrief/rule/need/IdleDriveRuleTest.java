package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class IdleDriveRuleTest {
    @Test
    void one_drive_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new IdleDriveRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_second_drive_beside_one_that_holds_exactly_all_is_a_caution() {
        BriefFixture brief = aBrief().storage(1_000);

        Finding finding = check(new IdleDriveRule(), withSecond(), brief);

        assertThat(finding).isCaution().saying("the second, Cobble model drive-1, is spare");
    }

    @Test
    void a_second_drive_beside_one_that_is_a_gb_short_is_met() {
        BriefFixture brief = aBrief().storage(1_001);

        Finding finding = check(new IdleDriveRule(), withSecond(), brief);

        assertThat(finding).isMet();
    }

    @Test
    void the_client_s_own_second_drive_passes() {
        BriefFixture brief = aBrief().keeps(Slot.SECOND_DRIVE, aDrive());

        Finding finding = check(new IdleDriveRule(), withSecond(), brief);

        assertThat(finding).isMet();
    }

    @Test
    void the_search_never_proposes_one() {
        IdleDriveRule rule = new IdleDriveRule();

        Finding idle = check(rule, withSecond());

        Assertions.assertThat(rule.forbids(idle)).isTrue();
        Assertions.assertThat(rule.forbids(Finding.MET)).isFalse();
    }

    private static BuildFixture withSecond() {
        return aBuild().with(Slot.SECOND_DRIVE, aDrive());
    }
}
