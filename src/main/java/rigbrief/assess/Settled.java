package rigbrief.assess;

import java.util.List;
import java.util.Optional;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * What of an order no longer depends on today's offers: parts that were ordered before, at what was
 * paid for them, and deliveries that were paid.
 *
 * @param holdings at most one per slot
 * @param sunkMinor deliveries and losses that are paid whatever is built now, in minor units
 */
public record Settled(List<Holding> holdings, long sunkMinor) {
    /** Nothing was ordered yet. */
    public static final Settled NOTHING = new Settled(List.of(), 0);

    public Settled {
        holdings = List.copyOf(holdings);
    }

    /**
     * Packs of a part that were ordered for a slot.
     *
     * @param slot the slot
     * @param part the part
     * @param units packs for all machines together, at least 1
     * @param supplier whom they were ordered from; empty when nobody noted it
     * @param paidMinor what all of them cost, in minor units
     * @param lossMinor what is lost when the slot is filled otherwise and they go back, in minor
     *     units; at most what they cost, since they may as well stay in a drawer
     */
    public record Holding(
            Slot slot,
            Part part,
            int units,
            Optional<String> supplier,
            long paidMinor,
            long lossMinor) {
        public Holding {
            if (units < 1 || lossMinor < 0 || lossMinor > paidMinor) {
                throw new IllegalArgumentException(
                        "found %d units, %d lost of %d paid for %s, expected at least one unit and no more lost than paid; cap the loss"
                                .formatted(units, lossMinor, paidMinor, part.id()));
            }
        }

        /** Whether it is this part that was ordered. */
        public boolean of(Part other) {
            return other != null && other.id().equals(part.id());
        }
    }

    /** What was ordered for a slot. */
    public Optional<Holding> of(Slot slot) {
        return holdings.stream().filter(holding -> holding.slot() == slot).findFirst();
    }
}
