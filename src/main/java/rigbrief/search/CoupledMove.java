package rigbrief.search;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import java.util.List;
import rigbrief.presolve.Candidate;

/** Fills one or more slots otherwise, all at once. */
final class CoupledMove extends AbstractMove<Workbench> {
    private final List<SlotChoice> slots;
    private final List<Candidate> candidates;

    /** Slots and what each is to hold, in like order. */
    CoupledMove(List<SlotChoice> slots, List<Candidate> candidates) {
        this.slots = slots;
        this.candidates = candidates;
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<Workbench> director) {
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).getCandidate() != candidates.get(i)) {
                return true;
            }
        }
        return false;
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<Workbench> director) {
        for (int i = 0; i < slots.size(); i++) {
            director.beforeVariableChanged(slots.get(i), "candidate");
            slots.get(i).setCandidate(candidates.get(i));
            director.afterVariableChanged(slots.get(i), "candidate");
        }
    }
}
