package rigbrief.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.CellRow;
import rigbrief.file.cell.Column;
import rigbrief.file.cell.ColumnLister;
import rigbrief.file.cell.CsvTable;
import rigbrief.part.Kind;
import rigbrief.part.Part;

/** Reads the part files, one after the other; ids may not repeat in any of them. */
final class KindFile {
    private final Faults faults;
    private final List<Part> parts = new ArrayList<>();
    private final Map<String, Place> placeById = new HashMap<>();

    /** Where an id was met; line 0 where its row could not be read. */
    private record Place(String id, String file, int line) {
        @Override
        public String toString() {
            return line == 0 ? file : file + ":" + line;
        }
    }

    KindFile(Faults faults) {
        this.faults = faults;
    }

    /** Reads one file. */
    void read(Kind kind, SourceText source) {
        List<Column> columns = ColumnLister.of(kind);
        CsvTable table = CsvTable.open(source.file(), source.text(), columns, faults);
        CellRow.Memo memo = new CellRow.Memo();
        while (table.next()) {
            int before = faults.count();
            Part part = kind.read(CellRow.of(table, memo));
            if (faults.count() == before) {
                PartChecks.check(part, table);
            }
            keep(part, table, source.file());
        }
        for (String id : table.lost()) {
            placeById.putIfAbsent(id, new Place(id, source.file(), 0));
        }
    }

    /** The parts read so far, those with faults among them. */
    List<Part> parts() {
        return parts;
    }

    /**
     * An id that was met, also where the rest of its row could not be read: the one string that
     * stands for it everywhere.
     */
    Optional<String> met(String id) {
        return Optional.ofNullable(placeById.get(id)).map(Place::id);
    }

    /** Every id met, in alphabetical order. */
    List<String> sortedIds() {
        return List.copyOf(new TreeSet<>(placeById.keySet()));
    }

    private void keep(Part part, CsvTable table, String file) {
        Place place = new Place(part.id(), file, table.line());
        Place earlier = placeById.putIfAbsent(part.id(), place);
        if (earlier != null && !part.id().isEmpty()) {
            table.fault(
                    "id",
                    part.id(),
                    "an id used once, and it stands at " + earlier,
                    "give one of the two another id");
        }
        parts.add(part);
    }
}
