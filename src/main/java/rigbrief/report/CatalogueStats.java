package rigbrief.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.pricelist.PriceHistory;
import rigbrief.pricelist.PriceTrend;

/**
 * A catalogue counted through.
 *
 * @param catalogue the catalogue
 * @param kinds one line per kind of part
 * @param suppliers one line per supplier
 * @param withoutOffer ids of parts that nobody offers, in file order
 * @param singleOffer number of parts that one supplier alone offers
 * @param staleOffers number of offers older than the catalogue's limit
 * @param trend how prices have moved; empty when nothing is known of earlier ones
 */
public record CatalogueStats(
        Catalogue catalogue,
        List<KindLine> kinds,
        List<SupplierLine> suppliers,
        List<String> withoutOffer,
        int singleOffer,
        int staleOffers,
        Optional<PriceTrend> trend) {

    /**
     * A kind of part, priced by each part's cheapest offer.
     *
     * @param kind the kind
     * @param parts number of parts
     * @param offered number of parts with an offer
     * @param makers number of makers
     * @param prices cheapest, median and dearest; empty when nothing of the kind is offered
     */
    public record KindLine(
            Kind kind, int parts, int offered, int makers, Optional<Prices> prices) {}

    /**
     * Prices of a kind.
     *
     * @param least the cheapest part's
     * @param median half of the parts cost at most as much
     * @param most the dearest part's
     */
    public record Prices(BigDecimal least, BigDecimal median, BigDecimal most) {}

    /**
     * A supplier.
     *
     * @param supplier the supplier
     * @param offers number of offers
     * @param stale number of offers older than the catalogue's limit
     * @param soldOut number of offers with no stock
     */
    public record SupplierLine(Supplier supplier, int offers, int stale, int soldOut) {}

    /** Counts a catalogue through, with what is known of earlier prices. */
    public static CatalogueStats of(Catalogue catalogue, PriceHistory history) {
        CatalogueStats stats = of(catalogue);
        boolean earlier = history.series().stream().anyMatch(each -> each.offers().size() > 1);
        return new CatalogueStats(
                catalogue,
                stats.kinds,
                stats.suppliers,
                stats.withoutOffer,
                stats.singleOffer,
                stats.staleOffers,
                earlier ? Optional.of(PriceTrend.of(history)) : Optional.empty());
    }

    /** Counts a catalogue through. */
    public static CatalogueStats of(Catalogue catalogue) {
        List<KindLine> kinds = new ArrayList<>();
        List<String> withoutOffer = new ArrayList<>();
        int single = 0;
        int stale = 0;
        for (Kind kind : Kind.values()) {
            kinds.add(kindLine(kind, catalogue));
            for (Part part : catalogue.parts(kind)) {
                List<Offer> offers = catalogue.offers(part.id());
                if (offers.isEmpty()) {
                    withoutOffer.add(part.id());
                }
                single += suppliersOf(offers) == 1 ? 1 : 0;
                stale += (int) offers.stream().filter(offer -> stale(offer, catalogue)).count();
            }
        }
        return new CatalogueStats(
                catalogue,
                kinds,
                supplierLines(catalogue),
                withoutOffer,
                single,
                stale,
                Optional.empty());
    }

    private static KindLine kindLine(Kind kind, Catalogue catalogue) {
        List<BigDecimal> cheapest = new ArrayList<>();
        TreeSet<String> makers = new TreeSet<>();
        for (Part part : catalogue.parts(kind)) {
            makers.add(part.listing().maker());
            catalogue.offers(part.id()).stream()
                    .map(offer -> offer.price().amount())
                    .min(BigDecimal::compareTo)
                    .ifPresent(cheapest::add);
        }
        return new KindLine(
                kind,
                catalogue.parts(kind).size(),
                cheapest.size(),
                makers.size(),
                prices(cheapest));
    }

    private static Optional<Prices> prices(List<BigDecimal> amounts) {
        if (amounts.isEmpty()) {
            return Optional.empty();
        }
        List<BigDecimal> sorted = new ArrayList<>(amounts);
        Collections.sort(sorted);
        return Optional.of(
                new Prices(sorted.get(0), median(sorted), sorted.get(sorted.size() - 1)));
    }

    /** The middle one; of an even number the mean of the two in the middle. */
    private static BigDecimal median(List<BigDecimal> sorted) {
        BigDecimal upper = sorted.get(sorted.size() / 2);
        BigDecimal lower = sorted.get((sorted.size() - 1) / 2);
        return lower.add(upper).divide(BigDecimal.valueOf(2), upper.scale(), RoundingMode.HALF_UP);
    }

    private static List<SupplierLine> supplierLines(Catalogue catalogue) {
        List<SupplierLine> lines = new ArrayList<>();
        for (Supplier supplier : catalogue.suppliers()) {
            int offers = 0;
            int stale = 0;
            int soldOut = 0;
            for (Kind kind : Kind.values()) {
                for (Part part : catalogue.parts(kind)) {
                    for (Offer offer : catalogue.offers(part.id())) {
                        if (offer.supplier().equals(supplier.id())) {
                            offers++;
                            stale += stale(offer, catalogue) ? 1 : 0;
                            soldOut += offer.stock() == 0 ? 1 : 0;
                        }
                    }
                }
            }
            lines.add(new SupplierLine(supplier, offers, stale, soldOut));
        }
        return lines;
    }

    private static long suppliersOf(List<Offer> offers) {
        return offers.stream().map(Offer::supplier).distinct().count();
    }

    private static boolean stale(Offer offer, Catalogue catalogue) {
        return ChronoUnit.DAYS.between(offer.asOf(), catalogue.asOf())
                >= catalogue.reference().staleDays();
    }
}
