package rigbrief.cli;

import java.util.Optional;
import picocli.CommandLine.Option;
import rigbrief.file.FrameColumn;

/** The options that say where logs hold their frame times. */
final class FrameLogOption {
    @Option(
            names = "--frame-column",
            paramLabel = "NAME",
            description = "Column of frame-time logs with the frame times. Default: frame_ms.")
    private String column;

    @Option(
            names = "--frame-unit",
            paramLabel = "UNIT",
            defaultValue = "ms",
            description = "Unit of the frame times: ${COMPLETION-CANDIDATES}. Default: ms.")
    private Unit unit;

    /** Units of frame times, as they are spelt on the command line. */
    enum Unit {
        ms,
        s
    }

    /** The column. */
    FrameColumn column() {
        return new FrameColumn(Optional.ofNullable(column), unit == Unit.s);
    }
}
