package rigbrief.search;

import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.build.Build;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * A build of which some slots are decided: the certifier's changing state.
 *
 * <p>A decided slot may hold nothing. Mutable; never leaves this package.
 */
final class Unfinished {
    private static final java.util.Set<Slot> SHELTER =
            java.util.EnumSet.of(
                    Slot.PROCESSOR,
                    Slot.GRAPHICS,
                    Slot.BOARD,
                    Slot.CASE,
                    Slot.COOLER,
                    Slot.FANS,
                    Slot.MEMORY,
                    Slot.DRIVE);

    private final Assessor assessor;
    private final Candidate[] choices = new Candidate[Slot.values().length];
    private final Part[] parts = new Part[choices.length];
    private final int[] pieces = new int[choices.length];
    private Outlook.Pair pair;
    private Assessment assessment;
    private double shelteredDba = Double.NaN;

    Unfinished(Assessor assessor) {
        this.assessor = assessor;
    }

    void decide(Candidate candidate) {
        int slot = candidate.slot().ordinal();
        choices[slot] = candidate;
        parts[slot] = candidate.partOrNull();
        pieces[slot] = candidate.pieces();
        assessment = null;
        if (SHELTER.contains(candidate.slot())) {
            shelteredDba = Double.NaN;
        }
    }

    void undo(Slot slot) {
        choices[slot.ordinal()] = null;
        parts[slot.ordinal()] = null;
        pieces[slot.ordinal()] = 0;
        assessment = null;
        if (SHELTER.contains(slot)) {
            shelteredDba = Double.NaN;
        }
    }

    /** Whether the slot is decided, be it for nothing. */
    boolean has(Slot slot) {
        return choices[slot.ordinal()] != null;
    }

    /** The part in a slot; null when it is open or holds nothing. */
    Part part(Slot slot) {
        return parts[slot.ordinal()];
    }

    int pieces(Slot slot) {
        return pieces[slot.ordinal()];
    }

    Candidate[] choices() {
        return choices;
    }

    Outlook.Pair pair() {
        return pair;
    }

    void pair(Outlook.Pair known) {
        this.pair = known;
    }

    /**
     * A level that holds while processor, card, board, case, cooler and fans stay decided; computed
     * once for them.
     */
    double shelteredLevelDba(java.util.function.DoubleSupplier compute) {
        if (Double.isNaN(shelteredDba)) {
            shelteredDba = compute.getAsDouble();
        }
        return shelteredDba;
    }

    Build build() {
        return assessment().build();
    }

    /** An assessment of what is decided so far. */
    Assessment assessment() {
        if (assessment == null) {
            assessment = assessor.assess(Build.of(parts, pieces));
        }
        return assessment;
    }
}
