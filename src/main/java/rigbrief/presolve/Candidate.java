package rigbrief.presolve;

import java.util.Optional;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * One way to fill a slot: a part with a number of packs, or explicitly nothing.
 *
 * <p>Compared by identity: a slot's candidates are made once.
 */
public final class Candidate {
    private final Slot slot;
    private final int index;
    private final Part part;
    private final int pieces;
    private final long[] minorBySet;

    Candidate(Slot slot, int index, Part part, int pieces, long[] minorBySet) {
        this.slot = slot;
        this.index = index;
        this.part = part;
        this.pieces = pieces;
        this.minorBySet = minorBySet;
    }

    /** The same at another place, in a list of its own. */
    public Candidate numbered(int place) {
        return new Candidate(slot, place, part, pieces, minorBySet);
    }

    /** The slot it fills. */
    public Slot slot() {
        return slot;
    }

    /** Its place in the slot's list. */
    public int index() {
        return index;
    }

    /** Whether it leaves the slot empty. */
    public boolean none() {
        return part == null;
    }

    /** The part; empty when the slot stays empty. */
    public Optional<Part> part() {
        return Optional.ofNullable(part);
    }

    /** The part or null, for the search's inner loop. */
    public Part partOrNull() {
        return part;
    }

    /** Packs per machine; 0 when the slot stays empty. */
    public int pieces() {
        return pieces;
    }

    /**
     * Price for all machines by supplier set, in minor units, in the order of the pricing's sets.
     * Not to be changed.
     */
    public long[] minorBySet() {
        return minorBySet;
    }

    @Override
    public String toString() {
        return slot.word()
                + "="
                + (part == null ? "none" : part.id() + (pieces > 1 ? " x" + pieces : ""));
    }
}
