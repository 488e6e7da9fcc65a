package rigbrief.search;

import java.util.ArrayList;
import java.util.List;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidates;

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
                    Slot.BOARD,
                    Slot.SUPPLY,
                    Slot.MEMORY,
                    Slot.CASE,
                    Slot.COOLER,
                    Slot.FANS,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.WIRELESS,
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
                    Slot.MEMORY,
                    Slot.CASE,
                    Slot.COOLER,
                    Slot.FANS,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.WIRELESS,
                    Slot.SUPPLY,
                    Slot.BRACE,
                    Slot.SYSTEM,
                    Slot.DISPLAY,
                    Slot.CABLES);

    private SlotOrder() {}

    /**
     * The order that suits an objective; behind pair and board, slots that leave no choice come
     * first.
     */
    static List<Slot> of(Objective objective, Candidates candidates) {
        List<Slot> usual = objective.perPoint() == 0 ? FOR_MONEY : FOR_UTILITY;
        List<Slot> order = new ArrayList<>(usual.subList(0, Certifier.BOARD + 1));
        List<Slot> rest = usual.subList(Certifier.BOARD + 1, usual.size());
        for (Slot slot : rest) {
            if (candidates.of(slot).size() == 1) {
                order.add(slot);
            }
        }
        for (Slot slot : rest) {
            if (candidates.of(slot).size() != 1) {
                order.add(slot);
            }
        }
        return List.copyOf(order);
    }
}
