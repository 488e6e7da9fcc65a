package rigbrief.proposal.budget;

import rigbrief.proposal.solve.Least;

/**
 * A brief with one must changed.
 *
 * @param words what the must is then: "not asked for", or its other value
 * @param least the least total, at any price
 * @param savedMinor what that is less than with the must as asked; negative when it is more; 0 when
 *     either is unknown
 * @param pointsGained points that the best build found under the ceiling has over the best one
 *     found with the must as asked, both by the goals of the brief as it stands; 0 when none was
 *     found
 */
public record Variant(String words, Least least, long savedMinor, long pointsGained) {}
