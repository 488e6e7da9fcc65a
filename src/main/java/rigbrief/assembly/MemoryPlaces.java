package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;

/**
 * Which memory slots the modules go to.
 *
 * <p>Common practice: counted from the processor, every second slot is filled first (2, then 4),
 * and the rest after them; the board's manual says which its maker names first, and goes before
 * this.
 *
 * @param slots numbers of the slots to fill, from 1 nearest the processor, in rising order
 * @param boardSlots slots the board has
 */
public record MemoryPlaces(List<Integer> slots, int boardSlots) {
    public MemoryPlaces {
        slots = List.copyOf(slots);
    }

    /** The places of a build's modules; as many as there are slots, if there are more modules. */
    public static MemoryPlaces of(Build build) {
        int boardSlots = build.board().memorySlots();
        List<Integer> order = order(boardSlots);
        int modules = Math.min(build.memoryModules(), boardSlots);
        return new MemoryPlaces(order.subList(0, modules).stream().sorted().toList(), boardSlots);
    }

    /** The slot for the one module of a search for a fault. */
    public int first() {
        return order(boardSlots).get(0);
    }

    private static List<Integer> order(int boardSlots) {
        List<Integer> order = new ArrayList<>();
        for (int slot = 2; slot <= boardSlots; slot += 2) {
            order.add(slot);
        }
        for (int slot = 1; slot <= boardSlots; slot += 2) {
            order.add(slot);
        }
        return order;
    }
}
