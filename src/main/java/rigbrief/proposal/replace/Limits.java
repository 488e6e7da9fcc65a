package rigbrief.proposal.replace;

import java.util.function.BooleanSupplier;

/**
 * How hard to search for a replacement.
 *
 * @param steps most steps of the certifier, all sets of slots together
 * @param stop asked now and then; true ends the search early
 */
public record Limits(long steps, BooleanSupplier stop) {
    /** What suits a catalogue of ordinary size. */
    public static Limits usual() {
        return new Limits(400_000, () -> false);
    }
}
