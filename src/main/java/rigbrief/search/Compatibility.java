package rigbrief.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessment;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;

/** Asks the rules about a few slots alone, and knows each slot's candidates by price. */
final class Compatibility {
    private static final Slot[] SLOTS = Slot.values();

    private final Problem problem;
    private final Map<Slot, List<Candidate>> byPrice = new EnumMap<>(Slot.class);
    private final Map<Slot, int[]> rank = new EnumMap<>(Slot.class);
    private final Map<Slot, List<Rule>> rulesOf = new EnumMap<>(Slot.class);

    Compatibility(Problem problem) {
        this.problem = problem;
        for (Slot slot : SLOTS) {
            List<Candidate> sorted = new ArrayList<>(problem.candidates().of(slot));
            sorted.sort(
                    Comparator.comparingLong(Compatibility::leastMinor)
                            .thenComparingInt(Candidate::index));
            byPrice.put(slot, sorted);
            int[] ranks = new int[sorted.size()];
            for (int i = 0; i < ranks.length; i++) {
                ranks[sorted.get(i).index()] = i;
            }
            rank.put(slot, ranks);
            List<Rule> rules = new ArrayList<>();
            for (Rule rule : problem.rules()) {
                if (rule.reads().contains(slot) && rule.reads().size() <= 4) {
                    rules.add(rule);
                }
            }
            rulesOf.put(slot, rules);
        }
    }

    /** A slot's candidates, cheapest first. */
    List<Candidate> byPrice(Slot slot) {
        return byPrice.get(slot);
    }

    /** Where a candidate stands by price in its slot. */
    int rank(Candidate candidate) {
        return rank.get(candidate.slot())[candidate.index()];
    }

    /**
     * Whether no rule about one slot is broken, among those whose slots are all drawn.
     *
     * @param drawn candidates by slot; null where none is drawn yet
     */
    boolean fits(Candidate[] drawn, Slot slot) {
        Assessment it = null;
        for (Rule rule : rulesOf.get(slot)) {
            if (drawn(rule, drawn)) {
                it = it == null ? assess(drawn) : it;
                if (rule.forbids(rule.check(it))) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean drawn(Rule rule, Candidate[] drawn) {
        for (Slot slot : rule.reads()) {
            if (drawn[slot.ordinal()] == null) {
                return false;
            }
        }
        return true;
    }

    private Assessment assess(Candidate[] drawn) {
        Part[] parts = new Part[SLOTS.length];
        int[] pieces = new int[SLOTS.length];
        for (Candidate candidate : drawn) {
            if (candidate != null) {
                parts[candidate.slot().ordinal()] = candidate.partOrNull();
                pieces[candidate.slot().ordinal()] = candidate.pieces();
            }
        }
        return problem.assessor().assess(rigbrief.build.Build.of(parts, pieces));
    }

    /** The least price among the supplier sets. */
    static long leastMinor(Candidate candidate) {
        long least = Long.MAX_VALUE;
        for (long minor : candidate.minorBySet()) {
            least = Math.min(least, minor);
        }
        return least;
    }
}
