package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.rule.Finding;

class MemoryEccRuleTest {
    @Test
    void plain_memory_is_met_where_nothing_is_asked() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new MemoryEccRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void plain_memory_is_a_breach_of_one_where_correction_is_asked() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().memory(0, true);

        Finding finding = check(new MemoryEccRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("corrects no errors");
    }

    @Test
    void correcting_memory_is_met() {
        BuildFixture build = aBuild().with(aMemoryKit().ecc(true));
        BriefFixture brief = aBrief().memory(0, true);

        Finding finding = check(new MemoryEccRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void correcting_memory_is_met_where_nothing_is_asked() {
        BuildFixture build = aBuild().with(aMemoryKit().ecc(true));
        BriefFixture brief = aBrief();

        Finding finding = check(new MemoryEccRule(), build, brief);

        assertThat(finding).isMet();
    }
}
