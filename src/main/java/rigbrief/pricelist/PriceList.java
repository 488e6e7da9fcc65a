package rigbrief.pricelist;

import java.util.List;
import java.util.Map;

/**
 * A supplier's price list, read.
 *
 * @param supplier id of the supplier
 * @param rows its rows, in file order
 * @param withoutPrice rows that name no price, and say so
 * @param same which part a number of the list always means, as the map says; numbers as in the list
 * @param unlistedSoldOut whether what the list does not name is sold out; else it is left as it is
 */
public record PriceList(
        String supplier,
        List<PriceRow> rows,
        int withoutPrice,
        Map<String, String> same,
        boolean unlistedSoldOut) {
    public PriceList {
        rows = List.copyOf(rows);
    }
}
