package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class SuppliersRuleTest {
    @Test
    void any_number_is_met_where_nothing_is_asked() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .noOffer("graphics-1")
                        .offer("graphics-1", QUAY, "90.00");

        Finding finding = check(new SuppliersRule(), build, brief, catalogue);

        assertThat(finding).isMet();
    }

    @Test
    void exactly_as_many_as_allowed_are_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().atMostSuppliers(2);
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .noOffer("graphics-1")
                        .offer("graphics-1", QUAY, "90.00");

        Finding finding = check(new SuppliersRule(), build, brief, catalogue);

        assertThat(finding).isMet().hasMargin(2, 2, Unit.PIECE);
    }

    @Test
    void one_supplier_too_many_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().atMostSuppliers(1);
        CatalogueFixture catalogue =
                aCatalogue()
                        .offering(aBuild().make())
                        .noOffer("graphics-1")
                        .offer("graphics-1", QUAY, "90.00");

        Finding finding = check(new SuppliersRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(1).saying("2 suppliers, 1 allowed");
    }

    @Test
    void one_supplier_for_all_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().atMostSuppliers(1);

        Finding finding = check(new SuppliersRule(), build, brief);

        assertThat(finding).isMet();
    }
}
