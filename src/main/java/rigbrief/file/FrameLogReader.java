package rigbrief.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.measurement.FrameLog;
import rigbrief.measurement.FrameTally;

/**
 * Reads a log with one frame time per row, as a stream: memory does not grow with its length.
 *
 * <p>The first row that is neither empty nor a remark ({@code #} or {@code //}) is the header;
 * columns are separated by tabs, semicolons or commas, whichever of them the header has. Where
 * columns are not separated by commas, a decimal comma is read as a point.
 */
public final class FrameLogReader {
    private static final double MILLISECONDS = 1_000;

    /** A mean frame time below this is in seconds: no screen shows five thousand frames. */
    private static final double LEAST_MEAN_MS = 0.2;

    /** A mean frame time above this is in milliseconds: nobody measures one frame in 5 s. */
    private static final double MOST_MEAN_MS = 5_000;

    private static final String MARK = "\uFEFF";

    private final String file;
    private final FrameColumn column;
    private final Faults faults;
    private final FrameTally tally = new FrameTally();
    private LogHeader header;

    private FrameLogReader(String file, FrameColumn column, Faults faults) {
        this.file = file;
        this.column = column;
        this.faults = faults;
    }

    /**
     * Reads a file.
     *
     * @throws BadInput with all faults of the file
     */
    public static FrameLog read(Path path, FrameColumn column) throws BadInput {
        Faults faults = new Faults();
        Optional<FrameLog> log = read(path, column, faults);
        faults.throwIfAny();
        return log.orElseThrow(() -> new IllegalStateException("no log and no fault"));
    }

    /**
     * Reads a stream to its end.
     *
     * @param file what the stream is called in faults
     * @throws BadInput with all faults of the text
     */
    public static FrameLog read(InputStream in, String file, FrameColumn column) throws BadInput {
        Faults faults = new Faults();
        Optional<FrameLog> log = new FrameLogReader(file, column, faults).readAll(in);
        faults.throwIfAny();
        return log.orElseThrow(() -> new IllegalStateException("no log and no fault"));
    }

    /** Reads a file; empty where it has faults. */
    static Optional<FrameLog> read(Path path, FrameColumn column, Faults faults) {
        FrameLogReader reader = new FrameLogReader(path.toString(), column, faults);
        if (SourceText.refusesSpecial(path, faults)) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(path)) {
            return reader.readAll(in);
        } catch (NoSuchFileException missing) {
            reader.whole("", "a file of this name", "check the name and the folder");
        } catch (IOException unreadable) {
            reader.whole(
                    "a file that can't be opened",
                    "a file that may be read",
                    "check its permissions");
        }
        return Optional.empty();
    }

    private Optional<FrameLog> readAll(InputStream in) {
        int before = faults.count();
        try {
            rows(new BoundedLines(in));
        } catch (IOException broken) {
            whole("a stream that breaks off", "a stream with an end", "try again");
        }
        if (faults.count() == before && tally.frames() == 0) {
            whole("", "a header and one frame time per row", "write them in");
        }
        return faults.count() == before ? checked(tally.log()) : Optional.empty();
    }

    private void rows(BoundedLines lines) throws IOException {
        int number = 0;
        for (String line = lines.next(); line != null; line = lines.next()) {
            number++;
            if (line.length() > BoundedLines.LONGEST) {
                faults.add(tooLong(line, number));
                return;
            }
            line = number == 1 && line.startsWith(MARK) ? line.substring(1) : line;
            if (line.isBlank() || line.startsWith("#") || line.startsWith("//")) {
                continue;
            }
            if (header == null) {
                header = LogHeader.of(line, column.name());
                if (!header.found()) {
                    faults.add(header.fault(file, number, column.name()));
                    return;
                }
                if (header.named()) {
                    continue;
                }
            }
            row(line, number);
        }
    }

    private Fault tooLong(String line, int number) {
        return new Fault(
                file,
                number,
                1,
                "row",
                line,
                "a row of at most %d characters".formatted(BoundedLines.LONGEST),
                "name a log with one frame time per row");
    }

    private void row(String line, int number) {
        String cell = header.cell(line);
        double ms = header.number(cell) * (column.inSeconds() ? MILLISECONDS : 1);
        if (ms >= FrameTally.LEAST_MS && ms <= FrameTally.MOST_MS) {
            tally.add(ms);
            return;
        }
        String unit = column.inSeconds() ? "s" : "ms";
        faults.add(
                new Fault(
                        file,
                        number,
                        Math.max(0, line.indexOf(cell)) + 1,
                        header.name(),
                        cell,
                        "a frame time above 0 in " + unit,
                        "correct it, or take the row out"));
    }

    private Optional<FrameLog> checked(FrameLog log) {
        double meanMs = MILLISECONDS / log.averageFps();
        if (meanMs < LEAST_MEAN_MS && !column.inSeconds()) {
            whole(meanOf(meanMs), "times in milliseconds", "say --frame-unit s if these are s");
            return Optional.empty();
        }
        if (meanMs > MOST_MEAN_MS && column.inSeconds()) {
            whole(meanOf(meanMs), "times in seconds", "say --frame-unit ms if these are ms");
            return Optional.empty();
        }
        return Optional.of(log);
    }

    private static String meanOf(double meanMs) {
        return "frame times of %.4g ms in the mean".formatted(meanMs);
    }

    private void whole(String found, String expected, String advice) {
        faults.add(new Fault(file, 1, 1, "file", found, expected, advice));
    }
}
