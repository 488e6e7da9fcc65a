package rigbrief.pricelist;

import java.util.List;
import rigbrief.catalogue.Offer;

/**
 * What a price list means for a catalogue.
 *
 * @param list the list
 * @param matches rows that are parts, in file order
 * @param changes what becomes of their offers, in file order; those that sell out unlisted behind
 * @param unmatched rows that are not known to be parts
 * @param suspicions what is more likely wrong than right
 * @param unlisted offers of the supplier that the list does not name
 */
public record ImportPlan(
        PriceList list,
        List<Match> matches,
        List<OfferChange> changes,
        List<Unmatched> unmatched,
        List<Suspicion> suspicions,
        List<Offer> unlisted) {
    public ImportPlan {
        matches = List.copyOf(matches);
        changes = List.copyOf(changes);
        unmatched = List.copyOf(unmatched);
        suspicions = List.copyOf(suspicions);
        unlisted = List.copyOf(unlisted);
    }

    /** Whether nothing stands against carrying it out. */
    public boolean sound() {
        return suspicions.isEmpty();
    }
}
