package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.WorkloadFixture.KILN;
import static rigbrief.fixture.WorkloadFixture.MARSH;
import static rigbrief.fixture.WorkloadFixture.aWorkload;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class MemoryEnoughRuleTest {
    @Test
    void more_than_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().memory(16, false);

        Finding finding = check(new MemoryEnoughRule(), build, brief);

        assertThat(finding).isMet().hasMargin(32, 16, Unit.GB);
    }

    @Test
    void exactly_as_much_as_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().memory(32, false);

        Finding finding = check(new MemoryEnoughRule(), build, brief);

        assertThat(finding).isMet().hasMargin(32, 32, Unit.GB);
    }

    @Test
    void one_gb_short_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().memory(33, false);

        Finding finding = check(new MemoryEnoughRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("33 GB of memory wanted, there are 32 GB");
    }

    @Test
    void kits_count_together() {
        BuildFixture build = aBuild().with(aMemoryKit(), 2);
        BriefFixture brief = aBrief().memory(64, false);

        Finding finding = check(new MemoryEnoughRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void what_runs_at_once_is_added() {
        // By hand: 10 + 18.5 + 4 GB for the system (common practice) = 32.5 GB, rounded up 33.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(MARSH)).atOnce(KILN);
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .workload(aWorkload().memoryGb(10).frames())
                        .workload(aWorkload().memoryGb(18.5).task());

        Finding finding = check(new MemoryEnoughRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(1);
    }
}
