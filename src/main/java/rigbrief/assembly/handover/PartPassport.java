package rigbrief.assembly.handover;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * What the owner needs about one part when something is wrong with it.
 *
 * @param slot where it is
 * @param part the part
 * @param quantity packs in each machine
 * @param own whether it was the client's own, so that its guarantee is not ours to tell
 * @param supplier id of the supplier; empty where nobody noted it
 * @param from day the guarantee is counted from; empty where nobody noted it
 * @param years the maker's guarantee in years; empty when unknown
 */
public record PartPassport(
        Slot slot,
        Part part,
        int quantity,
        boolean own,
        Optional<String> supplier,
        Optional<LocalDate> from,
        OptionalInt years) {

    static PartPassport of(BuildLine line, BuildRecord filed) {
        Optional<String> ordered =
                line.units(filed.machines()).stream()
                        .flatMap(units -> units.supplier().stream())
                        .findFirst();
        return new PartPassport(
                line.slot(),
                line.part(),
                line.pieces(),
                line.kept(),
                ordered.or(line::supplier),
                received(line, filed),
                line.part().listing().warrantyYears());
    }

    /** The last day of the guarantee; empty unless day and years are known. */
    public Optional<LocalDate> until() {
        return years.isEmpty()
                ? Optional.empty()
                : from.map(day -> day.plusYears(years.getAsInt()));
    }

    /** The day it came, or else was ordered; of several units the last, so that none is missed. */
    private static Optional<LocalDate> received(BuildLine line, BuildRecord filed) {
        if (line.kept()) {
            return Optional.empty();
        }
        return moved(line, filed, PartState.RECEIVED)
                .or(() -> since(line, filed))
                .or(() -> moved(line, filed, PartState.ORDERED));
    }

    private static Optional<LocalDate> moved(BuildLine line, BuildRecord filed, PartState to) {
        return filed.history().stream()
                .filter(HistoryEntry.Move.class::isInstance)
                .map(HistoryEntry.Move.class::cast)
                .filter(move -> move.slot() == line.slot() && move.to() == to)
                .filter(move -> move.part().equals(line.part().id()))
                .map(HistoryEntry.Move::date)
                .max(LocalDate::compareTo);
    }

    private static Optional<LocalDate> since(BuildLine line, BuildRecord filed) {
        return line.units(filed.machines()).stream()
                .filter(units -> units.state().here())
                .map(Units::since)
                .flatMap(Optional::stream)
                .max(LocalDate::compareTo);
    }
}
