package rigbrief.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Sound builds none of which is both cheaper and better than another.
 *
 * <p>Of two builds with the same total and points the one that comes first in the order of the
 * candidates stays, so the content does not depend on the order of arrival.
 */
public final class Archive {
    private static final Objective TIES = Objective.mostUtility();

    private final TreeMap<Long, Standing> byTotal = new TreeMap<>();

    /** Takes a sound build in if nothing there is at least as good; whether it was taken. */
    public boolean add(Standing standing) {
        if (!standing.sound()) {
            return false;
        }
        Map.Entry<Long, Standing> floor = byTotal.floorEntry(standing.totalMinor());
        if (floor != null && floor.getValue().points() >= standing.points()) {
            Standing there = floor.getValue();
            boolean twin =
                    there.totalMinor() == standing.totalMinor()
                            && there.points() == standing.points();
            if (!twin || !standing.betterThan(there, TIES)) {
                return false;
            }
        }
        byTotal.tailMap(standing.totalMinor(), true)
                .values()
                .removeIf(other -> other.points() <= standing.points());
        byTotal.put(standing.totalMinor(), standing);
        return true;
    }

    /** Takes in whatever belongs there. */
    public void addAll(Collection<Standing> standings) {
        standings.forEach(this::add);
    }

    /** Most points of a build that costs at most so much; -1 when there is none. */
    public long pointsAt(long totalMinor) {
        Map.Entry<Long, Standing> floor = byTotal.floorEntry(totalMinor);
        return floor == null ? -1 : floor.getValue().points();
    }

    /** The total of the build that is best at so much; -1 when there is none. */
    public long floorTotal(long totalMinor) {
        Map.Entry<Long, Standing> floor = byTotal.floorEntry(totalMinor);
        return floor == null ? -1 : floor.getKey();
    }

    /** Whether this very build is there. */
    public boolean holds(Standing standing) {
        return byTotal.get(standing.totalMinor()) == standing;
    }

    /** The builds, cheapest first. */
    public List<Standing> standings() {
        return new ArrayList<>(byTotal.values());
    }
}
