package rigbrief.search;

import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Foresight;
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
    private final Assessor assessor;
    private final Candidate[] choices = new Candidate[Slot.values().length];
    private final Part[] parts = new Part[choices.length];
    private final int[] pieces = new int[choices.length];
    private Outlook.Pair pair;
    private Foresight.Rates assumed;
    private double reach = 1;
    private Assessment assessment;

    Unfinished(Assessor assessor) {
        this.assessor = assessor;
    }

    void decide(Candidate candidate) {
        int slot = candidate.slot().ordinal();
        choices[slot] = candidate;
        parts[slot] = candidate.partOrNull();
        pieces[slot] = candidate.pieces();
        assessment = null;
    }

    void undo(Slot slot) {
        choices[slot.ordinal()] = null;
        parts[slot.ordinal()] = null;
        pieces[slot.ordinal()] = 0;
        assessment = null;
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

    /** Most of the workloads' utility beside processors and cards not yet looked at closely. */
    double reach() {
        return reach;
    }

    void reach(double share) {
        this.reach = share;
    }

    /** Memory rates to reckon with while board and memory are open; null for any. */
    Foresight.Rates assumed() {
        return assumed;
    }

    void assume(Foresight.Rates rates) {
        this.assumed = rates;
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
