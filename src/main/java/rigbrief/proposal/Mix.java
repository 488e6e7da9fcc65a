package rigbrief.proposal;

import java.util.ArrayList;
import java.util.List;
import rigbrief.audit.Audit;
import rigbrief.build.BuildRecord;
import rigbrief.part.Slot;

/**
 * An order of machines in two variants, where the stock for one runs short.
 *
 * @param first the variant of at least half of the machines
 * @param second the variant that covers the rest; it may have the same parts from other suppliers
 * @param totalMinor what both cost together, in minor units; a supplier of both delivers once
 * @param suppliers number of suppliers of both together
 * @param proven whether no order in two variants costs less
 */
public record Mix(Share first, Share second, long totalMinor, int suppliers, boolean proven) {

    /**
     * A variant.
     *
     * @param machines how many are built
     * @param audit the judgement on it, for so many machines, with the stock that is left to it
     * @param record the build as it is filed; its brief is for these machines, and its ceiling is
     *     what the other variant leaves of the whole
     */
    public record Share(int machines, Audit audit, BuildRecord record) {}

    /** Slots in which the two differ, in slot order. */
    public List<Slot> changed() {
        List<Slot> changed = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            if (!same(slot)) {
                changed.add(slot);
            }
        }
        return changed;
    }

    private boolean same(Slot slot) {
        var a = first.audit().build();
        var b = second.audit().build();
        return a.has(slot) == b.has(slot)
                && (!a.has(slot)
                        || a.part(slot).equals(b.part(slot)) && a.pieces(slot) == b.pieces(slot));
    }
}
