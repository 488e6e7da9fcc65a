package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.SidePanel;
import rigbrief.rule.Finding;

class SideRuleTest {
    @Test
    void no_panel_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new SideRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void the_panel_asked_for_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().side(SidePanel.TINTED);

        Finding finding = check(new SideRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void another_panel_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().side(SidePanel.SOLID);

        Finding finding = check(new SideRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("side panel tinted, solid asked for");
    }
}
