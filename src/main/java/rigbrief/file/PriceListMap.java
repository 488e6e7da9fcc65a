package rigbrief.file;

import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a supplier writes its price lists.
 *
 * @param supplier id of the supplier
 * @param encoding character set of a file without a byte order mark
 * @param delimiter what stands between cells
 * @param figures how numbers are written
 * @param rate how much of the catalogue's currency one of the list's is
 * @param skipLines lines above the header
 * @param columns which column holds what
 * @param dateForm how dates are written
 * @param asOf date of a list that has no column for it
 * @param stocks numbers behind words for stock
 * @param stock stock of a list that has no column for it
 * @param leads days behind words for lead times
 * @param leadDays days where the list names none
 * @param noPrice words that stand in the place of a price where there is none
 * @param unlistedSoldOut whether what the list does not name is sold out
 * @param same which part a number of the list always means
 */
public record PriceListMap(
        String supplier,
        Charset encoding,
        char delimiter,
        FigureForm figures,
        BigDecimal rate,
        int skipLines,
        Columns columns,
        DateForm dateForm,
        Optional<LocalDate> asOf,
        Map<String, Integer> stocks,
        OptionalInt stock,
        Map<String, Integer> leads,
        OptionalInt leadDays,
        List<String> noPrice,
        boolean unlistedSoldOut,
        Map<String, String> same) {

    /**
     * The headers of the columns; empty where the list has no such column.
     *
     * @param article the supplier's own number
     * @param id the catalogue's id
     * @param number the maker's number
     * @param gtin the item number
     * @param words what the part is called, one or more columns
     * @param price the price
     * @param stock the stock
     * @param leadDays the lead time
     * @param asOf the date
     */
    record Columns(
            String article,
            String id,
            String number,
            String gtin,
            List<String> words,
            String price,
            String stock,
            String leadDays,
            String asOf) {}
}
