package rigbrief.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rigbrief.catalogue.PartRates;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.CellRow;
import rigbrief.file.cell.ColumnLister;
import rigbrief.file.cell.CsvTable;
import rigbrief.file.cell.Expectation;
import rigbrief.part.Cells;
import rigbrief.part.Kind;
import rigbrief.part.Part;

/** Reads {@code rates.csv} of an overlay: measured rates in place of those of parts' sheets. */
final class RatesFile {
    /** The file's name in an overlay's folder. */
    static final String NAME = "rates.csv";

    private static final Map<Kind, List<String>> COLUMNS = columns();

    private static Map<Kind, List<String>> columns() {
        Map<Kind, List<String>> columns = new EnumMap<>(Kind.class);
        columns.put(Kind.PROCESSOR, List.of("rate_single", "rate_all"));
        columns.put(Kind.GRAPHICS, List.of("tflops", "bandwidth_gbs", "ray_rate"));
        columns.put(Kind.DRIVE, List.of("read_mbs", "write_mbs"));
        return columns;
    }

    private final Faults faults;
    private final Map<String, Part> partById = new HashMap<>();
    private final List<String> ids = new ArrayList<>();

    RatesFile(List<Part> parts, Faults faults) {
        this.faults = faults;
        for (Part part : parts) {
            if (COLUMNS.containsKey(part.kind())) {
                partById.put(part.id(), part);
                ids.add(part.id());
            }
        }
    }

    /** Rates by part, those without a fault. */
    Map<String, PartRates> read(SourceText source) {
        ColumnLister lister = new ColumnLister();
        row(lister);
        CsvTable table = CsvTable.open(source.file(), source.text(), lister.columns(), faults);
        CellRow.Memo memo = new CellRow.Memo();
        Map<String, PartRates> ratesByPart = new HashMap<>();
        while (table.next()) {
            int before = faults.count();
            PartRates rates = row(CellRow.of(table, memo));
            check(rates, table);
            if (faults.count() == before && ratesByPart.put(rates.part(), rates) != null) {
                String advice = "take one of the two rows out";
                table.fault("part", rates.part(), "a part named once", advice);
            }
        }
        return ratesByPart;
    }

    private static PartRates row(Cells cells) {
        return new PartRates(
                cells.text("part"),
                rate(cells, "tflops", 0.1, 500),
                rate(cells, "bandwidth_gbs", 5, 10_000),
                rate(cells, "ray_rate", 0.01, 2_000),
                rate(cells, "rate_single", 5, 1_000),
                rate(cells, "rate_all", 5, 20_000),
                rate(cells, "read_mbs", 20, 30_000),
                rate(cells, "write_mbs", 20, 30_000));
    }

    /** Nothing rates 0, so that 0 can stand for an empty cell. */
    private static OptionalDouble rate(Cells cells, String column, double least, double most) {
        double rate = cells.numberOr(column, least, most, 0);
        return rate > 0 ? OptionalDouble.of(rate) : OptionalDouble.empty();
    }

    private void check(PartRates rates, CsvTable table) {
        Part part = partById.get(rates.part());
        if (rates.part().isEmpty()) {
            return;
        }
        if (part == null) {
            String what = "the id of a processor, card or drive of the catalogue";
            Expectation name = Expectation.name(rates.part(), what, ids);
            table.fault("part", rates.part(), name.text(), name.advice());
            return;
        }
        COLUMNS.forEach(
                (kind, columns) -> {
                    if (kind != part.kind()) {
                        columns.forEach(column -> checkEmpty(column, part, table));
                    }
                });
    }

    private static void checkEmpty(String column, Part part, CsvTable table) {
        String cell = table.cell(column);
        if (cell != null && !cell.isEmpty()) {
            String expected = "no such rate of a " + part.kind().word();
            table.fault(column, cell, expected, "leave the cell empty");
        }
    }
}
