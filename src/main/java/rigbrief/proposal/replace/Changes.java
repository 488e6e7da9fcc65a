package rigbrief.proposal.replace;

import java.util.EnumSet;
import java.util.Set;
import rigbrief.build.Build;
import rigbrief.part.Slot;

/** Which slots two builds fill otherwise. */
final class Changes {
    private Changes() {}

    /** The slots that hold another part, another number of packs, or nothing any more. */
    static Set<Slot> between(Build before, Build after) {
        Set<Slot> changed = EnumSet.noneOf(Slot.class);
        for (Slot slot : Slot.values()) {
            if (differs(before, after, slot)) {
                changed.add(slot);
            }
        }
        return changed;
    }

    private static boolean differs(Build before, Build after, Slot slot) {
        if (!before.has(slot) || !after.has(slot)) {
            return before.has(slot) != after.has(slot);
        }
        return !before.part(slot).id().equals(after.part(slot).id())
                || before.pieces(slot) != after.pieces(slot);
    }
}
