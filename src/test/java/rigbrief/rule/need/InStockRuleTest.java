package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class InStockRuleTest {
    @Test
    void parts_on_offer_are_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new InStockRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_part_nobody_offers_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();
        CatalogueFixture catalogue = aCatalogue().offering(aBuild().make()).noOffer("graphics-1");

        Finding finding = check(new InStockRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(1).saying("1 x Lantern Row model graphics-1");
    }

    @Test
    void stock_for_all_machines_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().quantity(100);

        Finding finding = check(new InStockRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void one_machine_more_than_stock_is_a_breach_of_every_part() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().quantity(101);

        Finding finding = check(new InStockRule(), build, brief);

        assertThat(finding).isBreachOf(8).saying("101 x");
    }

    @Test
    void packs_are_counted() {
        BuildFixture build = aBuild().with(aMemoryKit(), 2);
        BriefFixture brief = aBrief().quantity(51);

        Finding finding = check(new InStockRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("102 x Brindle model memory-1");
    }

    @Test
    void a_supplier_not_allowed_is_no_offer() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().suppliers(QUAY);

        Finding finding = check(new InStockRule(), build, brief);

        assertThat(finding).isBreachOf(8);
    }

    @Test
    void a_lead_time_exactly_within_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().withinDays(3);

        Finding finding = check(new InStockRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_lead_time_of_a_day_more_is_a_breach() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().withinDays(2);

        Finding finding = check(new InStockRule(), build, brief);

        assertThat(finding).isBreachOf(8);
    }

    @Test
    void the_client_s_own_part_needs_no_offer() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().keeps(Slot.GRAPHICS, aGraphicsCard());
        CatalogueFixture catalogue = aCatalogue().offering(aBuild().make()).noOffer("graphics-1");

        Finding finding = check(new InStockRule(), build, brief, catalogue);

        assertThat(finding).isMet();
    }

    @Test
    void one_part_alone_can_break_it() {
        BuildFixture build = anEmptyBuild().with(aFan());
        BriefFixture brief = aBrief();
        CatalogueFixture catalogue = aCatalogue();

        Finding finding = check(new InStockRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(1);
    }
}
