package rigbrief.proposal.solve;

import java.util.Optional;
import rigbrief.search.Standing;

/**
 * The most utility under a brief and its ceiling.
 *
 * @param best the best build found; empty when none was
 * @param boundPoints no build has more points
 * @param none whether it is proven that there is no build
 * @param steps steps it took
 */
public record Most(Optional<Standing> best, long boundPoints, boolean none, long steps) {
    /** Whether no build is better than the one found, or none exists. */
    public boolean proven() {
        return none || best.isPresent() && best.get().points() >= boundPoints;
    }

    /** Points of the best build; only when one was found. */
    public long points() {
        return best.orElseThrow().points();
    }
}
