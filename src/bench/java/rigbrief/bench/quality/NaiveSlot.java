package rigbrief.bench.quality;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.search.Objective;
import rigbrief.search.Problem;

/** A slot of the naive model: every part of the catalogue that has the kind may fill it. */
@PlanningEntity
public final class NaiveSlot {
    private Problem problem;
    private Objective objective;
    private Slot slot;
    private List<Filling> fillings;

    @PlanningVariable(valueRangeProviderRefs = "fillings")
    private Filling filling;

    /**
     * A part with a number of packs, or nothing.
     *
     * @param part the part; null for nothing
     */
    public record Filling(Part part, int pieces) {}

    /** For the solver, which clones. */
    public NaiveSlot() {}

    NaiveSlot(Problem problem, Objective objective, Slot slot, List<Filling> fillings) {
        this.problem = problem;
        this.objective = objective;
        this.slot = slot;
        this.fillings = fillings;
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

    /** What may fill it. */
    @ValueRangeProvider(id = "fillings")
    public List<Filling> getFillings() {
        return fillings;
    }

    /** What fills it. */
    public Filling getFilling() {
        return filling;
    }

    /** Fills it. */
    public void setFilling(Filling filling) {
        this.filling = filling;
    }
}
