package rigbrief.search;

import java.util.List;
import java.util.function.BooleanSupplier;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Improves a sound build until no change of one slot, or of two slots that lean on each other,
 * makes it better.
 *
 * <p>Local search is quick to a good build and slow to the last few percent; trying every candidate
 * of a slot against the rest is the other way round.
 */
final class BestResponse {
    private static final List<List<Slot>> PAIRS =
            List.of(
                    List.of(Slot.BOARD, Slot.MEMORY),
                    List.of(Slot.GRAPHICS, Slot.SUPPLY),
                    List.of(Slot.CASE, Slot.FANS),
                    List.of(Slot.COOLER, Slot.CASE),
                    List.of(Slot.BOARD, Slot.WIRELESS),
                    List.of(Slot.PROCESSOR, Slot.BOARD),
                    List.of(Slot.DRIVE, Slot.SECOND_DRIVE));

    /** Two slots with more ways to fill them than this are not changed together. */
    private static final int MOST_WAYS = 20_000;

    private final Problem whole;
    private final Subspace undominated;
    private final Objective objective;
    private final BooleanSupplier stop;
    private Problem problem;
    private PairTable table;
    private Candidate[] choices;
    private Standing best;

    BestResponse(Problem problem, Objective objective, BooleanSupplier stop) {
        this.whole = problem;
        this.undominated = problem.tables().undominated(problem);
        this.objective = objective;
        this.stop = stop;
    }

    /** A build at least as good as a sound one. */
    Standing improve(Standing sound) {
        boolean smaller = undominated.holds(sound);
        problem = smaller ? undominated.of(whole) : whole;
        table = problem.tables().pairs(problem);
        best = smaller ? undominated.here(sound) : sound;
        choices = best.choices().toArray(Candidate[]::new);
        boolean better = true;
        while (better && !stop.getAsBoolean()) {
            better = false;
            for (Slot slot : Slot.values()) {
                better |= improveOne(slot);
            }
            if (!better) {
                better = improvePairs();
            }
        }
        return smaller ? undominated.original(best) : best;
    }

    private boolean improvePairs() {
        boolean better = false;
        for (List<Slot> pair : PAIRS) {
            long ways =
                    (long) problem.candidates().of(pair.get(0)).size()
                            * problem.candidates().of(pair.get(1)).size();
            better |= ways <= MOST_WAYS && improveTwo(pair.get(0), pair.get(1));
        }
        return better;
    }

    private boolean improveOne(Slot slot) {
        Standing before = best;
        Candidate old = choices[slot.ordinal()];
        for (Candidate candidate : problem.candidates().of(slot)) {
            if (stop.getAsBoolean()) {
                break;
            }
            if (candidate != old && fits(candidate, slot)) {
                choices[slot.ordinal()] = candidate;
                take();
            }
        }
        choices = best.choices().toArray(Candidate[]::new);
        return best != before;
    }

    private boolean improveTwo(Slot one, Slot two) {
        Standing before = best;
        for (Candidate first : problem.candidates().of(one)) {
            if (stop.getAsBoolean()) {
                break;
            }
            if (!fits(first, two)) {
                continue;
            }
            choices[one.ordinal()] = first;
            for (Candidate second : problem.candidates().of(two)) {
                if (fits(second, two)) {
                    choices[two.ordinal()] = second;
                    take();
                }
            }
        }
        choices = best.choices().toArray(Candidate[]::new);
        return best != before;
    }

    /**
     * Whether the rules about two slots let a candidate stand beside what is chosen, but for one
     * slot still open.
     */
    private boolean fits(Candidate candidate, Slot open) {
        for (Candidate other : choices) {
            if (other.slot() != candidate.slot() && other.slot() != open) {
                // The row of what is chosen serves all candidates; theirs would be one for each.
                long[] row = table.row(other, candidate.slot());
                if (row != null && !SlotTable.has(row, candidate.index())) {
                    return false;
                }
            }
        }
        return true;
    }

    private void take() {
        Standing found = problem.soundStanding(choices, best, objective);
        if (found != null && found.betterThan(best, objective)) {
            best = found;
        }
    }
}
