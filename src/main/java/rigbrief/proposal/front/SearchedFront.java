package rigbrief.proposal.front;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import rigbrief.search.Archive;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.FrontCertifier;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.TwoStage;

/**
 * Finds the front by a climb from its ends, then by one search over everything that could still be
 * above what is known.
 *
 * <p>The search halts now and then for a climb from what it has found: each finds what the other
 * would take long for.
 */
public final class SearchedFront implements FrontFinder {
    /** Part of the steps for the least total. */
    private static final int LEAST_DIVISOR = 4;

    /** Part of the steps for the most utility. */
    private static final int MOST_DIVISOR = 2;

    /** Most builds judged in a climb; what they find beyond that is little. Measured. */
    private static final long MOST_TRIES = 40_000;

    private static final int TRIES_PER_STEP = 20;

    /** So often the search halts at most. */
    private static final int WALKS = 4;

    private final long stepLimit;
    private final BooleanSupplier stop;
    private long leastMinor;

    /**
     * A search.
     *
     * @param stepLimit most steps of the certifier
     * @param stop asked now and then; true ends it early
     */
    public SearchedFront(long stepLimit, BooleanSupplier stop) {
        this.stepLimit = stepLimit;
        this.stop = stop;
    }

    /** The same search, but it is known already that no build is cheaper than this. */
    public SearchedFront knowingLeast(long boundMinor) {
        leastMinor = boundMinor;
        return this;
    }

    @Override
    public Front find(SearchSpace space, long limitMinor, List<Standing> known) {
        return new Finding(space.within(limitMinor), known).run();
    }

    private final class Finding {
        private final Problem problem;
        private final Archive archive = new Archive();
        private final ParetoClimb climb;
        private long least = leastMinor;
        private long most = Long.MAX_VALUE;
        private long steps;

        Finding(Problem problem, List<Standing> known) {
            this.problem = problem;
            this.climb = new ParetoClimb(problem, archive, stop);
            known.stream()
                    .filter(standing -> standing.totalMinor() <= problem.limitMinor())
                    .forEach(archive::add);
        }

        Front run() {
            if (archive.floorTotal(least) != least && least <= problem.limitMinor()) {
                findLeast();
            }
            if (archive.standings().isEmpty() && least > problem.limitMinor()) {
                return new Front(List.of(), List.of(), 0, problem.mostPoints(), steps);
            }
            polish();
            findMost();
            climb.run(tries());
            FrontCertifier certifier = new FrontCertifier(problem, archive, least, stop);
            for (int walk = 0; walk < WALKS && !certifier.complete() && !over(); walk++) {
                certifier.walk(Math.max(1, (stepLimit - steps) / WALKS));
                climb.run(tries() / WALKS);
            }
            List<Standing> standings = archive.standings();
            long cheapest =
                    standings.isEmpty() ? problem.limitMinor() + 1 : standings.get(0).totalMinor();
            return new Front(
                    standings,
                    capped(certifier.gapPoints(), standings),
                    certifier.cheaperOpen() ? Math.max(0, cheapest - least) : 0,
                    problem.mostPoints(),
                    steps + certifier.steps());
        }

        private boolean over() {
            return stop.getAsBoolean();
        }

        private void findLeast() {
            Certificate certificate =
                    new Certifier(
                                    problem,
                                    Objective.leastMoney(),
                                    Math.max(1, stepLimit / LEAST_DIVISOR),
                                    stop)
                            .run(archive.standings().stream().findFirst());
            steps += certificate.steps();
            certificate.best().ifPresent(archive::add);
            boolean nothing = certificate.best().isEmpty() && certificate.complete();
            long bound =
                    nothing
                            ? problem.limitMinor() + 1
                            : (long) Math.ceil(-bound(certificate) - 1e-6);
            least = Math.max(least, bound);
        }

        /** The dear end is what a client looks at first, and soon found by itself. */
        private void findMost() {
            List<Standing> known = archive.standings();
            Certificate certificate =
                    new Certifier(
                                    problem,
                                    Objective.mostUtility(),
                                    Math.max(1, stepLimit / MOST_DIVISOR),
                                    stop)
                            .run(known.stream().skip(Math.max(0, known.size() - 1)).findFirst());
            steps += certificate.steps();
            certificate.best().ifPresent(archive::add);
            if (certificate.best().isPresent()) {
                most = (long) Math.floor(certificate.bound() + 1e-6);
            }
        }

        private List<Long> capped(List<Long> gaps, List<Standing> standings) {
            List<Long> capped = new ArrayList<>();
            for (int i = 0; i < gaps.size(); i++) {
                capped.add(Math.max(0, Math.min(gaps.get(i), most - standings.get(i).points())));
            }
            return capped;
        }

        /** A completed search has no better build; what the best one reaches is the bound. */
        private static double bound(Certificate certificate) {
            return certificate.complete() && certificate.best().isPresent()
                    ? -certificate.best().get().totalMinor()
                    : certificate.bound();
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
    }
}
