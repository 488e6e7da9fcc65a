package rigbrief.report.page;

/**
 * A part as a page lists it; all of it text.
 *
 * @param slot word of its slot, for looking up the term
 * @param place name of its slot in the reader's language
 * @param name maker and model
 * @param what what it does for this brief
 * @param choice what it was chosen over; empty where that is not known
 * @param supplier who sells it, or that nobody does, or that it is the client's own
 * @param each price of one
 * @param number how many, all machines together
 * @param price price of all of them
 * @param changed whether the step before has another part here
 */
public record PartLine(
        String slot,
        String place,
        String name,
        String what,
        String choice,
        String supplier,
        String each,
        String number,
        String price,
        boolean changed) {}
