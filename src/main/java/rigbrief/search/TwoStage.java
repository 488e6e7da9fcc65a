package rigbrief.search;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Local search for a good build, best response to polish it, then the certifier for the best one
 * and its proof.
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
     * The best build under an objective: local search, polish, certifier.
     *
     * @param worths rates of exchange between points and minor units for the certifier's bounds
     */
    public Certificate best(Problem problem, Objective objective, List<Double> worths) {
        List<Standing> starts = new ArrayList<>();
        if (moves > 0 && !stop.getAsBoolean()) {
            starts.add(
                    LocalSearch.run(
                            problem,
                            objective,
                            Starter.start(problem),
                            moves,
                            seed,
                            EnvironmentMode.NO_ASSERT));
        }
        return bestFrom(problem, objective, starts, worths);
    }

    /**
     * The best build under an objective, from builds that are already known: polish, certifier.
     *
     * @param starts builds to polish; broken ones are passed over
     * @param worths rates of exchange between points and minor units for the certifier's bounds
     */
    public Certificate bestFrom(
            Problem problem, Objective objective, List<Standing> starts, List<Double> worths) {
        return new Certifier(problem, objective, steps, stop, worths)
                .run(polished(problem, objective, starts));
    }

    /** The best of some builds after polish; empty when none of them is sound. */
    public Optional<Standing> polished(
            Problem problem, Objective objective, List<Standing> starts) {
        Standing best = null;
        for (Standing start : starts) {
            if (start.sound()) {
                Standing polished = new BestResponse(problem, objective, stop).improve(start);
                best = polished.betterThan(best, objective) ? polished : best;
            }
        }
        return Optional.ofNullable(best);
    }
}
