package rigbrief.brief;

import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * A part the client already has.
 *
 * @param slot where it goes
 * @param part the part: out of the catalogue, or as the brief describes it
 * @param pieces how many
 */
public record Kept(Slot slot, Part part, int pieces) {}
