package rigbrief.build;

import java.util.List;
import java.util.Optional;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * A part that was replaced after it had been ordered: its units are to be cancelled or sent back.
 * Named, not looked up, since the catalogue may know it no more.
 *
 * @param slot where it was meant to go
 * @param part id of the part
 * @param name maker and model
 * @param supplier id of the supplier it was planned from
 * @param unitPrice planned price of one pack
 * @param kept whether it is the client's own
 * @param units the units that had been ordered at least; never empty
 */
public record SetAside(
        Slot slot,
        String part,
        String name,
        Optional<String> supplier,
        Money unitPrice,
        boolean kept,
        List<Units> units) {
    public SetAside {
        units = List.copyOf(units);
        if (units.isEmpty()) {
            throw new IllegalArgumentException(
                    "found no units of %s set aside, expected some; leave the line out"
                            .formatted(part));
        }
    }

    /** The same part with other units. */
    public SetAside with(List<Units> others) {
        return new SetAside(slot, part, name, supplier, unitPrice, kept, others);
    }
}
