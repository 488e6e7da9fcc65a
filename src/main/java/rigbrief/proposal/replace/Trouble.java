package rigbrief.proposal.replace;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.quantity.Money;

/**
 * What has happened to the parts of a build since it was filed.
 *
 * @param unavailable ids of parts that can't be bought any more; what is here already stays
 * @param faulty ids of parts that arrived or became faulty, which the supplier takes back in full
 * @param prices new prices of one pack by part id, in the order they were told
 */
public record Trouble(List<String> unavailable, List<String> faulty, Map<String, Money> prices) {
    /** Nothing but what the build file and the catalogue say themselves. */
    public static final Trouble NONE = new Trouble(List.of(), List.of(), Map.of());

    public Trouble {
        unavailable = List.copyOf(unavailable);
        faulty = List.copyOf(faulty);
        prices = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(prices));
    }

    /** One part that can't be bought any more. */
    public static Trouble without(String part) {
        return new Trouble(List.of(part), List.of(), Map.of());
    }

    /** Every part that is named, once. */
    public List<String> named() {
        java.util.Set<String> all = new java.util.LinkedHashSet<>(unavailable);
        all.addAll(faulty);
        all.addAll(prices.keySet());
        return List.copyOf(new java.util.ArrayList<>(all));
    }
}
