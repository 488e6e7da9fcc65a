package rigbrief.proposal.front;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.proposal.FrontPoint;
import rigbrief.search.Standing;

/**
 * The front of money and utility, as far as it is known.
 *
 * @param standings the builds, cheapest first; totals and points both rise
 * @param gapPoints one entry per build: by how many points at most a build that costs less than the
 *     next one could be better than this one; 0 where it is proven that none is
 * @param leastGapMinor by how many minor units at most a build could be cheaper than the first, or
 *     than just over the limit when there is none; 0 where it is proven that none is
 * @param mostPoints points of full utility in every goal
 * @param steps steps of the certifier it took
 */
public record Front(
        List<Standing> standings,
        List<Long> gapPoints,
        long leastGapMinor,
        long mostPoints,
        long steps) {
    public Front {
        standings = List.copyOf(standings);
        gapPoints = List.copyOf(gapPoints);
        if (standings.size() != gapPoints.size()) {
            throw new IllegalArgumentException(
                    "found %d builds and %d gaps, expected as many; give each build its gap"
                            .formatted(standings.size(), gapPoints.size()));
        }
    }

    /** The builds as points, cheapest first. */
    public List<FrontPoint> points() {
        List<FrontPoint> points = new ArrayList<>(standings.size());
        for (Standing standing : standings) {
            points.add(
                    new FrontPoint(
                            standing.totalMinor(),
                            (double) standing.points() / Math.max(1, mostPoints),
                            standing.build()));
        }
        return points;
    }

    /** Whether it is proven that no point is missing. */
    public boolean proven() {
        return leastGapMinor == 0 && gapPoints.stream().allMatch(gap -> gap == 0);
    }

    /** Index of the knee among the builds; empty when there are fewer than three. */
    public Optional<Integer> knee() {
        return Knee.of(standings, Standing::totalMinor, Standing::points);
    }
}
