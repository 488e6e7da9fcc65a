package rigbrief.pricelist;

import rigbrief.part.Part;

/**
 * A row that is a part of the catalogue.
 *
 * @param row the row
 * @param part the part
 * @param by how that is known
 */
public record Match(PriceRow row, Part part, By by) {
    /** How a row is known to be a part. */
    public enum By {
        /** The builder said so for this line. */
        ACCEPTED,
        /** The map says so for this number. */
        MAP,
        /** The row names the part's id. */
        ID,
        /** The row names the maker's number. */
        NUMBER,
        /** The row names the item number. */
        GTIN
    }
}
