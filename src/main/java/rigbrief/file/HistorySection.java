package rigbrief.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.build.HistoryEntry;
import rigbrief.build.HistoryEntry.Move;
import rigbrief.build.HistoryEntry.Swap;
import rigbrief.build.PartState;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.YamlText;
import rigbrief.part.Slot;

/**
 * Reads and writes what was done to a build.
 *
 * <p>Suppliers and parts named here may have left the catalogue since, so they are not looked up.
 */
final class HistorySection {
    private static final String KEY = "history";

    private final MoneyForm money;

    HistorySection(MoneyForm money) {
        this.money = money;
    }

    /** The entries, in file order. */
    List<HistoryEntry> read(Keys root) {
        List<HistoryEntry> all = new ArrayList<>();
        for (Keys keys : root.listOfKeys(KEY)) {
            int before = keys.faultCount();
            Optional<LocalDate> date = keys.one("date", Forms::date);
            Optional<String> by = maybeText(keys, "by");
            Optional<Slot> slot = keys.one("slot", Forms.word(Slot.class));
            Optional<String> note = maybeText(keys, "note");
            HistoryEntry entry =
                    keys.has("from-part") || keys.has("to-part")
                            ? swap(keys, date, by, slot, note)
                            : move(keys, date, by, slot, note);
            keys.finish();
            if (keys.faultCount() == before) {
                all.add(entry);
            }
        }
        return all;
    }

    private Move move(
            Keys keys,
            Optional<LocalDate> date,
            Optional<String> by,
            Optional<Slot> slot,
            Optional<String> note) {
        return new Move(
                date.orElse(null),
                by,
                slot.orElse(null),
                keys.cells().text("part"),
                keys.cells().whole("count", 1, UnitsSection.MOST_UNITS),
                keys.cells().choice("from", PartState.class),
                keys.cells().choice("to", PartState.class),
                keys.maybe("supplier", Forms::id),
                keys.maybe("paid", money),
                keys.maybe("refunded", money),
                note);
    }

    private static Swap swap(
            Keys keys,
            Optional<LocalDate> date,
            Optional<String> by,
            Optional<Slot> slot,
            Optional<String> note) {
        return new Swap(
                date.orElse(null),
                by,
                slot.orElse(null),
                keys.maybe("from-part", Forms::id),
                keys.maybe("to-part", Forms::id),
                note);
    }

    private static Optional<String> maybeText(Keys keys, String key) {
        return keys.has(key) ? Optional.of(keys.cells().text(key)) : Optional.empty();
    }

    /** Writes the entries, if there are any. */
    static void write(List<HistoryEntry> history, YamlText yaml) {
        if (history.isEmpty()) {
            return;
        }
        yaml.begin(KEY);
        for (HistoryEntry entry : history) {
            yaml.item().plain("date", entry.date());
            entry.by().ifPresent(by -> yaml.text("by", by));
            yaml.plain("slot", entry.slot().word());
            if (entry instanceof Move move) {
                write(move, yaml);
            } else if (entry instanceof Swap swap) {
                swap.fromPart().ifPresent(part -> yaml.text("from-part", part));
                swap.toPart().ifPresent(part -> yaml.text("to-part", part));
            }
            entry.note().ifPresent(note -> yaml.text("note", note));
            yaml.end();
        }
        yaml.end();
    }

    private static void write(Move move, YamlText yaml) {
        yaml.text("part", move.part())
                .plain("count", move.count())
                .plain("from", move.from().word())
                .plain("to", move.to().word());
        move.supplier().ifPresent(supplier -> yaml.text("supplier", supplier));
        move.paid().ifPresent(paid -> yaml.text("paid", paid.plain()));
        move.refunded().ifPresent(refunded -> yaml.text("refunded", refunded.plain()));
    }
}
