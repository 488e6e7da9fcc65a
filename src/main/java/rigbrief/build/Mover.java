package rigbrief.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.quantity.Money;

/** Moves units of a filed build's parts from state to state, and notes it in the history. */
public final class Mover {
    private final BuildRecord record;

    /** Moves parts of a build. */
    public Mover(BuildRecord record) {
        this.record = record;
    }

    /**
     * The build after a move.
     *
     * <p>For every unit of the build that goes back a new one is wanted, so that the units that are
     * not returned stay one for each piece of each machine.
     *
     * @throws MoveRefused when {@link LegalMoves} has no such move, or what is told with it makes
     *     no sense
     */
    public BuildRecord move(MoveRequest request) throws MoveRefused {
        Named named = Named.of(record, request);
        UnitMove move = new UnitMove(named, request);
        List<Units> moved = move.units();
        return record.with(
                named.lines(record, moved), named.aside(record, moved), history(named, move));
    }

    private List<HistoryEntry> history(Named named, UnitMove move) {
        List<HistoryEntry> history = new ArrayList<>(record.history());
        history.add(move.entry(named));
        return history;
    }

    /** What of planned supplier and facts a unit has after a move. */
    static Units changed(Units before, Named named, MoveRequest request) {
        boolean afresh = request.to() == PartState.WANTED;
        boolean begins = before.state() == PartState.WANTED;
        Optional<String> known = begins ? named.supplier() : before.supplier();
        Optional<Money> paid = request.paid().or(before::paid);
        boolean stays = before.state() == request.to();
        return new Units(
                before.count(),
                request.to(),
                stays ? before.since() : Optional.of(request.date()),
                afresh ? Optional.empty() : request.supplier().or(() -> known),
                afresh ? Optional.empty() : paid,
                afresh ? Optional.empty() : request.refunded().or(before::refunded));
    }
}
