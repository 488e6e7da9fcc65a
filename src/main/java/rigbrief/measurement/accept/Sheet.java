package rigbrief.measurement.accept;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The acceptance sheet of a build: what to measure, how, and what is expected.
 *
 * @param lines its lines, in the order in which they are done
 * @param runs how each workload is run
 */
public record Sheet(List<SheetLine> lines, List<Run> runs) {
    public Sheet {
        lines = List.copyOf(lines);
        runs = List.copyOf(runs);
    }

    /**
     * How a workload is run.
     *
     * @param title its title
     * @param settings its settings, in words; empty where it has none
     * @param job what one job of a task is; empty for a title that draws frames
     * @param walk how long to stay where; empty for a task
     */
    public record Run(String title, String settings, String job, Optional<Walk> walk) {}

    /** The lines by their ids, in order. */
    public Map<String, SheetLine> byId() {
        Map<String, SheetLine> byId = new LinkedHashMap<>();
        lines.forEach(line -> byId.put(line.id(), line));
        return byId;
    }
}
