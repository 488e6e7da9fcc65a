package rigbrief.rule;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import rigbrief.part.Slot;

/** Sets of slots that rules read: shared, in slot order, not to be changed. */
public final class Reads {
    /** Every slot. */
    public static final Set<Slot> ALL = Collections.unmodifiableSet(EnumSet.allOf(Slot.class));

    /** No slot: a rule that is asked of any build, however unfinished. */
    public static final Set<Slot> NOTHING = Collections.unmodifiableSet(EnumSet.noneOf(Slot.class));

    /** The slots on which electrical load, heat and noise depend. */
    public static final Set<Slot> ELECTRICAL =
            of(
                    Slot.PROCESSOR,
                    Slot.BOARD,
                    Slot.MEMORY,
                    Slot.GRAPHICS,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.SUPPLY,
                    Slot.COOLER,
                    Slot.CASE,
                    Slot.FANS,
                    Slot.WIRELESS);

    /** Those among them that add to the load of processor, card and supply. */
    public static final Set<Slot> FURTHER_LOAD =
            of(
                    Slot.BOARD,
                    Slot.MEMORY,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.COOLER,
                    Slot.CASE,
                    Slot.FANS,
                    Slot.WIRELESS);

    private Reads() {}

    /** A set of slots. */
    public static Set<Slot> of(Slot... slots) {
        EnumSet<Slot> set = EnumSet.noneOf(Slot.class);
        set.addAll(Arrays.asList(slots));
        return Collections.unmodifiableSet(set);
    }
}
