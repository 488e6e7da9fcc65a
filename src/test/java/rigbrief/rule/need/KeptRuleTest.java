package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class KeptRuleTest {
    @Test
    void nothing_kept_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new KeptRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_kept_part_in_its_slot_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().keeps(Slot.CASE, aCase());

        Finding finding = check(new KeptRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_replaced_part_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aCase().id("case-2"));
        BriefFixture brief = aBrief().keeps(Slot.CASE, aCase());

        Finding finding = check(new KeptRule(), build, brief);

        assertThat(finding)
                .isBreachOf(1)
                .saying("kept by the client but not used: Hollin model case-1");
    }

    @Test
    void a_missing_part_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().keeps(Slot.SECOND_DRIVE, aDrive());

        Finding finding = check(new KeptRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void kept_parts_are_counted() {
        BuildFixture build = aBuild();
        BriefFixture brief =
                aBrief().keeps(Slot.SECOND_DRIVE, aDrive())
                        .keeps(Slot.FANS, aFan())
                        .keeps(Slot.CASE, aCase());

        Finding finding = check(new KeptRule(), build, brief);

        assertThat(finding).isBreachOf(2);
    }
}
