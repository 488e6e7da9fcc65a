package rigbrief.file;

import java.util.List;
import java.util.Optional;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.file.cell.CsvTable;
import rigbrief.file.cell.Expectation;
import rigbrief.measurement.Rig;

/**
 * Whether a row of measurements says what its workload needs said.
 *
 * @param row the row
 * @param table where it stands
 */
record MeasurementChecks(MeasuredRow row, CsvTable table) {

    /** The workload; empty, with a fault, where it is unknown or has no speed. */
    Optional<Workload> workload(Known known) {
        Catalogue catalogue = known.catalogue();
        String id = row.workload();
        Optional<Workload> workload = catalogue.workload(id);
        if (workload.isEmpty() && !id.isEmpty() && known.whole()) {
            List<String> ids = catalogue.workloads().stream().map(Workload::id).toList();
            Expectation name = Expectation.name(id, "a workload of the catalogue", ids);
            table.fault("workload", id, name.text(), name.advice());
        }
        return workload;
    }

    /** Looks through the amounts and settings. */
    void check(Workload workload, Optional<Rig> rig) {
        if (workload instanceof FrameRate title) {
            title(title);
        } else if (workload instanceof TaskTime task) {
            task(task, rig);
        } else if (workload instanceof Capacity) {
            table.fault(
                    "workload",
                    row.workload(),
                    "a workload with a speed",
                    "take the row out: this one only takes up room");
        }
    }

    private void title(FrameRate title) {
        if (!row.rated()) {
            missing("average_fps", "the measured average in frames per second");
        }
        if (row.seconds() > 0) {
            foreign("seconds", "no time of a title that draws frames");
        }
        if (row.averageFps() > 0 && row.lowFps() > row.averageFps()) {
            table.fault(
                    "low_fps",
                    table.cell("low_fps"),
                    "no more than the average",
                    "look whether the two are exchanged");
        }
        if (!row.frameLog().isEmpty() && row.averageFps() + row.lowFps() > 0) {
            foreign("frame_log", "either a log or rates");
        }
        step("preset", row.preset(), List.copyOf(title.presets().keySet()));
        step("rays", row.rays(), List.copyOf(title.rays().keySet()));
        step("upscaling", row.upscaling(), List.copyOf(title.upscaling().keySet()));
    }

    private void task(TaskTime task, Optional<Rig> rig) {
        if (row.seconds() <= 0) {
            missing("seconds", "the measured time of the task in seconds");
        }
        for (String column : List.of("average_fps", "low_fps", "frame_log")) {
            if (row.rated() && !cell(column).isEmpty()) {
                foreign(column, "no frame rate of a task");
            }
        }
        if (task.readGb() + task.writeGb() > 0 && rig.isPresent() && rig.get().drive().isEmpty()) {
            missing("drive", "the id of the drive it ran from, since this task moves data");
        }
    }

    private String cell(String column) {
        String cell = table.cell(column);
        return cell == null ? "" : cell;
    }

    /** In a column that the file may not even have; then the workload's cell bears the remark. */
    private void missing(String column, String expected) {
        boolean there = table.knows(column);
        String text = there ? expected : expected + " in a column " + column;
        table.fault(there ? column : "workload", "", text, "write it in, or take the row out");
    }

    private void foreign(String column, String expected) {
        table.fault(column, cell(column), expected, "leave the cell empty");
    }

    private void step(String column, Optional<String> found, List<String> known) {
        if (found.isPresent() && !known.contains(found.get())) {
            String what =
                    known.isEmpty() ? "no step: this title has none" : "a step that this title has";
            Expectation name = Expectation.name(found.get(), what, known);
            String advice = known.isEmpty() ? "leave the cell empty" : name.advice();
            table.fault(column, found.get(), name.text(), advice);
        }
    }
}
