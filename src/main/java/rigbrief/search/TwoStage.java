package rigbrief.search;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import rigbrief.presolve.Candidate;

/**
 * Local search for a good build, then the certifier for the best one and its proof.
 *
 * <p>One after the other on one thread: the certifier's work then depends on nothing but its
 * inputs, so that an unproven answer is the same on every machine too.
 */
public final class TwoStage {
    private final long seed;
    private final long moves;
    private final long steps;
    private final BooleanSupplier stop;

    /**
     * A search.
     *
     * @param seed seed of local search
     * @param moves moves of local search; 0 leaves it out
     * @param steps steps of the certifier
     * @param stop asked now and then; true ends the certifier early
     */
    public TwoStage(long seed, long moves, long steps, BooleanSupplier stop) {
        this.seed = seed;
        this.moves = moves;
        this.steps = steps;
        this.stop = stop;
    }

    /**
     * The best build under an objective.
     *
     * @param from a build to start from; empty for a cheap one made slot by slot
     * @param worths rates of exchange between points and minor units for the certifier's bounds
     */
    public Certificate best(
            Problem problem, Objective objective, Optional<Standing> from, List<Double> worths) {
        Optional<Standing> incumbent = from;
        if (moves > 0 && !stop.getAsBoolean()) {
            List<Candidate> start =
                    from.map(Standing::choices).orElseGet(() -> Starter.start(problem));
            Standing found =
                    LocalSearch.run(
                            problem, objective, start, moves, seed, EnvironmentMode.NO_ASSERT);
            if (incumbent.isEmpty() || found.betterThan(incumbent.get(), objective)) {
                incumbent = Optional.of(found);
            }
        }
        return new Certifier(problem, objective, steps, stop, worths).run(incumbent);
    }
}
