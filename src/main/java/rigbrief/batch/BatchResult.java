package rigbrief.batch;

import java.util.List;
import java.util.Optional;

/**
 * How one brief of a batch ended.
 *
 * @param brief the brief
 * @param ending how it ended
 * @param before whether an earlier run answered it
 * @param answered what the answer comes to; empty where there is none
 * @param diagnostics why there is no answer, one line each, the first of all of them
 * @param faults how many diagnostics there are in all
 */
public record BatchResult(
        BatchBrief brief,
        Ending ending,
        boolean before,
        Optional<Answered> answered,
        List<String> diagnostics,
        int faults) {
    /** More of one brief's faults than this hide those of the others. */
    private static final int MOST_SHOWN = 20;

    /** Copies the diagnostics. */
    public BatchResult {
        diagnostics = List.copyOf(diagnostics);
    }

    /** A brief with a result. */
    static BatchResult of(BatchBrief brief, Answered answered, boolean before) {
        return new BatchResult(
                brief, answered.ending(), before, Optional.of(answered), List.of(), 0);
    }

    /** A brief without one. */
    static BatchResult failed(
            BatchBrief brief, Ending ending, List<String> diagnostics, int faults) {
        List<String> shown = diagnostics.subList(0, Math.min(MOST_SHOWN, diagnostics.size()));
        return new BatchResult(brief, ending, false, Optional.empty(), shown, faults);
    }
}
