package rigbrief.search;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/**
 * Finds the whole front of money and utility in one walk, and proves it: the certifier with an
 * archive in place of one best build.
 *
 * <p>A branch is left when nothing in it can be above the archive at any total; what can be
 * farthest above it comes first, so that an interrupted walk has the least gaps. Source:
 * bi-objective branch and bound, e.g. F. Sourd and O. Spanjaard, INFORMS Journal on Computing
 * 20(3), 2008 (from memory).
 */
public final class FrontCertifier {
    private final Archive archive;
    private final Stairs stairs;
    private final Certifier certifier;
    private final PriorityQueue<Certifier.Top> left;
    private final long finest;
    private long closeEnough;
    static final long FIRST = Long.getLong("first", 16);
    static final long RATIO = Long.getLong("ratio", 2);
    static final long FINEST = Long.getLong("finest", 200);

    /**
     * A certifier that has not begun.
     *
     * @param archive builds that are known, all of this problem and within its limit; what is found
     *     is added
     * @param leastMinor no build is cheaper, in minor units
     * @param stop asked now and then; true ends a walk early, with true gaps
     */
    public FrontCertifier(Problem problem, Archive archive, long leastMinor, BooleanSupplier stop) {
        this.archive = archive;
        this.stairs = new Stairs(archive, leastMinor);
        this.certifier =
                new Certifier(problem, Objective.mostUtility(), worths(problem, archive), 0, stop);
        this.left = certifier.passing(stairs);
        this.closeEnough = Math.max(1, problem.mostPoints() / FIRST);
        this.finest = problem.mostPoints() / FINEST;
    }

    /**
     * The rate at which the front exchanges money for points on the whole, and three times that.
     */
    private static double[] worths(Problem problem, Archive archive) {
        List<Standing> builds = archive.standings();
        double perMinor = (double) problem.mostPoints() / problem.limitMinor();
        if (builds.size() > 2) {
            Standing first = builds.get(0);
            Standing last = builds.get(builds.size() - 1);
            perMinor =
                    (double) (last.points() - first.points())
                            / (last.totalMinor() - first.totalMinor());
        }
        double tax = 1 + problem.assessor().brief().fees().taxBasisPoints() / 10_000.0;
        return new double[] {0, tax * perMinor, 3 * tax * perMinor};
    }

    /** Walks on for so many steps, from where the last walk ended. */
    public void walk(long moreSteps) {
        stairs.refresh();
        long end = certifier.steps() + moreSteps;
        while (!left.isEmpty() && certifier.steps() < end) {
            if (!certifier.goOn(left, closeEnough, end - certifier.steps())) {
                return;
            }
            closeEnough = closeEnough <= finest ? 1 : Math.max(1, closeEnough / RATIO);
        }
    }

    /** Whether nothing is left that could belong on the front. */
    public boolean complete() {
        return left.isEmpty();
    }

    /** Steps of all walks. */
    public long steps() {
        return certifier.steps();
    }

    /**
     * By how many points at most a build could be above each build of the archive and cheaper than
     * the next one.
     */
    public List<Long> gapPoints() {
        stairs.refresh();
        long[] gaps = certifier.gaps(left);
        List<Long> ofBuilds = new ArrayList<>();
        for (int i = stairs.unknown(); i < gaps.length; i++) {
            ofBuilds.add(gaps[i]);
        }
        return ofBuilds;
    }

    /** Whether some build may be cheaper than all in the archive. */
    public boolean cheaperOpen() {
        stairs.refresh();
        return stairs.unknown() > 0
                && (archive.standings().isEmpty() ? !complete() : certifier.gaps(left)[0] > 0);
    }
}
