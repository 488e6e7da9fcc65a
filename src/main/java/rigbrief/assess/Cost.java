package rigbrief.assess;

import java.util.List;
import rigbrief.part.Slot;

/**
 * What an order costs, in minor units of the currency, for all machines of the brief together.
 *
 * <p>Suppliers are those that make the total least; among equals, the fewest, then the first in the
 * catalogue's order.
 *
 * @param partsMinor parts
 * @param deliveryMinor one delivery from each supplier used
 * @param feesMinor assembly
 * @param taxMinor tax on all of these
 * @param totalMinor everything
 * @param lines bought parts in slot order; kept parts are not among them
 * @param suppliers number of suppliers used
 * @param longestLeadDays days until the last part is here
 * @param singleOffers bought parts that only one supplier offers
 * @param unavailable filled slots whose part nobody offers within the brief's terms
 */
public record Cost(
        long partsMinor,
        long deliveryMinor,
        long feesMinor,
        long taxMinor,
        long totalMinor,
        List<Line> lines,
        int suppliers,
        int longestLeadDays,
        int singleOffers,
        List<Slot> unavailable) {
    /**
     * One bought part.
     *
     * @param slot where it goes
     * @param supplier id of the supplier
     * @param unitMinor price of one pack
     * @param pieces packs per machine
     * @param leadDays days until it is here
     */
    public record Line(Slot slot, String supplier, long unitMinor, int pieces, int leadDays) {}
}
