package rigbrief.bench.quality;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import java.util.ArrayList;
import java.util.List;
import rigbrief.brief.Kept;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.search.Objective;
import rigbrief.search.Problem;

/** The naive model: one entity per slot over the raw catalogue. */
@PlanningSolution
public final class NaiveMachine {
    @PlanningEntityCollectionProperty private List<NaiveSlot> slots;
    @PlanningScore private HardMediumSoftLongScore score;

    /** For the solver, which clones. */
    public NaiveMachine() {}

    NaiveMachine(Problem problem, Objective objective) {
        slots = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            slots.add(new NaiveSlot(problem, objective, slot, fillings(problem, slot)));
        }
    }

    private static List<NaiveSlot.Filling> fillings(Problem problem, Slot slot) {
        List<NaiveSlot.Filling> all = new ArrayList<>();
        for (Kept kept : problem.assessor().brief().keep()) {
            if (kept.slot() == slot) {
                return List.of(new NaiveSlot.Filling(kept.part(), kept.pieces()));
            }
        }
        if (!slot.required()) {
            all.add(new NaiveSlot.Filling(null, 0));
        }
        for (Part part : problem.assessor().catalogue().parts(slot.kind())) {
            for (int pieces = 1; pieces <= slot.mostPieces(); pieces++) {
                all.add(new NaiveSlot.Filling(part, pieces));
            }
        }
        return all;
    }

    List<NaiveSlot> slots() {
        return slots;
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
