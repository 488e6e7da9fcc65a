package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.FanFixture.aFan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Reference;
import rigbrief.catalogue.Supplier;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Kind;
import rigbrief.report.CatalogueStats.KindLine;
import rigbrief.report.CatalogueStats.Prices;

/** Expected numbers are counted by hand. */
class CatalogueStatsTest {

    @Test
    void a_part_counts_at_its_cheapest_offer() {
        var fans = fans(fan("a", "5.00", "4.50"), fan("b", "9.00"), fan("c", "20.00", "21.00"));

        assertThat(fans.prices())
                .contains(
                        new Prices(
                                new BigDecimal("4.50"),
                                new BigDecimal("9.00"),
                                new BigDecimal("20.00")));
        assertThat(fans.parts()).isEqualTo(3);
        assertThat(fans.offered()).isEqualTo(3);
    }

    @Test
    void the_median_of_an_even_number_lies_between_the_middle_two() {
        var fans = fans(fan("a", "4.00"), fan("b", "5.01"));

        assertThat(fans.prices().orElseThrow().median()).isEqualTo(new BigDecimal("4.51"));
    }

    @Test
    void parts_that_nobody_offers_are_named_and_have_no_price() {
        var stats = CatalogueStats.of(aCatalogue().part(aFan().id("a").make()).make());

        assertThat(stats.withoutOffer()).containsExactly("a");
        assertThat(stats.kinds())
                .filteredOn(line -> line.kind() == Kind.FAN)
                .allMatch(line -> line.prices().isEmpty() && line.offered() == 0);
    }

    @Test
    void two_offers_of_one_supplier_are_still_a_single_source() {
        var stats =
                CatalogueStats.of(
                        aCatalogue()
                                .part(aFan().id("a").make())
                                .offer("a", KESTREL, "5.00")
                                .offer("a", KESTREL, "4.00")
                                .part(aFan().id("b").make())
                                .offer("b", KESTREL, "5.00")
                                .offer("b", QUAY, "4.00")
                                .make());

        assertThat(stats.singleOffer()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"2026-10-06, 1", "2026-10-07, 0"})
    void an_offer_is_stale_from_forty_five_days_on(LocalDate asOf, int stale) {
        var supplier = new Supplier(KESTREL, KESTREL, CatalogueFixture.euro("0.00"));
        var catalogue =
                new Catalogue(
                        "fixture",
                        CatalogueFixture.EURO,
                        LocalDate.of(2026, 11, 20),
                        "sha256:0",
                        new Reference(25, 75, 84, 45),
                        List.of(supplier),
                        List.of(aFan().id("a").make()),
                        List.of(new Offer("a", KESTREL, CatalogueFixture.euro("5.00"), 0, 3, asOf)),
                        List.of());

        var stats = CatalogueStats.of(catalogue);

        assertThat(stats.staleOffers()).isEqualTo(stale);
        assertThat(stats.suppliers().get(0).stale()).isEqualTo(stale);
        assertThat(stats.suppliers().get(0).soldOut()).isEqualTo(1);
    }

    private record Offered(String id, String... prices) {}

    private static Offered fan(String id, String... prices) {
        return new Offered(id, prices);
    }

    private static KindLine fans(Offered... offered) {
        CatalogueFixture catalogue = aCatalogue();
        for (Offered fan : offered) {
            catalogue.part(aFan().id(fan.id()).make());
            for (String price : fan.prices()) {
                catalogue.offer(fan.id(), KESTREL, price);
            }
        }
        return CatalogueStats.of(catalogue.make()).kinds().stream()
                .filter(line -> line.kind() == Kind.FAN)
                .findFirst()
                .orElseThrow();
    }
}
