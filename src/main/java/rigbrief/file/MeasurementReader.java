package rigbrief.file;

import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Workload;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.CellRow;
import rigbrief.file.cell.Column;
import rigbrief.file.cell.ColumnLister;
import rigbrief.file.cell.CsvTable;
import rigbrief.measurement.FrameLog;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.Rig;

/**
 * Reads a file of measurements: CSV, one workload on one machine per row.
 *
 * <p>Columns: {@code machine}; its parts as {@code processor, graphics, memory, memory_kits,
 * memory_mts, drive}, or a {@code build} file; {@code workload, resolution, preset, rays,
 * upscaling}; {@code average_fps, low_fps, seconds}, or a {@code frame_log} that the rates are
 * taken from. Files named in a row are looked for beside the file itself.
 */
public final class MeasurementReader {
    private final Known known;
    private final FrameColumn column;
    private final boolean ofManyMachines;
    private final Path folder;
    private final Faults faults;
    private final Map<String, Optional<FrameLog>> logs = new HashMap<>();

    private MeasurementReader(
            Known known, FrameColumn column, boolean ofManyMachines, Path folder, Faults faults) {
        this.known = known;
        this.column = column;
        this.ofManyMachines = ofManyMachines;
        this.folder = folder;
        this.faults = faults;
    }

    /**
     * Reads measurements of many machines; every row names its machine and the parts.
     *
     * @param column where the logs that rows name hold their frame times
     * @throws BadInput with all faults of the file and of the files it names
     */
    public static List<Measurement> ofMachines(Path path, Catalogue catalogue, FrameColumn column)
            throws BadInput {
        Faults faults = new Faults();
        List<Measurement> all = ofMachines(path, Known.of(catalogue), column, faults);
        faults.throwIfAny();
        return all;
    }

    /**
     * Reads measurements of many machines from a stream; files that rows name are looked for in the
     * folder in which the program runs.
     *
     * @param file what the stream is called in faults
     * @param column where the logs that rows name hold their frame times
     * @throws BadInput with all faults of the text and of the files it names
     */
    public static List<Measurement> ofMachines(
            InputStream in, String file, Catalogue catalogue, FrameColumn column) throws BadInput {
        Faults faults = new Faults();
        List<Measurement> all = ofMachines(in, file, Known.of(catalogue), column, faults);
        faults.throwIfAny();
        return all;
    }

    /** Reads measurements of many machines; those of rows without faults. */
    public static List<Measurement> ofMachines(
            Path path, Known known, FrameColumn column, Faults faults) {
        return new MeasurementReader(known, column, true, beside(path), faults)
                .readAll(SourceText.read(path, faults));
    }

    /**
     * Reads measurements of many machines from a stream, those of rows without faults; files that
     * rows name are looked for in the folder in which the program runs.
     *
     * @param file what the stream is called in faults
     * @param column where the logs that rows name hold their frame times
     */
    public static List<Measurement> ofMachines(
            InputStream in, String file, Known known, FrameColumn column, Faults faults) {
        return new MeasurementReader(known, column, true, Path.of(""), faults)
                .readAll(SourceText.readStream(in, file, faults));
    }

    /**
     * Reads measurements of one build, whose rows name no parts.
     *
     * @param folder where files that rows name are looked for
     */
    static List<Measurement> ofBuild(
            SourceText source, Path folder, Known known, FrameColumn column, Faults faults) {
        return new MeasurementReader(known, column, false, folder, faults)
                .readAll(Optional.of(source));
    }

    /** The folder a file stands in. */
    static Path beside(Path path) {
        return Optional.ofNullable(path.getParent()).orElse(Path.of(""));
    }

    private List<Measurement> readAll(Optional<SourceText> source) {
        int before = faults.count();
        List<Measurement> all = new ArrayList<>();
        source.ifPresent(text -> rows(text, all));
        if (source.isPresent() && all.isEmpty() && faults.count() == before && known.whole()) {
            String advice = "write a row for each";
            faults.add(new Fault(source.get().file(), 2, 1, "row", "", "a measurement", advice));
        }
        return all;
    }

    private void rows(SourceText source, List<Measurement> all) {
        ColumnLister lister = new ColumnLister();
        MeasuredRow.read(lister, ofManyMachines);
        List<Column> columns = lister.columns();
        CsvTable table = CsvTable.open(source.file(), source.text(), columns, faults);
        CellRow.Memo memo = new CellRow.Memo();
        RigFinder rigs = new RigFinder(known, folder, faults);
        while (table.next()) {
            int before = faults.count();
            MeasuredRow row = MeasuredRow.read(CellRow.of(table, memo), ofManyMachines);
            MeasurementChecks checks = new MeasurementChecks(row, table);
            Optional<Rig> rig = ofManyMachines ? rigs.of(row, table) : Optional.empty();
            Optional<Workload> workload = checks.workload(known);
            workload.ifPresent(it -> checks.check(it, rig));
            Optional<FrameLog> log = log(row.frameLog(), table);
            if (faults.count() == before && known.whole()) {
                all.add(measurement(row, rig, log, source.file(), table.line()));
            }
        }
    }

    private static Measurement measurement(
            MeasuredRow row, Optional<Rig> rig, Optional<FrameLog> log, String file, int line) {
        return new Measurement(
                file,
                line,
                row.machine(),
                rig,
                row.workload(),
                new Settings(row.preset(), row.rays(), row.upscaling()),
                row.resolution(),
                measured(log.map(FrameLog::averageFps).orElse(row.averageFps())),
                measured(log.map(FrameLog::lowFps).orElse(row.lowFps())),
                measured(row.seconds()));
    }

    private static OptionalDouble measured(double amount) {
        return amount > 0 ? OptionalDouble.of(amount) : OptionalDouble.empty();
    }

    /** Each log is read once, though it may stand in many rows. */
    private Optional<FrameLog> log(String name, CsvTable table) {
        return name.isEmpty()
                ? Optional.empty()
                : logs.computeIfAbsent(
                        name,
                        any ->
                                named(folder, "frame_log", table)
                                        .flatMap(it -> FrameLogReader.read(it, column, faults)));
    }

    /** The file that a cell names; empty, with a fault, where no file can have that name. */
    static Optional<Path> named(Path folder, String column, CsvTable table) {
        String name = table.cell(column);
        try {
            return Optional.of(folder.resolve(name));
        } catch (InvalidPathException noName) {
            table.fault(column, name, "the name of a file", "correct it");
            return Optional.empty();
        }
    }
}
