package rigbrief.assembly.order;

import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * A part of which nothing, or not all, is to be ordered.
 *
 * @param slot where it goes
 * @param part the part
 * @param quantity packs
 * @param why how it stands: the client's own, ordered, received, faulty, not to be had
 */
public record NotOrdered(Slot slot, Part part, int quantity, String why) {}
