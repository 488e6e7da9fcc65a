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

class IdleLicenceRuleTest {
    @Test
    void a_licence_nobody_wants_is_a_caution() {
        BuildFixture build = aBuild().with(aLicence());
        BriefFixture brief = aBrief();

        Finding finding = check(new IdleLicenceRule(), build, brief);

        assertThat(finding).isCaution();
    }

    @Test
    void a_licence_that_is_wished_for_is_met() {
        BuildFixture build = aBuild().with(aLicence());
        BriefFixture brief = aBrief().system(Strength.WISH);

        Finding finding = check(new IdleLicenceRule(), build, brief);

        assertThat(finding).isMet();
    }
}
