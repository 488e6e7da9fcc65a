package rigbrief.search;

import ai.timefold.solver.core.api.score.stream.uni.UniConstraintCollector;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/** Gathers all slots of the machine into one sketch; a move touches only the slots it changes. */
final class SketchCollector
        implements UniConstraintCollector<SlotChoice, SketchCollector.Slots, Sketch> {
    @Override
    public Supplier<Slots> supplier() {
        return Slots::new;
    }

    @Override
    public BiFunction<Slots, SlotChoice, Runnable> accumulator() {
        return Slots::add;
    }

    @Override
    public Function<Slots, Sketch> finisher() {
        return Slots::sketch;
    }

    /** The slots gathered so far. */
    static final class Slots {
        private final Candidate[] choices = new Candidate[Slot.values().length];
        private Problem problem;
        private Objective objective;

        private Runnable add(SlotChoice choice) {
            problem = choice.problem();
            objective = choice.objective();
            int slot = choice.slot().ordinal();
            choices[slot] = choice.getCandidate();
            return () -> choices[slot] = null;
        }

        private Sketch sketch() {
            return new Sketch(problem, objective, choices.clone());
        }
    }
}
