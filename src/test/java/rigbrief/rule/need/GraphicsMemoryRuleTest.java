package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.ProcessorFixture.aProcessor;
import static rigbrief.fixture.ScreenFixture.aScreen;
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

    /** By hand: 4 megapixels at 4 GB each; at half the pixels a side, 1 megapixel. */
    @Test
    void a_card_that_cannot_upscale_holds_every_pixel_that_is_shown() {
        BriefFixture brief =
                aBrief().use(aNeed(MARSH).upscaling("half"))
                        .screen(aScreen().mode(2_000, 2_000, 60));
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .workload(aWorkload().vramGb(0).vramGbPerMegapixel(4).frames());

        Finding plain =
                check(new GraphicsMemoryRule(), aBuild().with(aGraphicsCard()), brief, catalogue);
        Finding upscaling =
                check(
                        new GraphicsMemoryRule(),
                        aBuild().with(aGraphicsCard().upscaling("gen")),
                        brief,
                        catalogue);

        assertThat(plain).isBreachOf(4).saying("want 16 GB of graphics memory, there are 12 GB");
        assertThat(upscaling).isMet().hasMargin(12, 4, Unit.GB);
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
