package rigbrief.pricelist;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.euro;
import static rigbrief.fixture.FanFixture.aFan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.catalogue.Offer;

class PriceHistoryTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 1);

    @Test
    void an_offer_on_record_that_is_current_still_counts_once() {
        var history = new PriceHistory(List.of(offer(0, "5.00")), List.of(offer(0, "5.00")));

        assertThat(history.size()).isEqualTo(1);
    }

    @Test
    void a_series_goes_by_date_whatever_the_order_of_the_file() {
        var history =
                new PriceHistory(
                        List.of(offer(7, "6.00"), offer(0, "5.00")), List.of(offer(14, "7.00")));

        assertThat(history.series()).hasSize(1);
        assertThat(history.series().get(0).offers())
                .extracting(offer -> offer.price().plain())
                .containsExactly("5.00", "6.00", "7.00");
    }

    /** Weekly lists: 5.00 four times, then 6.00 twice. Kept: the ends of the run of 5.00. */
    @Test
    void of_a_price_confirmed_again_and_again_the_first_and_the_last_day_are_kept() {
        List<String> prices = List.of("5.00", "5.00", "5.00", "5.00", "6.00", "6.00");
        List<Offer> recorded = new ArrayList<>();
        Offer current = offer(0, prices.get(0));

        for (int week = 1; week < prices.size(); week++) {
            Offer next = offer(7 * week, prices.get(week));
            var change = new OfferChange(aFan().id("fan-a").make(), Optional.of(current), next);
            recorded.addAll(PriceHistory.toRecord(recorded, List.of(change)));
            current = next;
        }

        assertThat(recorded)
                .extracting(offer -> offer.asOf() + " " + offer.price().plain())
                .containsExactly("2026-11-01 5.00", "2026-11-22 5.00", "2026-11-29 6.00");
    }

    /** From 5.00 to 6.00 are 20 %: hand calculation. */
    @Test
    void a_trend_goes_from_the_oldest_price_to_the_newest() {
        var trend =
                PriceTrend.of(
                        new PriceHistory(List.of(offer(0, "5.00")), List.of(offer(7, "6.00"))));

        assertThat(trend.moves().get(0).percent()).isEqualByComparingTo("20.0");
        assertThat(trend.dearer()).isEqualTo(1);
        assertThat(trend.cheaper()).isZero();
        assertThat(trend.from()).isEqualTo(DAY);
        assertThat(trend.to()).isEqualTo(DAY.plusDays(7));
    }

    private static Offer offer(int days, String price) {
        return new Offer("fan-a", KESTREL, euro(price), 3, 2, DAY.plusDays(days));
    }
}
