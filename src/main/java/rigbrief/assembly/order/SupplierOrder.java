package rigbrief.assembly.order;

import java.util.List;
import rigbrief.quantity.Money;

/**
 * What is ordered from one supplier.
 *
 * @param supplier its id
 * @param name its name
 * @param lines the parts, in the order in which to buy
 * @param parts price of the parts
 * @param delivery price of the delivery
 * @param longestLeadDays days until the last part is here
 */
public record SupplierOrder(
        String supplier,
        String name,
        List<OrderLine> lines,
        Money parts,
        Money delivery,
        int longestLeadDays) {
    public SupplierOrder {
        lines = List.copyOf(lines);
    }

    /** Parts and delivery. */
    public Money total() {
        return parts.plus(delivery);
    }
}
