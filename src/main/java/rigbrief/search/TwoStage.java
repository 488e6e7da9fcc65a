package rigbrief.search;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The certifier for the best build and its proof; where its steps run out, best response polishes
 * what it came across, and where it came across nothing, local search looks for a build to start
 * from.
 *
 * <p>One after the other, each on threads that meet at fixed points: the work then depends on
 * nothing but its inputs, so that an unproven answer is the same on every machine too.
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

    /** The best build under an objective. */
    public Certificate best(Problem problem, Objective objective) {
        return bestFrom(problem, objective, List.of());
    }

    /**
     * The best build under an objective, from builds that are already known.
     *
     * @param starts known builds; broken ones are passed over
     */
    public Certificate bestFrom(Problem problem, Objective objective, List<Standing> starts) {
        return bestFrom(problem, null, objective, starts);
    }

    /**
     * The same with two hands.
     *
     * @param asideOrNull the same problem in another space over the same candidates, free to be
     *     used on another thread; null for one hand
     */
    public Certificate bestFrom(
            Problem problem, Problem asideOrNull, Objective objective, List<Standing> starts) {
        Standing start = null;
        for (Standing known : starts) {
            start = known.sound() && known.betterThan(start, objective) ? known : start;
        }
        start = new CoarseSearch(problem, objective, steps, stop).improve(start);
        Certificate certificate =
                asideOrNull == null || start == null
                        ? certify(problem, objective, Optional.ofNullable(start))
                        : new TwoHands(problem, asideOrNull, objective, steps, stop)
                                .run(Optional.of(start));
        if (certificate.complete() || moves == 0 || stop.getAsBoolean()) {
            return certificate;
        }
        if (certificate.best().isPresent()) {
            Standing around =
                    new CoarseSearch(problem, objective, steps, stop)
                            .around(certificate.best().get());
            return polished(problem, objective, List.of(around))
                    .map(certificate::with)
                    .orElse(certificate);
        }
        Standing searched =
                LocalSearch.run(
                        problem,
                        objective,
                        Starter.start(problem),
                        moves,
                        seed,
                        EnvironmentMode.NO_ASSERT);
        return searched.sound()
                ? certify(problem, objective, polished(problem, objective, List.of(searched)))
                : certificate;
    }

    private Certificate certify(Problem problem, Objective objective, Optional<Standing> start) {
        return new Certifier(problem, objective, steps, stop).run(start);
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
