package rigbrief.file;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.CellRow;
import rigbrief.file.cell.Column;
import rigbrief.file.cell.ColumnLister;
import rigbrief.file.cell.CsvTable;
import rigbrief.file.cell.Expectation;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.accept.LineUnit;
import rigbrief.measurement.accept.Reading;
import rigbrief.measurement.accept.Sheet;
import rigbrief.measurement.accept.SheetLine;
import rigbrief.part.Cells;

/**
 * Reads what was measured in an acceptance test: a filled-in sheet, or measurements of one build.
 *
 * <p>A sheet has the columns {@code line} and {@code measured}; its other columns are for people
 * and are not read. Where {@code measured} is empty nothing was measured.
 */
public final class AcceptanceReader {
    private static final String LINE = "line";
    private static final String MEASURED = "measured";
    private static final double MOST = 1e7;

    private final Optional<Sheet> sheet;
    private final Known known;
    private final FrameColumn column;
    private final Faults faults;

    /**
     * A reader.
     *
     * @param sheet the sheet whose lines may be filled in; empty where the build has faults: then a
     *     filled-in sheet is only looked at for its form
     * @param column where logs that measurements name hold their frame times
     * @param faults where what is wrong goes
     */
    public AcceptanceReader(Optional<Sheet> sheet, Known known, FrameColumn column, Faults faults) {
        this.sheet = sheet;
        this.known = known;
        this.column = column;
        this.faults = faults;
    }

    /**
     * What one file holds.
     *
     * @param readings figures by line of the sheet
     * @param measurements speeds at settings of their own
     */
    public record Measured(List<Reading> readings, List<Measurement> measurements) {
        public Measured {
            readings = List.copyOf(readings);
            measurements = List.copyOf(measurements);
        }
    }

    /** Reads a file; what has no faults. */
    public Measured read(Path path) {
        return read(SourceText.read(path, faults), MeasurementReader.beside(path));
    }

    /**
     * Reads a stream to its end; what has no faults.
     *
     * @param file what the stream is called in faults
     */
    public Measured read(InputStream in, String file) {
        return read(SourceText.readStream(in, file, faults), Path.of(""));
    }

    private Measured read(Optional<SourceText> source, Path folder) {
        if (source.isEmpty()) {
            return new Measured(List.of(), List.of());
        }
        return isSheet(source.get())
                ? sheet(source.get())
                : new Measured(
                        List.of(),
                        MeasurementReader.ofBuild(source.get(), folder, known, column, faults));
    }

    /** By its header, so that neither has to be named on the command line. */
    private static boolean isSheet(SourceText source) {
        String header =
                source.text().lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        return Arrays.stream(header.replace("\"", "").split(","))
                .anyMatch(cell -> cell.strip().equals(MEASURED));
    }

    private Measured sheet(SourceText source) {
        ColumnLister lister = new ColumnLister();
        lister.text(LINE);
        lister.textOr(MEASURED, "");
        List<Column> columns = lister.columns();
        CsvTable table = CsvTable.open(source.file(), source.text(), columns, faults);
        Map<String, SheetLine> lines = sheet.map(Sheet::byId).orElse(Map.of());
        Map<String, Reading> readings = new LinkedHashMap<>();
        CellRow.Memo memo = new CellRow.Memo();
        while (table.next()) {
            reading(table, CellRow.of(table, memo), lines)
                    .ifPresent(
                            reading -> {
                                if (readings.put(reading.line(), reading) != null) {
                                    table.fault(
                                            LINE,
                                            reading.line(),
                                            "each line once",
                                            "take one of the two rows out");
                                }
                            });
        }
        return new Measured(new ArrayList<>(readings.values()), List.of());
    }

    private Optional<Reading> reading(CsvTable table, Cells cells, Map<String, SheetLine> lines) {
        String id = cells.text(LINE);
        String text = cells.textOr(MEASURED, "");
        SheetLine line = lines.get(id);
        if (sheet.isEmpty()) {
            return Optional.empty();
        }
        if (line == null) {
            unknown(table, id, lines);
            return Optional.empty();
        }
        if (text.isEmpty()) {
            return Optional.empty();
        }
        return line.unit() == LineUnit.CHECK
                ? check(table, id, text)
                : figure(table, line, cells.numberOr(MEASURED, 0, MOST, -1));
    }

    private static void unknown(CsvTable table, String id, Map<String, SheetLine> lines) {
        if (!id.isEmpty()) {
            Expectation name =
                    Expectation.name(
                            id, "a line of this build's sheet", List.copyOf(lines.keySet()));
            table.fault(LINE, id, name.text(), name.advice());
        }
    }

    private static Optional<Reading> check(CsvTable table, String id, String text) {
        switch (text.toLowerCase(Locale.ROOT)) {
            case "pass", "yes", "ok":
                return Optional.of(new Reading(id, 1));
            case "fail", "no":
                return Optional.of(new Reading(id, 0));
            default:
                table.fault(
                        MEASURED, text, "pass or fail", "write one of the two, or leave it empty");
                return Optional.empty();
        }
    }

    /**
     * Nought is what a speed is not: a machine that draws nothing is measured as a failed check.
     */
    private static Optional<Reading> figure(CsvTable table, SheetLine line, double figure) {
        boolean above = line.part() == SheetLine.Station.SPEED;
        if (above && figure == 0) {
            table.fault(
                    MEASURED,
                    "0",
                    "a figure above 0 in " + line.unit().symbol(),
                    "correct it, or leave the cell empty");
            return Optional.empty();
        }
        return figure < 0 ? Optional.empty() : Optional.of(new Reading(line.id(), figure));
    }
}
