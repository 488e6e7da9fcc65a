package rigbrief.search;

import java.util.List;
import rigbrief.part.Slot;

/** The orders in which the certifier decides the slots; processor and card always come first. */
final class SlotOrder {
    /**
     * The order in which slots are decided when utility counts: a supply decides much of noise,
     * energy and room to grow, so it comes early.
     */
    private static final List<Slot> FOR_UTILITY =
            List.of(
                    Slot.PROCESSOR,
                    Slot.GRAPHICS,
                    Slot.SUPPLY,
                    Slot.BOARD,
                    Slot.CASE,
                    Slot.WIRELESS,
                    Slot.COOLER,
                    Slot.FANS,
                    Slot.MEMORY,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.BRACE,
                    Slot.SYSTEM,
                    Slot.DISPLAY,
                    Slot.CABLES);

    /** The order when only money counts: the cheapest supply that feeds the rest is found last. */
    private static final List<Slot> FOR_MONEY =
            List.of(
                    Slot.PROCESSOR,
                    Slot.GRAPHICS,
                    Slot.BOARD,
                    Slot.CASE,
                    Slot.WIRELESS,
                    Slot.COOLER,
                    Slot.FANS,
                    Slot.MEMORY,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.SUPPLY,
                    Slot.BRACE,
                    Slot.SYSTEM,
                    Slot.DISPLAY,
                    Slot.CABLES);

    private SlotOrder() {}

    /** The order that suits an objective. */
    static List<Slot> of(Objective objective) {
        return objective.perPoint() == 0 ? FOR_MONEY : FOR_UTILITY;
    }
}
