package rigbrief.proposal.budget;

import java.util.Optional;
import rigbrief.proposal.solve.Least;

/**
 * A brief with one must changed.
 *
 * @param words what the must is then: "not asked for", or its other value
 * @param least the least total, at any price
 * @param savedMinor what that is less than with the must as asked; negative when it is more; 0 when
 *     either is unknown
 * @param gain what it does to the most utility under the ceiling; empty when no build was found
 *     there
 */
public record Variant(String words, Least least, long savedMinor, Optional<Gain> gain) {}
