package rigbrief.search;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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

    /** Slots that are bounded together, which takes them in this order when utility counts. */
    private static final Set<Slot> TOGETHER =
            EnumSet.of(Slot.SUPPLY, Slot.MEMORY, Slot.CASE, Slot.COOLER, Slot.FANS);

    /**
     * The order that suits an objective; behind pair and board, slots that leave no choice come
     * first, unless they are bounded together with others.
     */
    static List<Slot> of(Objective objective, Candidates candidates) {
        boolean money = objective.perPoint() == 0;
        List<Slot> usual = money ? FOR_MONEY : FOR_UTILITY;
        List<Slot> order = new ArrayList<>(usual.subList(0, Certifier.BOARD + 1));
        List<Slot> rest = usual.subList(Certifier.BOARD + 1, usual.size());
        for (boolean early : new boolean[] {true, false}) {
            for (Slot slot : rest) {
                boolean single = candidates.of(slot).size() == 1;
                if (early == (single && (money || !TOGETHER.contains(slot)))) {
                    order.add(slot);
                }
            }
        }
        return List.copyOf(order);
    }
}
