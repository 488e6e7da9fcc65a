package rigbrief.search;

import java.util.Optional;

/**
 * What the certifier found out.
 *
 * @param best the best build; empty when none was found
 * @param bound the objective's first figure that no build passes; meaningless when no build exists
 * @param complete whether the whole space was covered, so that the best build is proven best, or
 *     proven not to exist
 * @param steps nodes visited
 */
public record Certificate(Optional<Standing> best, double bound, boolean complete, long steps) {
    /** The same certificate for a build at least as good, found elsewhere. */
    public Certificate with(Standing other) {
        return new Certificate(Optional.of(other), bound, complete, steps);
    }
}
