package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class CeilingRuleTest {
    @Test
    void a_total_under_the_ceiling_is_met() {
        // By hand: eight parts at 100.00.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new CeilingRule(), build, brief);

        assertThat(finding).isMet().hasMargin(200_000, 80_000, Unit.MINOR_MONEY);
    }

    @Test
    void a_total_exactly_at_the_ceiling_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().ceiling("800.00");

        Finding finding = check(new CeilingRule(), build, brief);

        assertThat(finding).isMet().hasMargin(80_000, 80_000, Unit.MINOR_MONEY);
    }

    @Test
    void one_cent_over_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().ceiling("799.99");

        Finding finding = check(new CeilingRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("EUR 800.00 all in is EUR 0.01 over EUR 799.99");
    }

    @Test
    void over_the_ceiling_within_the_overrun_is_a_caution() {
        // By hand: 780.00 and 3 % of it, 803.40.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().ceiling("780.00").overrunPercent(3);

        Finding finding = check(new CeilingRule(), build, brief);

        assertThat(finding)
                .isCaution()
                .hasMargin(80_340, 80_000, Unit.MINOR_MONEY)
                .saying("EUR 20.00 over EUR 780.00, within the overrun");
    }

    @Test
    void exactly_at_the_overrun_is_a_caution() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().ceiling("640.00").overrunPercent(25);

        Finding finding = check(new CeilingRule(), build, brief);

        assertThat(finding).isCaution().hasMargin(80_000, 80_000, Unit.MINOR_MONEY);
    }

    @Test
    void two_cents_over_the_overrun_are_a_breach_of_two() {
        // By hand: a quarter of 639.99 is 159.9975, rounded down 159.99.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().ceiling("639.99").overrunPercent(25);

        Finding finding = check(new CeilingRule(), build, brief);

        assertThat(finding).isBreachOf(2).hasMargin(79_998, 80_000, Unit.MINOR_MONEY);
    }

    @Test
    void fees_delivery_and_tax_count() {
        // By hand: (800.00 + 2.64 + 120.00) x 1.21 = 1116.3944, rounded half up 1116.39.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().ceiling("1115.39").fees("120.00", 21);
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).supplier(KESTREL, "2.64");

        Finding finding = check(new CeilingRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(100);
    }

    @Test
    void all_machines_count_together() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().ceiling("1600.00").quantity(2);

        Finding finding = check(new CeilingRule(), build, brief);

        assertThat(finding).isMet().hasMargin(160_000, 160_000, Unit.MINOR_MONEY);
    }

    @Test
    void a_part_dearer_than_the_ceiling_breaks_it_alone() {
        BuildFixture card = anEmptyBuild().with(aGraphicsCard());

        Finding finding = check(new CeilingRule(), card, aBrief().ceiling("99.00"));

        assertThat(finding).isBreachOf(100);
    }
}
