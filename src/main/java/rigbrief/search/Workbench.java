package rigbrief.search;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import java.util.ArrayList;
import java.util.List;
import rigbrief.presolve.Candidate;

/** All slots of one machine: the planning solution. Mutable; never leaves this package. */
@PlanningSolution
public final class Workbench {
    @PlanningEntityCollectionProperty private List<SlotChoice> slots;
    @PlanningScore private HardMediumSoftLongScore score;

    /** For the solver, which clones. */
    public Workbench() {}

    Workbench(Problem problem, Objective objective, List<Candidate> start) {
        this.slots = new ArrayList<>();
        for (Candidate candidate : start) {
            slots.add(new SlotChoice(problem, objective, candidate.slot(), candidate));
        }
    }

    List<SlotChoice> slots() {
        return slots;
    }

    /** The candidates chosen, in slot order. */
    List<Candidate> choices() {
        List<Candidate> choices = new ArrayList<>(slots.size());
        for (SlotChoice slot : slots) {
            choices.add(slot.getCandidate());
        }
        return choices;
    }

    /** The solver's score. */
    public HardMediumSoftLongScore getScore() {
        return score;
    }

    /** Set by the solver. */
    public void setScore(HardMediumSoftLongScore score) {
        this.score = score;
    }
}
