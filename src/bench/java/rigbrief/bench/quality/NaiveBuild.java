package rigbrief.bench.quality;

import ai.timefold.solver.core.api.score.stream.uni.UniConstraintCollector;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.rule.Rule;
import rigbrief.search.Objective;
import rigbrief.search.Problem;

/** What the naive model's slots make together, assessed once. */
final class NaiveBuild {
    private final Problem problem;
    private final Objective objective;
    private final Assessment assessment;
    private long excess = -1;

    NaiveBuild(Problem problem, Objective objective, Part[] parts, int[] pieces) {
        this.problem = problem;
        this.objective = objective;
        this.assessment = problem.assessor().assess(Build.of(parts, pieces));
    }

    /** By how much rules and limit are broken together. */
    long excess() {
        if (excess < 0) {
            excess = problem.overLimit(assessment);
            for (Rule rule : problem.rules()) {
                excess += Problem.excess(rule, assessment);
            }
        }
        return excess;
    }

    /** Utility of a sound build; 0 of a broken one. */
    long points() {
        return excess() == 0 ? problem.points(assessment) : 0;
    }

    long totalMinor() {
        return assessment.cost().totalMinor();
    }

    Objective objective() {
        return objective;
    }

    /** Gathers the slots. */
    static final class Collector
            implements UniConstraintCollector<NaiveSlot, Collector.Slots, NaiveBuild> {
        @Override
        public Supplier<Slots> supplier() {
            return Slots::new;
        }

        @Override
        public BiFunction<Slots, NaiveSlot, Runnable> accumulator() {
            return Slots::add;
        }

        @Override
        public Function<Slots, NaiveBuild> finisher() {
            return Slots::build;
        }

        /** The slots so far. */
        static final class Slots {
            private final Part[] parts = new Part[Slot.values().length];
            private final int[] pieces = new int[parts.length];
            private Problem problem;
            private Objective objective;

            private Runnable add(NaiveSlot slot) {
                problem = slot.problem();
                objective = slot.objective();
                int at = slot.slot().ordinal();
                parts[at] = slot.getFilling().part();
                pieces[at] = slot.getFilling().pieces();
                return () -> {
                    parts[at] = null;
                    pieces[at] = 0;
                };
            }

            private NaiveBuild build() {
                return new NaiveBuild(problem, objective, parts.clone(), pieces.clone());
            }
        }
    }
}
