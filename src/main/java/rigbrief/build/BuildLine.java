package rigbrief.build;

import java.util.Optional;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * One line of a build file.
 *
 * @param slot where the part goes
 * @param part the part
 * @param pieces how many packs, per machine
 * @param supplier id of the supplier; empty for a kept part or one that nobody offers
 * @param unitPrice price of one pack at the time; zero for a kept part
 * @param state how far it has come
 * @param kept whether it is the client's own
 */
public record BuildLine(
        Slot slot,
        Part part,
        int pieces,
        Optional<String> supplier,
        Money unitPrice,
        PartState state,
        boolean kept) {}
