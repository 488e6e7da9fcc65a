package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;
import rigbrief.part.Slot;

/**
 * A slot that two builds fill differently.
 *
 * @param slot the slot
 * @param from name of the part in the first build, with the number of packs; "none" for none
 * @param to the same of the second
 */
public record PartChange(Slot slot, String from, String to) {
    /** What differs between two builds, in slot order. */
    public static List<PartChange> between(Build one, Build other) {
        List<PartChange> changes = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            String from = name(one, slot);
            String to = name(other, slot);
            if (!from.equals(to)) {
                changes.add(new PartChange(slot, from, to));
            }
        }
        return changes;
    }

    private static String name(Build build, Slot slot) {
        if (!build.has(slot)) {
            return "none";
        }
        int pieces = build.pieces(slot);
        return (pieces > 1 ? pieces + " x " : "") + build.part(slot).name();
    }
}
