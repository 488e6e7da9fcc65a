package rigbrief.build;

import java.util.List;
import java.util.Optional;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * One line of a build file.
 *
 * @param slot where the part goes
 * @param part the part
 * @param pieces how many packs, per machine
 * @param supplier id of the supplier it was planned from; empty for a kept part or one that nobody
 *     offers
 * @param unitPrice planned price of one pack; zero for a kept part
 * @param state how far it has come; of units that differ, the state of those furthest behind
 * @param kept whether it is the client's own
 * @param units the units of all machines, in the order in which they were parted; empty while all
 *     are alike and nothing but their state is known
 */
public record BuildLine(
        Slot slot,
        Part part,
        int pieces,
        Optional<String> supplier,
        Money unitPrice,
        PartState state,
        boolean kept,
        List<Units> units) {
    public BuildLine {
        units = List.copyOf(units);
        state = units.isEmpty() ? state : Units.leastAdvanced(units);
    }

    /** A line whose units are all in one state. */
    public BuildLine(
            Slot slot,
            Part part,
            int pieces,
            Optional<String> supplier,
            Money unitPrice,
            PartState state,
            boolean kept) {
        this(slot, part, pieces, supplier, unitPrice, state, kept, List.of());
    }

    /** The same line with other units. */
    public BuildLine with(List<Units> others) {
        return new BuildLine(slot, part, pieces, supplier, unitPrice, state, kept, others);
    }

    /**
     * The units, one group at least, for so many machines.
     *
     * @param machines how many machines are built alike
     */
    public List<Units> units(int machines) {
        return units.isEmpty() ? List.of(Units.of(pieces * machines, state)) : units;
    }
}
