package rigbrief.search;

import java.util.List;

/**
 * What a build must pass to belong on a front: from each total to the next, more points than the
 * best build known for that money.
 *
 * <p>Where it is not proven that nothing is cheaper than the cheapest build, the first step begins
 * at the least total that is possible and asks for any build at all.
 */
final class Stairs {
    /** Points at the first step where no build is known. */
    private static final long NO_BUILD = -1;

    private final Archive archive;
    private final long leastMinor;
    private long[] totals;
    private long[] points;
    private int unknown;

    /**
     * The steps of an archive.
     *
     * @param leastMinor no build is cheaper, in minor units
     */
    Stairs(Archive archive, long leastMinor) {
        this.archive = archive;
        this.leastMinor = leastMinor;
        refresh();
    }

    /** Takes a build in if it belongs on the front. */
    void offer(Standing standing) {
        if (archive.add(standing)) {
            refresh();
        }
    }

    /** Takes note of what was added to the archive elsewhere. */
    void refresh() {
        List<Standing> builds = archive.standings();
        boolean cheaper = builds.isEmpty() || builds.get(0).totalMinor() > leastMinor;
        unknown = cheaper ? 1 : 0;
        totals = new long[builds.size() + unknown];
        points = new long[totals.length];
        if (cheaper) {
            totals[0] = leastMinor;
            points[0] = NO_BUILD;
        }
        for (int i = 0; i < builds.size(); i++) {
            totals[unknown + i] = builds.get(i).totalMinor();
            points[unknown + i] = builds.get(i).points();
        }
    }

    /** Number of steps. */
    int size() {
        return totals.length;
    }

    /** Number of steps before the first build: 0 or 1. */
    int unknown() {
        return unknown;
    }

    /** The total where a step begins, in minor units. */
    long totalMinor(int step) {
        return totals[step];
    }

    /** Points to pass on a step. */
    long points(int step) {
        return points[step];
    }

    /** Most points known for so much money. */
    long pointsAt(long totalMinor) {
        return archive.pointsAt(totalMinor);
    }
}
