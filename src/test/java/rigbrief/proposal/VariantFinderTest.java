package rigbrief.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.SupplyFixture.aSupply;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Cost;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;

class VariantFinderTest {
    private static final Build BUILD = aBuild().make();
    private static final String SUPPLY = BUILD.supply().id();
    private static final Brief FORTY = brief("90000.00");

    private static Brief brief(String ceiling) {
        Brief plain = aBrief().quantity(40).ceiling(ceiling).make();
        return new BriefDraft(plain).buying(plain.buying().with(true)).toBrief();
    }

    /** 26 supplies of the first kind: 14 machines have the cheapest other that fits. */
    @Test
    void the_cheapest_other_part_covers_the_rest() {
        Catalogue catalogue =
                shortOfSupplies(26)
                        .part(aSupply().id("supply-dear"))
                        .offer("supply-dear", KESTREL, "120.00")
                        .part(aSupply().id("supply-next"))
                        .offer("supply-next", KESTREL, "110.00")
                        .part(aSupply().id("supply-few"))
                        .offer("supply-few", KESTREL, "101.00", 13, 3)
                        .make();

        Mix mix = new VariantFinder(FORTY, catalogue).find(BUILD).orElseThrow();

        assertThat(mix.first().machines()).isEqualTo(26);
        assertThat(mix.second().machines()).isEqualTo(14);
        assertThat(mix.changed()).containsExactly(Slot.SUPPLY);
        assertThat(mix.second().audit().build().supply().id()).isEqualTo("supply-next");
        assertThat(mix.first().audit().fits()).isTrue();
        assertThat(mix.second().audit().fits()).isTrue();
        // Hand calculation: 40 of every part at 100.00, and 14 supplies at 10.00 more; deliveries
        // of the fixture are free.
        long each = 10_000L * BUILD.filled().size();
        long fees = FORTY.fees().assembly().minorUnits() * 40;
        assertThat(mix.totalMinor()).isEqualTo(40 * each + 14 * 1_000 + fees);
    }

    @Test
    void a_mix_over_the_ceiling_is_none() {
        Catalogue catalogue =
                shortOfSupplies(26)
                        .part(aSupply().id("supply-next"))
                        .offer("supply-next", KESTREL, "110.00")
                        .make();
        long total = new VariantFinder(FORTY, catalogue).find(BUILD).orElseThrow().totalMinor();

        assertThat(finds(total, catalogue)).isTrue();
        assertThat(finds(total - 1, catalogue)).isFalse();
    }

    private static boolean finds(long ceilingMinor, Catalogue catalogue) {
        String ceiling = "%d.%02d".formatted(ceilingMinor / 100, ceilingMinor % 100);
        return new VariantFinder(brief(ceiling), catalogue).find(BUILD).isPresent();
    }

    @Test
    void enough_of_everything_needs_no_second_variant() {
        assertThat(new VariantFinder(FORTY, shortOfSupplies(40).make()).find(BUILD)).isEmpty();
    }

    @Test
    void none_of_a_part_is_no_first_variant() {
        assertThat(new VariantFinder(FORTY, shortOfSupplies(0).make()).find(BUILD)).isEmpty();
    }

    @Test
    void no_other_part_that_fits_is_no_mix() {
        assertThat(new VariantFinder(FORTY, shortOfSupplies(26).make()).find(BUILD)).isEmpty();
    }

    @Test
    void a_brief_that_allows_no_variants_gets_none() {
        Brief alike = aBrief().quantity(40).ceiling("90000.00").make();
        Catalogue catalogue =
                shortOfSupplies(26)
                        .part(aSupply().id("supply-next"))
                        .offer("supply-next", KESTREL, "110.00", 20, 3)
                        .make();

        assertThat(new VariantProposer(SearchLimits.usual()).propose(alike, catalogue)).isEmpty();
        assertThat(new Proposer(SearchLimits.usual()).propose(alike, catalogue).clash())
                .isPresent();
    }

    /** Whatever the mix: nobody is asked for more than he has. */
    @Test
    void the_two_variants_together_take_no_more_than_there_is() {
        Catalogue catalogue =
                shortOfSupplies(26)
                        .part(aSupply().id("supply-next"))
                        .offer("supply-next", KESTREL, "110.00", 20, 3)
                        .make();

        var answer = new Proposer(SearchLimits.usual()).propose(FORTY, catalogue);

        Mix mix = answer.mix().orElseThrow();
        assertThat(answer.impossible()).isFalse();
        Map<String, Integer> taken = new TreeMap<>();
        add(taken, mix.first());
        add(taken, mix.second());
        taken.forEach(
                (key, units) ->
                        assertThat(units).as(key).isLessThanOrEqualTo(stock(catalogue, key)));
    }

    private static void add(Map<String, Integer> taken, Mix.Share share) {
        for (Cost.Line line : share.audit().cost().lines()) {
            String part = share.audit().build().part(line.slot()).id();
            taken.merge(
                    part + " " + line.supplier(), line.pieces() * share.machines(), Integer::sum);
        }
    }

    private static int stock(Catalogue catalogue, String key) {
        return catalogue.offers(key.split(" ")[0]).stream()
                .filter(offer -> offer.supplier().equals(key.split(" ")[1]))
                .mapToInt(Offer::stock)
                .sum();
    }

    private static CatalogueFixture shortOfSupplies(int supplies) {
        return aCatalogue()
                .offering(BUILD)
                .noOffer(SUPPLY)
                .offer(SUPPLY, KESTREL, "100.00", supplies, 3);
    }
}
