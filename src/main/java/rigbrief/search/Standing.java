package rigbrief.search;

import java.util.List;
import rigbrief.build.Build;
import rigbrief.presolve.Candidate;

/**
 * A complete build with what the search knows of it.
 *
 * @param choices one candidate per slot, in slot order
 * @param build the build they make
 * @param excess by how much all rules together are broken; 0 when none is
 * @param points utility in points: weight times ten-thousandths, summed over the goals
 * @param totalMinor what it costs, in minor units
 */
public record Standing(
        List<Candidate> choices, Build build, long excess, long points, long totalMinor) {
    public Standing {
        choices = List.copyOf(choices);
    }

    /** Whether every rule is kept. */
    public boolean sound() {
        return excess == 0;
    }

    /**
     * Whether this build is better than another under an objective; a fixed order of candidates
     * decides between equals.
     */
    public boolean betterThan(Standing other, Objective objective) {
        if (other == null || excess != other.excess) {
            return other == null || excess < other.excess;
        }
        long first = objective.first(points, totalMinor);
        long otherFirst = objective.first(other.points, other.totalMinor);
        if (first != otherFirst) {
            return first > otherFirst;
        }
        long second = objective.second(points, totalMinor);
        long otherSecond = objective.second(other.points, other.totalMinor);
        return second != otherSecond ? second > otherSecond : precedes(other);
    }

    private boolean precedes(Standing other) {
        for (int i = 0; i < choices.size(); i++) {
            int difference = choices.get(i).index() - other.choices.get(i).index();
            if (difference != 0) {
                return difference < 0;
            }
        }
        return false;
    }
}
