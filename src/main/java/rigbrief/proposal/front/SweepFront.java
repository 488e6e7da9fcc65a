package rigbrief.proposal.front;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import rigbrief.proposal.solve.SideBySide;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.TwoStage;

/**
 * Finds the front by a climb from its ends, then by searches for most utility under one limit after
 * another.
 *
 * <p>Each of these searches proves something for every build that costs no more than its limit, and
 * may find what was missing. The first limit is that of the whole; the next ones halve the stretch
 * over which least is known; once no gap is left the front is proven. Two searches run side by
 * side, both chosen before either begins. Source: the epsilon-constraint method, Y. Y. Haimes, L.
 * S. Lasdon and D. A. Wismer, IEEE Transactions on Systems, Man, and Cybernetics 1(3), 1971 (from
 * memory).
 */
public final class SweepFront implements FrontFinder {
    /** Part of the steps for the least total. */
    private static final int LEAST_DIVISOR = 4;

    /** Part of the steps for one limit; more proves little that a second limit would not. */
    private static final int LIMIT_DIVISOR = 8;

    /** Most builds judged in a climb; what they find beyond that is little. Measured. */
    private static final long MOST_TRIES = 40_000;

    private static final int TRIES_PER_STEP = 20;
    private static final int LANES = 2;

    /** What setting out costs, counted in steps: many short searches must not run for ever. */
    private static final long LEAST_COST = 1_000;

    private final long stepLimit;
    private final BooleanSupplier stop;
    private long leastMinor;

    /**
     * A sweep.
     *
     * @param stepLimit most steps of the certifier, all searches together
     * @param stop asked now and then; true ends it early
     */
    public SweepFront(long stepLimit, BooleanSupplier stop) {
        this.stepLimit = stepLimit;
        this.stop = stop;
    }

    /** The same sweep, but it is known already that no build is cheaper than this. */
    public SweepFront knowingLeast(long boundMinor) {
        leastMinor = boundMinor;
        return this;
    }

    @Override
    public Front find(SearchSpace space, long limitMinor, List<Standing> known) {
        return new Sweep(space, limitMinor, known).run();
    }

    /** A search for most utility under a limit, with what it found out. */
    private record Search(long withinMinor, Certificate certificate) {}

    private final class Sweep {
        private final SearchSpace space;
        private final SearchSpace beside;
        private final long limitMinor;
        private final Problem problem;
        private final Archive archive = new Archive();
        private final Ceilings ceilings = new Ceilings();
        private final Set<Long> searched = new HashSet<>();
        private final ParetoClimb climb;
        private long steps;

        Sweep(SearchSpace space, long limitMinor, List<Standing> known) {
            this.space = space;
            this.beside = SearchSpace.of(space.assessor().brief(), space.assessor().catalogue());
            this.limitMinor = limitMinor;
            this.problem = space.within(limitMinor);
            this.climb = new ParetoClimb(problem, archive, stop);
            known.stream()
                    .filter(standing -> standing.totalMinor() <= limitMinor)
                    .forEach(archive::add);
        }

        Front run() {
            ceilings.atLeast(leastMinor);
            boolean leastKnown =
                    archive.floorTotal(leastMinor) == leastMinor || leastMinor > limitMinor;
            if (!leastKnown) {
                findLeast();
            }
            if (archive.standings().isEmpty() && ceilings.leastMinor() > limitMinor) {
                return front();
            }
            polish();
            climb.run(tries());
            boolean more = true;
            while (more && !stop.getAsBoolean()) {
                more = narrow();
            }
            climb.run(tries() / 2);
            return front();
        }

        private void findLeast() {
            List<Standing> all = archive.standings();
            Certificate certificate =
                    new Certifier(
                                    problem,
                                    Objective.leastMoney(),
                                    Math.max(1, stepLimit / LEAST_DIVISOR),
                                    stop)
                            .run(all.stream().findFirst());
            steps += certificate.steps();
            certificate.best().ifPresent(archive::add);
            ceilings.add(Objective.leastMoney(), limitMinor, certificate);
        }

        /** From the cheapest build towards the best one: a climb alone stops halfway. */
        private void polish() {
            List<Standing> all = archive.standings();
            if (!all.isEmpty()) {
                new TwoStage(1, 0, 1, stop)
                        .polished(problem, Objective.mostUtility(), List.of(all.get(0)))
                        .ifPresent(archive::add);
            }
        }

        private long tries() {
            return Math.min(stepLimit * TRIES_PER_STEP, MOST_TRIES);
        }

        /** Searches under two limits more; false when nothing is left to learn. */
        private boolean narrow() {
            List<Long> limits = nextLimits();
            List<SearchSpace> lanes = List.of(space, beside);
            List<Integer> indices = limits.size() > 1 ? List.of(0, 1) : List.of(0);
            if (limits.isEmpty() || steps >= stepLimit) {
                return false;
            }
            long each = Math.max(1, Math.min(stepLimit / LIMIT_DIVISOR, stepLimit - steps));
            List<Optional<Standing>> starts = limits.stream().map(limit -> bestAt(limit)).toList();
            List<Search> searches =
                    SideBySide.map(
                            indices, i -> search(lanes.get(i), limits.get(i), each, starts.get(i)));
            for (Search search : searches) {
                take(search);
            }
            return true;
        }

        private Search search(
                SearchSpace lane, long withinMinor, long each, Optional<Standing> start) {
            Problem within = lane.within(withinMinor);
            return new Search(
                    withinMinor,
                    new Certifier(within, Objective.mostUtility(), each, stop)
                            .run(start.map(lane::rebound)));
        }

        private void take(Search search) {
            steps += Math.max(LEAST_COST, search.certificate().steps());
            searched.add(search.withinMinor());
            search.certificate().best().map(space::rebound).ifPresent(archive::add);
            ceilings.add(Objective.mostUtility(), search.withinMinor(), search.certificate());
        }

        private Optional<Standing> bestAt(long withinMinor) {
            Standing best = null;
            for (Standing standing : archive.standings()) {
                best = standing.totalMinor() <= withinMinor ? standing : best;
            }
            return Optional.ofNullable(best);
        }

        /** Two limits that say most about what is not known yet; fewer where less is left. */
        private List<Long> nextLimits() {
            Set<Long> taken = new HashSet<>(searched);
            List<Long> limits = new ArrayList<>();
            for (int lane = 0; lane < LANES; lane++) {
                Optional<Long> next = new Gaps(archive, ceilings, problem).next(taken);
                next.ifPresent(limits::add);
                next.ifPresent(taken::add);
            }
            return limits;
        }

        private Front front() {
            List<Standing> standings = archive.standings();
            long cheapest = standings.isEmpty() ? limitMinor + 1 : standings.get(0).totalMinor();
            return new Front(
                    standings,
                    new Gaps(archive, ceilings, problem).ofBuilds(),
                    Math.max(0, cheapest - ceilings.leastMinor()),
                    problem.mostPoints(),
                    steps);
        }
    }
}
