package rigbrief.proposal.solve;

import java.util.Optional;
import rigbrief.search.Standing;

/**
 * The least total of a brief.
 *
 * @param best the cheapest build found; empty when none was
 * @param boundMinor no build is cheaper, in minor units
 * @param answer whether a build exists
 * @param steps steps it took
 */
public record Least(Optional<Standing> best, long boundMinor, Answer answer, long steps) {
    /** Whether no build is cheaper than the one found, or none exists. */
    public boolean proven() {
        return answer == Answer.NO || best.isPresent() && best.get().totalMinor() <= boundMinor;
    }

    /** The same where it is known from elsewhere that no build is cheaper than so much. */
    public Least notUnder(long minor) {
        boolean closer = answer != Answer.NO && minor > boundMinor;
        return closer
                ? new Least(
                        best,
                        best.map(found -> Math.min(minor, found.totalMinor())).orElse(minor),
                        answer,
                        steps)
                : this;
    }

    /** What it costs, in minor units; only when a build was found. */
    public long totalMinor() {
        return best.orElseThrow().totalMinor();
    }
}
