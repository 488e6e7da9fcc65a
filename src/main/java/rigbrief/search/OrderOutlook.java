package rigbrief.search;

import java.util.IdentityHashMap;
import java.util.Map;
import rigbrief.catalogue.Offer;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/** Upper bounds on how simple an order can be. */
final class OrderOutlook {
    private static final Slot[] SLOTS = Slot.values();
    private static final int[] NOTHING = {0, 0};
    private static final double SUPPLIERS = 3;
    private static final double LEAD_DAYS = 21;
    private static final double SINGLE_OFFERS = 5;

    private final Problem problem;
    private final double perThird;
    private final Map<Candidate, int[]> leadAndSingle = new IdentityHashMap<>();
    private final int[] leastLead = new int[SLOTS.length];
    private final int[] leastSingle = new int[SLOTS.length];

    OrderOutlook(Problem problem, double points) {
        this.problem = problem;
        this.perThird = points / 3;
        for (Slot slot : SLOTS) {
            int lead = Integer.MAX_VALUE;
            int single = 1;
            for (Candidate candidate : problem.candidates().of(slot)) {
                int[] facts = candidate.none() ? NOTHING : factsOf(candidate);
                lead = Math.min(lead, facts[0]);
                single = Math.min(single, facts[1]);
            }
            leastLead[slot.ordinal()] = lead;
            leastSingle[slot.ordinal()] = single;
        }
    }

    private int[] factsOf(Candidate candidate) {
        return leadAndSingle.computeIfAbsent(candidate, this::facts);
    }

    /**
     * Most points that lead and single offers leave, given what is decided; an open slot counts at
     * the best that may fill it.
     */
    double decidedPoints(Unfinished it) {
        if (perThird == 0) {
            return 0;
        }
        int longest = 0;
        int singles = 0;
        for (Slot slot : SLOTS) {
            Candidate choice = it.choices()[slot.ordinal()];
            if (choice == null) {
                longest = Math.max(longest, leastLead[slot.ordinal()]);
                singles += leastSingle[slot.ordinal()];
            } else if (!choice.none()) {
                int[] facts = factsOf(choice);
                longest = Math.max(longest, facts[0]);
                singles += facts[1];
            }
        }
        return perThird
                * (Math.max(0, 1 - longest / LEAD_DAYS) + Math.max(0, 1 - singles / SINGLE_OFFERS));
    }

    /** Points for the number of suppliers. */
    double supplierPoints(int suppliers) {
        return perThird * Math.max(0, Math.min(1, 1 - (suppliers - 1) / SUPPLIERS));
    }

    /** Shortest lead among the offers, and 1 when there is just one. */
    private int[] facts(Candidate candidate) {
        if (problem.assessor().pricing().kept(candidate.slot(), candidate.partOrNull())) {
            return new int[] {0, 0};
        }
        int shortest = Integer.MAX_VALUE;
        int count = 0;
        for (Offer offer :
                problem.assessor().offers().of(candidate.partOrNull(), candidate.pieces())) {
            if (offer != null) {
                shortest = Math.min(shortest, offer.leadDays());
                count++;
            }
        }
        return new int[] {count == 0 ? 0 : shortest, count == 1 ? 1 : 0};
    }
}
