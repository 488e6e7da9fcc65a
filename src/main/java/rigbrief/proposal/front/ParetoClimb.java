package rigbrief.proposal.front;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Dominance;
import rigbrief.search.Archive;
import rigbrief.search.Problem;
import rigbrief.search.Standing;

/**
 * Widens a front from the builds on it: every change of one slot, then of two slots that lean on
 * each other, is tried on every build, and what belongs on the front is tried on in turn.
 *
 * <p>The ends and the middle come first, so that what is left out when the tries run out lies
 * between builds that were tried. Source: Pareto local search, L. Paquete, M. Chiarandini and T.
 * Stützle, "Pareto local optimum sets in the biobjective traveling salesman problem", in
 * Metaheuristics for Multiobjective Optimisation, 2004 (from memory).
 */
final class ParetoClimb {
    private static final List<List<Slot>> PAIRS =
            List.of(
                    List.of(Slot.GRAPHICS, Slot.SUPPLY),
                    List.of(Slot.CASE, Slot.FANS),
                    List.of(Slot.PROCESSOR, Slot.COOLER),
                    List.of(Slot.COOLER, Slot.CASE),
                    List.of(Slot.BOARD, Slot.MEMORY),
                    List.of(Slot.BOARD, Slot.WIRELESS),
                    List.of(Slot.PROCESSOR, Slot.BOARD));

    private final Archive archive;
    private final Judge judge;
    private final Map<Slot, List<Candidate>> candidates;
    private final BooleanSupplier stop;
    private final Set<Standing> triedOnes = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<Standing> triedPairs = Collections.newSetFromMap(new IdentityHashMap<>());
    private long left;

    ParetoClimb(Problem problem, Archive archive, BooleanSupplier stop) {
        this.archive = archive;
        this.judge = new Judge(problem, archive);
        this.candidates = Dominance.undominated(problem.assessor(), problem.candidates(), false);
        this.stop = stop;
    }

    /**
     * Climbs until nothing new is found, or the tries are used up.
     *
     * @param tries most builds to judge
     */
    void run(long tries) {
        left = tries;
        while (!spent()) {
            Standing next = next(triedOnes);
            if (next != null) {
                triedOnes.add(next);
                ones(next);
                continue;
            }
            next = next(triedPairs);
            if (next == null) {
                return;
            }
            triedPairs.add(next);
            pairs(next);
        }
    }

    /** Changes of one slot of broken builds: what mends them may belong on the front. */
    void around(List<Standing> broken, long tries) {
        left = tries;
        for (Standing standing : broken) {
            if (!spent()) {
                ones(standing);
            }
        }
    }

    /** Changes of one slot alone. */
    void runOnes(long tries) {
        left = tries;
        Standing next = next(triedOnes);
        while (next != null && !spent()) {
            triedOnes.add(next);
            ones(next);
            next = next(triedOnes);
        }
    }

    /** The build not yet tried that is farthest from those that were, the ends first. */
    private Standing next(Set<Standing> tried) {
        List<Standing> all = archive.standings();
        int last = all.size() - 1;
        if (all.isEmpty() || !tried.contains(all.get(last))) {
            return all.isEmpty() ? null : all.get(last);
        }
        if (!tried.contains(all.get(0))) {
            return all.get(0);
        }
        Standing farthest = null;
        int widest = 0;
        int from = 0;
        for (int i = 1; i <= last; i++) {
            if (tried.contains(all.get(i))) {
                if (i - from > widest && i - from > 1) {
                    widest = i - from;
                    farthest = all.get((from + i) >>> 1);
                }
                from = i;
            }
        }
        return farthest;
    }

    private boolean spent() {
        return left <= 0 || stop.getAsBoolean();
    }

    private void ones(Standing standing) {
        for (Slot slot : Slot.values()) {
            Candidate old = standing.choices().get(slot.ordinal());
            for (Candidate candidate : candidates.get(slot)) {
                if (candidate != old) {
                    judge(changed(standing.choices(), candidate));
                }
            }
        }
    }

    private void pairs(Standing standing) {
        for (List<Slot> pair : PAIRS) {
            two(standing, pair.get(0), pair.get(1));
        }
    }

    private void two(Standing standing, Slot one, Slot two) {
        for (Candidate first : candidates.get(one)) {
            if (first != standing.choices().get(one.ordinal()) && !spent()) {
                List<Candidate> half = changed(standing.choices(), first);
                for (Candidate second : candidates.get(two)) {
                    if (second != standing.choices().get(two.ordinal())) {
                        judge(changed(half, second));
                    }
                }
            }
        }
    }

    private void judge(List<Candidate> choices) {
        left--;
        Standing standing = judge.of(choices);
        if (standing != null) {
            archive.add(standing);
        }
    }

    private static List<Candidate> changed(List<Candidate> choices, Candidate candidate) {
        List<Candidate> changed = new ArrayList<>(choices);
        changed.set(candidate.slot().ordinal(), candidate);
        return changed;
    }
}
