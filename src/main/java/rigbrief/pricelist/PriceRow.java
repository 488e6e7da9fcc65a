package rigbrief.pricelist;

import java.time.LocalDate;
import rigbrief.quantity.Money;

/**
 * A row of a supplier's price list, in the catalogue's terms; a text it does not have is empty.
 *
 * @param line the line it begins at, from 1
 * @param article the supplier's own number
 * @param id id of the part in the catalogue
 * @param number the maker's order number
 * @param gtin GS1 item number
 * @param words what the supplier calls it
 * @param price price of one, in the catalogue's currency
 * @param stock how many there are; negative as it stands in the list
 * @param leadDays days until they are here
 * @param asOf date of the statement
 */
public record PriceRow(
        int line,
        String article,
        String id,
        String number,
        String gtin,
        String words,
        Money price,
        int stock,
        int leadDays,
        LocalDate asOf) {

    /** What a person would call the row: its words, or the first number it has. */
    public String name() {
        for (String name : new String[] {words, number, article, gtin, id}) {
            if (!name.isEmpty()) {
                return name;
            }
        }
        return "line " + line;
    }
}
