package rigbrief.presolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessor;
import rigbrief.assess.Pricing;
import rigbrief.catalogue.Offer;
import rigbrief.part.Slot;

/**
 * Drops candidates that another one can always stand in for.
 *
 * <p>One covers another when it costs no more from any set of suppliers and is at least as good in
 * every column that rules, models and goals read. Where only money counts, a candidate that costs
 * less from every set need only be as good for rules and models.
 */
public final class Dominance {
    private final Assessor assessor;
    private final TraitReader reader;
    private final boolean moneyOnly;

    private Dominance(Assessor assessor, boolean moneyOnly) {
        this.assessor = assessor;
        this.reader = new TraitReader(assessor);
        this.moneyOnly = moneyOnly;
    }

    /**
     * The candidates that no other covers; they keep their places in the slots' lists.
     *
     * @param moneyOnly whether utility only decides between builds of equal money
     * @return for every slot the candidates that stay, in the slot's order
     */
    public static Map<Slot, List<Candidate>> undominated(
            Assessor assessor, Candidates candidates, boolean moneyOnly) {
        Dominance dominance = new Dominance(assessor, moneyOnly);
        Map<Slot, List<Candidate>> left = new EnumMap<>(Slot.class);
        for (Slot slot : Slot.values()) {
            left.put(slot, dominance.left(candidates.of(slot)));
        }
        return left;
    }

    private List<Candidate> left(List<Candidate> candidates) {
        Map<Object, List<Candidate>> groups = new LinkedHashMap<>();
        Map<Candidate, Traits> traits = new IdentityHashMap<>();
        List<Candidate> left = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (candidate.none() || candidates.size() == 1) {
                left.add(candidate);
            } else {
                Traits own = reader.read(candidate);
                order(candidate, own);
                traits.put(candidate, own);
                groups.computeIfAbsent(own.group(), any -> new ArrayList<>()).add(candidate);
            }
        }
        for (List<Candidate> group : groups.values()) {
            for (Candidate candidate : group) {
                if (!covered(candidate, group, traits)) {
                    left.add(candidate);
                }
            }
        }
        left.sort(Comparator.comparingInt(Candidate::index));
        return Collections.unmodifiableList(left);
    }

    /**
     * A cheaper part can move the whole order to other suppliers, so where a simple order counts
     * only parts offered alike stand in for each other.
     */
    private void order(Candidate candidate, Traits traits) {
        if (assessor.brief().wishes().weight("simple-order") > 0) {
            List<Object> offers = new ArrayList<>();
            for (Offer offer : assessor.offers().of(candidate.partOrNull(), candidate.pieces())) {
                offers.add(
                        offer == null
                                ? ""
                                : List.of(offer.supplier(), offer.price(), offer.leadDays()));
            }
            traits.alikeForGoals(offers);
        }
    }

    private boolean covered(
            Candidate candidate, List<Candidate> group, Map<Candidate, Traits> traits) {
        for (Candidate other : group) {
            if (other != candidate && covers(other, candidate, traits)) {
                boolean mutual = covers(candidate, other, traits);
                if (!mutual || other.index() < candidate.index()) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean covers(Candidate one, Candidate other, Map<Candidate, Traits> traits) {
        int price = priceComparison(one.minorBySet(), other.minorBySet());
        return price <= 0
                && traits.get(one).coversRules(traits.get(other))
                && ((moneyOnly && price < 0) || traits.get(one).coversGoals(traits.get(other)));
    }

    /**
     * -1: cheaper from every set that offers the other; 0: never dearer; 1: dearer from some set.
     */
    private static int priceComparison(long[] one, long[] other) {
        boolean cheaper = true;
        for (int set = 0; set < one.length; set++) {
            if (one[set] > other[set]) {
                return 1;
            }
            cheaper &= one[set] < other[set] || other[set] >= Pricing.notToBeHad();
        }
        return cheaper ? -1 : 0;
    }
}
