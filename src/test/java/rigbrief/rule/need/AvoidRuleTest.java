package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class AvoidRuleTest {
    @Test
    void nothing_to_avoid_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new AvoidRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_maker_not_used_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().avoidMakers("Thorn");

        Finding finding = check(new AvoidRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_part_to_avoid_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().avoidParts("graphics-1");

        Finding finding = check(new AvoidRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("to be avoided: Lantern Row model graphics-1");
    }

    @Test
    void every_part_of_a_maker_counts_whatever_the_case_of_letters() {
        BuildFixture build = aBuild().with(aFan());
        BriefFixture brief = aBrief().avoidMakers("WINDLE");

        Finding finding = check(new AvoidRule(), build, brief);

        assertThat(finding).isBreachOf(2);
    }

    @Test
    void a_part_named_twice_counts_once() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().avoidMakers("Lantern Row").avoidParts("graphics-1");

        Finding finding = check(new AvoidRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void the_client_s_own_part_passes() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().avoidMakers("Hollin").keeps(Slot.CASE, aCase());

        Finding finding = check(new AvoidRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void one_part_alone_can_break_it() {
        BuildFixture build = anEmptyBuild().with(aFan());
        BriefFixture brief = aBrief().avoidMakers("Windle");

        Finding finding = check(new AvoidRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }
}
