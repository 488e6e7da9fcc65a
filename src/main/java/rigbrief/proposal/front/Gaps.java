package rigbrief.proposal.front;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.search.Problem;
import rigbrief.search.Standing;

/**
 * What is not known of a front: for every stretch of money between one build and the next, by how
 * many points at most a build in it could be better.
 */
final class Gaps {
    private final List<Standing> builds;
    private final List<Long> upTo = new ArrayList<>();
    private final List<Long> gaps = new ArrayList<>();
    private final long leastMinor;

    Gaps(Archive archive, Ceilings ceilings, Problem problem) {
        this.builds = archive.standings();
        this.leastMinor = ceilings.leastMinor();
        for (int i = -1; i < builds.size(); i++) {
            long end =
                    i + 1 < builds.size()
                            ? builds.get(i + 1).totalMinor() - 1
                            : problem.limitMinor();
            long have = i < 0 ? -1 : builds.get(i).points();
            upTo.add(end);
            gaps.add(Math.max(0, ceilings.pointsAt(end, problem.mostPoints()) - have));
        }
    }

    /** The gap behind each build, cheapest first. */
    List<Long> ofBuilds() {
        return gaps.subList(1, gaps.size());
    }

    /**
     * The limit to search under next: the whole first, then the middle of the run of open stretches
     * that is largest in money times points; empty when no stretch is open.
     *
     * @param searched limits that were searched already
     */
    Optional<Long> next(Set<Long> searched) {
        int last = gaps.size() - 1;
        if (gaps.get(last) > 0 && !searched.contains(upTo.get(last))) {
            return Optional.of(upTo.get(last));
        }
        Optional<Long> next = Optional.empty();
        double largest = 0;
        int from = 0;
        double area = 0;
        for (int i = 0; i <= last + 1; i++) {
            boolean open = i <= last && gaps.get(i) > 0 && !searched.contains(upTo.get(i));
            if (open) {
                area += (double) gaps.get(i) * widthMinor(i);
                continue;
            }
            if (area > largest) {
                largest = area;
                next = Optional.of(upTo.get((from + i - 1) >>> 1));
            }
            area = 0;
            from = i + 1;
        }
        return next;
    }

    private long widthMinor(int stretch) {
        long begin = stretch == 0 ? leastMinor : builds.get(stretch - 1).totalMinor();
        return Math.max(1, upTo.get(stretch) - begin + 1);
    }
}
