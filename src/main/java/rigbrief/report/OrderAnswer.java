package rigbrief.report;

import java.util.Optional;
import rigbrief.build.HistoryEntry;
import rigbrief.build.OrderStatus;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Supplier;
import rigbrief.proposal.Buildable;

/**
 * How an order stands, with what was just done to it.
 *
 * @param name what the build file is called
 * @param catalogue the catalogue
 * @param status how it stands
 * @param buildable how many machines today's stock allows
 * @param moved what was just done; empty when the order was only looked at
 */
public record OrderAnswer(
        String name,
        Catalogue catalogue,
        OrderStatus status,
        Buildable buildable,
        Optional<HistoryEntry.Move> moved) {

    /** A supplier's name; its id when the catalogue knows it no more. */
    String supplier(String id) {
        return catalogue.suppliers().stream()
                .filter(supplier -> supplier.id().equals(id))
                .map(Supplier::name)
                .findFirst()
                .orElse(id);
    }
}
