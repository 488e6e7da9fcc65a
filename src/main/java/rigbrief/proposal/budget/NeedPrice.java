package rigbrief.proposal.budget;

import java.util.Optional;
import rigbrief.proposal.need.Need;

/**
 * What one must costs.
 *
 * @param need the must
 * @param without the brief without it
 * @param softer one usual step softer; empty where there is none
 * @param harder one usual step harder; empty where there is none
 */
public record NeedPrice(
        Need need, Variant without, Optional<Variant> softer, Optional<Variant> harder) {
    /** Whether the least total would be less without it. */
    public boolean binds() {
        return without.savedMinor() > 0;
    }
}
