package rigbrief.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Finds a good build in a large catalogue: the best one out of a few parts of every kind, spread
 * evenly over their prices; then the best one out of fewer such parts and the neighbours of those
 * chosen.
 *
 * <p>A build of some of the parts is a build of all of them, so what is found here is a true start
 * for the certifier. It only takes as long as in a small catalogue.
 */
final class CoarseSearch {
    /** Fewer candidates than this the certifier can take in one go. */
    private static final int LARGE = 1_200;

    /** Share of the steps for each of the two searches, where money alone counts. */
    private static final int MONEY_SHARE = 1;

    /** Where utility counts, a better start saves less than looking for it costs. Measured. */
    private static final int UTILITY_SHARE = 12;

    /** Candidates of a slot to look among at first, and around those chosen. */
    private static final int[] SPREAD = {64, 24};

    private static final int NEIGHBOURS = 20;

    /** How often to look around what was found around a build. */
    private static final int MOST_AROUND = 6;

    private final Problem whole;
    private final Objective objective;
    private final long steps;
    private final BooleanSupplier stop;

    CoarseSearch(Problem whole, Objective objective, long steps, BooleanSupplier stop) {
        this.whole = whole;
        this.objective = objective;
        this.steps = Math.max(1, steps / (objective.perPoint() > 0 ? UTILITY_SHARE : MONEY_SHARE));
        this.stop = stop;
    }

    /**
     * A build at least as good as one that is known.
     *
     * @param known a sound build; null for none
     * @return null when no build was found either
     */
    Standing improve(Standing known) {
        Subspace undominated = whole.tables().undominated(whole);
        Problem problem = undominated.of(whole);
        if (problem.candidates().count() < LARGE) {
            return known;
        }
        Standing best = known;
        for (int spread : SPREAD) {
            best = improve(undominated, problem, best, spread);
        }
        return best == null ? null : new BestResponse(whole, objective, stop).improve(best);
    }

    /** A build at least as good as one that is known, as far as those near it go. */
    Standing around(Standing known) {
        Subspace undominated = whole.tables().undominated(whole);
        Problem problem = undominated.of(whole);
        Standing best = known;
        for (int i = 0; i < MOST_AROUND && problem.candidates().count() >= LARGE; i++) {
            Standing better = improve(undominated, problem, best, SPREAD[SPREAD.length - 1]);
            better = new BestResponse(whole, objective, stop).improve(better);
            if (!better.betterThan(best, objective)) {
                break;
            }
            best = better;
        }
        return best;
    }

    private Standing improve(Subspace undominated, Problem problem, Standing best, int spread) {
        Standing around = best != null && undominated.holds(best) ? undominated.here(best) : null;
        Subspace some = new Subspace(problem, some(problem, around, spread));
        Standing start = around == null ? null : some.here(around);
        Certificate found =
                new Certifier(some.of(problem), objective, steps, stop)
                        .countingLooks()
                        .run(Optional.ofNullable(start));
        if (found.best().isEmpty()) {
            return best;
        }
        Standing there = undominated.original(some.original(found.best().get()));
        return there.betterThan(best, objective) ? there : best;
    }

    private static Map<Slot, List<Candidate>> some(Problem problem, Standing around, int spread) {
        Map<Slot, List<Candidate>> some = new EnumMap<>(Slot.class);
        for (Slot slot : Slot.values()) {
            List<Candidate> all = problem.candidates().of(slot);
            List<Candidate> byPrice = new ArrayList<>(all);
            byPrice.sort(
                    Comparator.<Candidate>comparingLong(
                                    it -> Arrays.stream(it.minorBySet()).min().orElse(0))
                            .thenComparingInt(Candidate::index));
            TreeSet<Integer> taken = new TreeSet<>();
            for (int i = 0; i < spread; i++) {
                taken.add(byPrice.get((int) ((long) i * all.size() / spread)).index());
            }
            all.stream().filter(Candidate::none).forEach(none -> taken.add(none.index()));
            if (around != null) {
                int at = byPrice.indexOf(around.choices().get(slot.ordinal()));
                int end = Math.min(all.size(), at + NEIGHBOURS + 1);
                for (int i = Math.max(0, at - NEIGHBOURS); i < end; i++) {
                    taken.add(byPrice.get(i).index());
                }
            }
            some.put(slot, taken.stream().map(all::get).toList());
        }
        return some;
    }
}
