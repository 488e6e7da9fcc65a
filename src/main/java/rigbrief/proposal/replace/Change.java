package rigbrief.proposal.replace;

import java.util.Optional;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * One slot that a way fills anew.
 *
 * @param slot the slot
 * @param from what was in it; empty when it was empty
 * @param fromPieces packs per machine before
 * @param to what is in it now; empty when it stays empty; the same part when another unit of it
 *     takes the place of a faulty one
 * @param toPieces packs per machine now
 * @param units packs to order for it, for all machines
 * @param extraMinor what it costs more than as filed, in minor units, before tax and delivery
 * @param needed whether the slot could not have stayed as it was
 * @param because why
 */
public record Change(
        Slot slot,
        Optional<Part> from,
        int fromPieces,
        Optional<Part> to,
        int toPieces,
        int units,
        long extraMinor,
        boolean needed,
        String because) {
    /** Whether another unit of the same part takes the place of a faulty one. */
    public boolean sameAgain() {
        return from.isPresent()
                && to.isPresent()
                && from.get().id().equals(to.get().id())
                && fromPieces == toPieces;
    }
}
