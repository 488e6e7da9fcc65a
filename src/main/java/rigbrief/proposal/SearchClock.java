package rigbrief.proposal;

import java.util.List;
import java.util.function.BooleanSupplier;
import rigbrief.wording.Phrase;

/** Time, asked only when the limits name a ceiling on it. Shared by the threads of one search. */
final class SearchClock {
    private final SearchLimits limits;
    private final long startedNs = System.nanoTime();
    private final BooleanSupplier calledOff;
    private volatile boolean over;
    private volatile boolean stopped;

    SearchClock(SearchLimits limits) {
        this(limits, () -> false);
    }

    /**
     * A clock.
     *
     * @param calledOff asked now and then; true ends the search like time that is used up
     */
    SearchClock(SearchLimits limits, BooleanSupplier calledOff) {
        this.limits = limits;
        this.calledOff = calledOff;
    }

    /** Whether the time is used up, or the search was called off. */
    boolean over() {
        if (!over
                && limits.time().isPresent()
                && System.nanoTime() - startedNs > limits.time().get().toNanos()) {
            over = true;
        }
        stopped |= calledOff.getAsBoolean();
        return over || stopped;
    }

    List<Phrase> remarks() {
        if (stopped) {
            return List.of(Phrase.of("remark.called-off"));
        }
        return over ? List.of(Phrase.of("remark.time", limits.time().get().toMillis())) : List.of();
    }
}
