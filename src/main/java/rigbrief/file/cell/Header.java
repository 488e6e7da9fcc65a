package rigbrief.file.cell;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rigbrief.diagnostic.Faults;
import rigbrief.diagnostic.Nearest;

/** The first row of a CSV file: which column stands where, and which is missing. */
final class Header {
    private final CsvTable table;
    private final List<Column> columns;
    private final Faults faults;

    Header(CsvTable table, List<Column> columns, Faults faults) {
        this.table = table;
        this.columns = columns;
        this.faults = faults;
    }

    /** Remarks on the header; whether rows can be read under it at all. */
    boolean usable() {
        List<String> names = List.copyOf(table.texts());
        if (names.size() == 1 && names.get(0).contains(";")) {
            faults.add(
                    table.fault(
                            0,
                            "header",
                            names.get(0),
                            "commas between the columns",
                            "save the file again with commas as separators"));
            return false;
        }
        place(names);
        noteUnknown(names);
        reportMissing(names);
        return true;
    }

    private void place(List<String> names) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            table.header(name, i);
            if (!name.isEmpty() && !seen.add(name)) {
                faults.add(
                        table.fault(
                                i,
                                "header",
                                name,
                                "each column once",
                                "take one of the two columns out"));
            }
        }
    }

    private void noteUnknown(List<String> names) {
        List<String> known = columns.stream().map(Column::name).toList();
        List<String> free = new ArrayList<>(known);
        free.removeAll(names);
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            if (!known.contains(name)) {
                String advice =
                        Nearest.to(name, free)
                                .map(near -> "did you mean " + near + "?")
                                .orElse("nothing, if it is your own");
                faults.note(table.fault(i, "header", name, "a column that is read here", advice));
            }
        }
    }

    private void reportMissing(List<String> names) {
        for (Column column : columns) {
            if (column.required() && !names.contains(column.name())) {
                faults.add(
                        table.fault(
                                0,
                                column.name(),
                                "",
                                "a column of this name",
                                "add it to the header; it holds " + column.holds()));
            }
        }
    }
}
