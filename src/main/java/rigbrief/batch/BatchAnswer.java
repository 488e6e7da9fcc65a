package rigbrief.batch;

import java.nio.file.Path;
import java.util.List;

/**
 * How a batch ended.
 *
 * @param out folder of the results
 * @param results one per brief, in the order in which the briefs were named
 */
public record BatchAnswer(Path out, List<BatchResult> results) {
    /** Copies the results. */
    public BatchAnswer {
        results = List.copyOf(results);
    }

    /** How many ended so. */
    public int count(Ending ending) {
        return (int) results.stream().filter(result -> result.ending() == ending).count();
    }

    /** How many an earlier run had answered. */
    public int before() {
        return (int) results.stream().filter(BatchResult::before).count();
    }

    /** The results that are none. */
    public List<BatchResult> failures() {
        return results.stream().filter(result -> !result.ending().answered()).toList();
    }
}
