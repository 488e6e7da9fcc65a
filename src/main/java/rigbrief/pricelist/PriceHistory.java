package rigbrief.pricelist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigbrief.catalogue.Offer;

/**
 * What offers have been made over time.
 *
 * <p>What is on record and what is on offer now are seen as one: an offer that is in both counts
 * once. So a record written ahead of the offer that supersedes it changes nothing.
 */
public final class PriceHistory {
    private final Map<String, Series> bySeries = new LinkedHashMap<>();

    /**
     * A history.
     *
     * @param recorded offers on record, in file order
     * @param current offers of now, in file order
     */
    public PriceHistory(List<Offer> recorded, List<Offer> current) {
        Set<Offer> once = new LinkedHashSet<>(recorded);
        once.removeAll(current);
        Map<String, List<Offer>> lists = new LinkedHashMap<>();
        once.forEach(offer -> add(lists, offer));
        current.forEach(offer -> add(lists, offer));
        lists.forEach(
                (key, offers) -> {
                    offers.sort(Comparator.comparing(Offer::asOf));
                    bySeries.put(key, new Series(offers));
                });
    }

    private static void add(Map<String, List<Offer>> lists, Offer offer) {
        lists.computeIfAbsent(key(offer), any -> new ArrayList<>()).add(offer);
    }

    private static String key(Offer offer) {
        return offer.part() + "\n" + offer.supplier();
    }

    /**
     * One supplier's offers of one part.
     *
     * @param offers oldest first; at least one
     */
    public record Series(List<Offer> offers) {
        public Series {
            offers = List.copyOf(offers);
        }

        /** The newest. */
        public Offer newest() {
            return offers.get(offers.size() - 1);
        }

        /** The oldest. */
        public Offer oldest() {
            return offers.get(0);
        }
    }

    /** All series, in the order in which their first offers stand in the files. */
    public List<Series> series() {
        return List.copyOf(bySeries.values());
    }

    /** Number of offers, those of now among them. */
    public int size() {
        return bySeries.values().stream().mapToInt(series -> series.offers().size()).sum();
    }

    /**
     * The offers that have to be put on record before changes are carried out.
     *
     * <p>Of a price that is confirmed again and again the first and the last statement are kept.
     *
     * @param recorded what is on record
     * @param changes what is to be changed
     */
    public static List<Offer> toRecord(List<Offer> recorded, List<OfferChange> changes) {
        Map<String, Offer> last = new LinkedHashMap<>();
        recorded.forEach(offer -> last.put(key(offer), offer));
        Set<Offer> known = new LinkedHashSet<>(recorded);
        List<Offer> added = new ArrayList<>();
        for (OfferChange change : changes) {
            change.before()
                    .filter(before -> !before.equals(change.after()) && !known.contains(before))
                    .filter(before -> tells(before, change.after(), last.get(key(before))))
                    .ifPresent(added::add);
        }
        return Collections.unmodifiableList(added);
    }

    private static boolean tells(Offer before, Offer after, Offer last) {
        boolean begins = last == null || !last.price().equals(before.price());
        return begins || !after.price().equals(before.price());
    }
}
