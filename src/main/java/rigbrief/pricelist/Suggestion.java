package rigbrief.pricelist;

import rigbrief.part.Part;

/**
 * A part that a row may be, by its words and numbers.
 *
 * @param part the part
 * @param percent how much of the part's name the row holds, rare words weighing more
 */
public record Suggestion(Part part, int percent) {}
