package rigbrief.build;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.quantity.Money;

/**
 * What somebody says has happened to a part.
 *
 * @param part id of the part, or the word of its slot
 * @param to the state its units are in now
 * @param from the state they were in; empty for the usual one
 * @param count how many; empty for all there are in that state
 * @param date the day
 * @param by who says so
 * @param supplier id of the supplier, where it is another than planned
 * @param paid what was paid for each
 * @param refunded what came back for each
 * @param note why
 * @param aside whether a part that was set aside is meant, though the build has one of that name
 */
public record MoveRequest(
        String part,
        PartState to,
        Optional<PartState> from,
        OptionalInt count,
        LocalDate date,
        Optional<String> by,
        Optional<String> supplier,
        Optional<Money> paid,
        Optional<Money> refunded,
        Optional<String> note,
        boolean aside) {

    /** Whether it tells something beside the state. */
    boolean tells() {
        return supplier.isPresent() || paid.isPresent() || refunded.isPresent() || note.isPresent();
    }
}
