package rigbrief.assembly.order;

import java.util.ArrayList;
import java.util.List;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;
import rigbrief.wording.Texts;

/**
 * One part to order.
 *
 * @param rank place in the order in which to buy, from 1
 * @param slot where it goes
 * @param part the part
 * @param supplier id of the supplier
 * @param quantity packs to order, for all machines
 * @param unitPrice price of one pack
 * @param leadDays days until it is here
 * @param stock packs the supplier has
 * @param suppliers suppliers that offer enough of it within the brief's terms
 */
public record OrderLine(
        int rank,
        Slot slot,
        Part part,
        String supplier,
        int quantity,
        Money unitPrice,
        int leadDays,
        int stock,
        int suppliers) {
    /** Stock of less than so many times what is wanted may be gone tomorrow. Common practice. */
    private static final int LOW_STOCK_TIMES = 2;

    /** Price of all packs. */
    public Money price() {
        return unitPrice.times(quantity);
    }

    /** Whether nobody else offers it. */
    public boolean singleOffer() {
        return suppliers <= 1;
    }

    /** Whether little more is left than is wanted. */
    public boolean lowStock() {
        return stock < LOW_STOCK_TIMES * quantity;
    }

    /** What to hurry for, in a language; empty when nothing presses. */
    public String urgency(Texts texts) {
        List<String> reasons = new ArrayList<>();
        if (singleOffer()) {
            reasons.add(texts.text("urgent.single"));
        }
        if (lowStock()) {
            reasons.add(texts.text("urgent.left", stock));
        }
        return String.join(", ", reasons);
    }

    OrderLine ranked(int place) {
        return new OrderLine(
                place, slot, part, supplier, quantity, unitPrice, leadDays, stock, suppliers);
    }
}
