package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.SystemFixture.aLicence;

import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief.Strength;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.rule.Finding;

class SystemLicenceRuleTest {
    @Test
    void nothing_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new SystemLicenceRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_licence_that_must_be_there_and_is_not_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().system(Strength.MUST);

        Finding finding = check(new SystemLicenceRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("licence of any kind is not on the order");
    }

    @Test
    void any_licence_is_met() {
        BuildFixture build = aBuild().with(aLicence());
        BriefFixture brief = aBrief().system(Strength.MUST);

        Finding finding = check(new SystemLicenceRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void the_named_licence_is_met() {
        BuildFixture build = aBuild().with(aLicence());
        BriefFixture brief = aBrief().system("system-1");

        Finding finding = check(new SystemLicenceRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void another_licence_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aLicence());
        BriefFixture brief = aBrief().system("system-2");

        Finding finding = check(new SystemLicenceRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("system-2");
    }

    @Test
    void an_unmet_wish_is_a_caution() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().system(Strength.WISH);

        Finding finding = check(new SystemLicenceRule(), build, brief);

        assertThat(finding).isCaution().saying("wished for");
    }
}
