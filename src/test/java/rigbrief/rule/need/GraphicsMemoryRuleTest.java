package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.ProcessorFixture.aProcessor;
import static rigbrief.fixture.WorkloadFixture.MARSH;
import static rigbrief.fixture.WorkloadFixture.aWorkload;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class GraphicsMemoryRuleTest {
    @Test
    void nothing_wanted_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new GraphicsMemoryRule(), build, brief);

        assertThat(finding).isMet().hasMargin(12, 0, Unit.GB);
    }

    @Test
    void exactly_enough_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(MARSH));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().vramGb(12).frames());

        Finding finding = check(new GraphicsMemoryRule(), build, brief, catalogue);

        assertThat(finding).isMet().hasMargin(12, 12, Unit.GB);
    }

    @Test
    void a_little_more_is_a_breach_of_one_gb() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(MARSH));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().vramGb(12.01).frames());

        Finding finding = check(new GraphicsMemoryRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(1).saying("want 13 GB of graphics memory, there are 12 GB");
    }

    @Test
    void settings_count() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().use(aNeed(MARSH).preset("low"));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().vramGb(24).frames());

        Finding finding = check(new GraphicsMemoryRule(), build, brief, catalogue);

        assertThat(finding).isMet().hasMargin(12, 12, Unit.GB);
    }

    @Test
    void integrated_graphics_borrow_four_gb() {
        // Common practice.
        BuildFixture build = aBuild().without(Slot.GRAPHICS);
        BriefFixture brief = aBrief().use(aNeed(MARSH));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().vramGb(4).frames());

        Finding finding = check(new GraphicsMemoryRule(), build, brief, catalogue);

        assertThat(finding).isMet().hasMargin(4, 4, Unit.GB);
    }

    @Test
    void five_are_a_breach_of_one() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS);
        BriefFixture brief = aBrief().use(aNeed(MARSH));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().vramGb(5).frames());

        Finding finding = check(new GraphicsMemoryRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void no_graphics_at_all_have_none() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aProcessor().integratedTflops(0));
        BriefFixture brief = aBrief().use(aNeed(MARSH));
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().frames());

        Finding finding = check(new GraphicsMemoryRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(3);
    }
}
