package rigbrief.pricelist;

import java.util.Optional;
import rigbrief.part.Part;

/**
 * Something in a price list that is more likely wrong than right. While one is open, nothing is
 * changed.
 *
 * @param row the row
 * @param part the part; empty when the row names several
 * @param kind what is suspicious
 * @param text what was found and what it was held against
 */
public record Suspicion(PriceRow row, Optional<Part> part, Kind kind, String text) {
    /** What may be suspicious. */
    public enum Kind {
        /** The supplier's price moved by more than 40 %. */
        PRICE_MOVED,
        /** A first price is more than twice, or less than half, the median of other suppliers. */
        PRICE_FAR,
        /** There are fewer than none. */
        STOCK_NEGATIVE,
        /** Two rows are the same part. */
        TWICE,
        /** The row's numbers name different parts. */
        DISAGREES,
        /** What is known already is newer. */
        OLDER
    }
}
