package rigbrief.search;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * A slot and what fills it: the planning entity.
 *
 * <p>Mutable, because the solver needs it so; never leaves this package. A slot that stays empty
 * holds an explicit candidate for nothing, never null: the solver drops entities that hold null,
 * and with them every rule.
 */
@PlanningEntity
public final class SlotChoice {
    private Problem problem;
    private Objective objective;
    private Slot slot;
    private List<Candidate> candidates;

    @PlanningVariable(valueRangeProviderRefs = "candidates")
    private Candidate candidate;

    /** For the solver, which clones. */
    public SlotChoice() {}

    SlotChoice(Problem problem, Objective objective, Slot slot, Candidate candidate) {
        this.problem = problem;
        this.objective = objective;
        this.slot = slot;
        this.candidates = problem.candidates().of(slot);
        this.candidate = candidate;
    }

    Problem problem() {
        return problem;
    }

    Objective objective() {
        return objective;
    }

    Slot slot() {
        return slot;
    }

    /** What may fill the slot. */
    @ValueRangeProvider(id = "candidates")
    public List<Candidate> getCandidates() {
        return candidates;
    }

    /** What fills it. */
    public Candidate getCandidate() {
        return candidate;
    }

    /** Fills it otherwise. */
    public void setCandidate(Candidate candidate) {
        this.candidate = candidate;
    }
}
