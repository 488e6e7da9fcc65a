package rigbrief.file;

import java.util.Optional;
import rigbrief.part.Cells;
import rigbrief.part.Resolution;

/**
 * The cells of one row of measurements; an amount of 0 was not measured.
 *
 * @param machine what the machine is called
 * @param build name of its build file; empty where the parts are named
 * @param processor id of the processor
 * @param graphics id of the card; empty for none
 * @param memory id of the memory kit
 * @param memoryKits how many of it
 * @param memoryMts rate the memory ran at, in MT/s; 0 for what kit and processor allow
 * @param drive id of the drive; empty where none is named
 * @param workload id of the workload
 * @param resolution picture size
 * @param preset preset
 * @param rays ray-tracing step
 * @param upscaling upscaling step
 * @param averageFps average, 1/s
 * @param lowFps 1 % low, 1/s
 * @param seconds time of a task, s
 * @param frameLog name of a log of frame times; empty for none
 */
record MeasuredRow(
        String machine,
        String build,
        String processor,
        String graphics,
        String memory,
        int memoryKits,
        int memoryMts,
        String drive,
        String workload,
        Optional<Resolution> resolution,
        Optional<String> preset,
        Optional<String> rays,
        Optional<String> upscaling,
        double averageFps,
        double lowFps,
        double seconds,
        String frameLog) {
    private static final double MOST_FPS = 5_000;
    private static final double MOST_S = 3_600_000;

    /** Reads a row; every row names its machine where there are many. */
    static MeasuredRow read(Cells cells, boolean ofManyMachines) {
        return new MeasuredRow(
                ofManyMachines ? cells.text("machine") : cells.textOr("machine", ""),
                cells.textOr("build", ""),
                cells.textOr("processor", ""),
                cells.textOr("graphics", ""),
                cells.textOr("memory", ""),
                cells.wholeOr("memory_kits", 1, 8, 1),
                cells.wholeOr("memory_mts", 800, 20_000, 0),
                cells.textOr("drive", ""),
                cells.text("workload"),
                resolution(cells),
                step(cells, "preset"),
                step(cells, "rays"),
                step(cells, "upscaling"),
                cells.numberOr("average_fps", 0, MOST_FPS, 0),
                cells.numberOr("low_fps", 0, MOST_FPS, 0),
                cells.numberOr("seconds", 0, MOST_S, 0),
                cells.textOr("frame_log", ""));
    }

    private static Optional<Resolution> resolution(Cells cells) {
        return cells.textOr("resolution", "").isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(cells.parsed("resolution", Resolution::read));
    }

    private static Optional<String> step(Cells cells, String column) {
        return Optional.of(cells.textOr(column, "")).filter(name -> !name.isEmpty());
    }

    /** Whether any rate was measured. */
    boolean rated() {
        return averageFps > 0 || lowFps > 0 || !frameLog.isEmpty();
    }
}
