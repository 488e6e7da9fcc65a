package rigbrief.build;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigbrief.quantity.Money;

/**
 * Some units of a line that have come equally far. A unit is one pack for one machine.
 *
 * @param count how many; at least one
 * @param state how far they have come
 * @param since the day they came so far; empty when nobody noted it
 * @param supplier id of the supplier they were ordered from; empty before the order
 * @param paid what was paid for each; empty while unpaid
 * @param refunded what came back for each; empty while nothing did
 */
public record Units(
        int count,
        PartState state,
        Optional<LocalDate> since,
        Optional<String> supplier,
        Optional<Money> paid,
        Optional<Money> refunded) {
    public Units {
        if (count < 1) {
            throw new IllegalArgumentException(
                    "found %d units, expected at least one; leave an empty group out"
                            .formatted(count));
        }
    }

    /** Units of which nothing but the state is known. */
    public static Units of(int count, PartState state) {
        return new Units(
                count,
                state,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** The same units, another number of them. */
    public Units counting(int other) {
        return new Units(other, state, since, supplier, paid, refunded);
    }

    /** Whether both differ in number alone. */
    boolean like(Units other) {
        return other.counting(count).equals(this);
    }

    /** The state of the units that lag furthest behind; a returned unit lags behind nothing. */
    static PartState leastAdvanced(List<Units> groups) {
        return groups.stream()
                .map(Units::state)
                .min(Comparator.comparingInt(PartState::progress))
                .orElseThrow(() -> new IllegalArgumentException("no units; give at least one"));
    }
}
