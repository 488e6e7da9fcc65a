package rigbrief.catalogue;

import java.time.LocalDate;
import rigbrief.quantity.Money;

/**
 * One supplier's price and stock for a part on a date.
 *
 * @param part id of the part
 * @param supplier id of the supplier
 * @param price price of one, exact
 * @param stock how many there are
 * @param leadDays days until they are here
 * @param asOf date of the statement
 */
public record Offer(
        String part, String supplier, Money price, int stock, int leadDays, LocalDate asOf) {
    /** The same price and stock for a part of another id. */
    public Offer of(String other) {
        return new Offer(other, supplier, price, stock, leadDays, asOf);
    }
}
