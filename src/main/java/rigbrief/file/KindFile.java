package rigbrief.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
    private final Map<String, String> placeById = new HashMap<>();

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
            placeById.putIfAbsent(id, source.file());
        }
    }

    /** The parts read so far, those with faults among them. */
    List<Part> parts() {
        return parts;
    }

    /** Every id met, also where the rest of its row could not be read. */
    Set<String> ids() {
        return placeById.keySet();
    }

    /** Every id met, in alphabetical order. */
    List<String> sortedIds() {
        return List.copyOf(new TreeSet<>(placeById.keySet()));
    }

    private void keep(Part part, CsvTable table, String file) {
        String earlier = placeById.putIfAbsent(part.id(), file + ":" + table.line());
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
