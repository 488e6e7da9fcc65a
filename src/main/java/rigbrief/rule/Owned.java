package rigbrief.rule;

import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.brief.Kept;
import rigbrief.part.Slot;

/** Tells the client's own parts from bought ones. */
public final class Owned {
    private Owned() {}

    /**
     * Whether the part in a slot is the client's own: the brief keeps a part of the same id for the
     * same slot. False for an empty slot.
     */
    public static boolean in(Assessment it, Slot slot) {
        List<Kept> keep = it.brief().keep();
        for (int i = 0; i < keep.size(); i++) {
            if (keep.get(i).slot() == slot && fills(it, keep.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a kept part is in the build, in its slot. */
    public static boolean fills(Assessment it, Kept kept) {
        return it.build().has(kept.slot())
                && it.build().part(kept.slot()).id().equals(kept.part().id());
    }
}
