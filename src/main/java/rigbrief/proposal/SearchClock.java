package rigbrief.proposal;

import java.util.List;

/** Time, asked only when the limits name a ceiling on it. Shared by the threads of one search. */
final class SearchClock {
    private final SearchLimits limits;
    private final long startedNs = System.nanoTime();
    private volatile boolean over;

    SearchClock(SearchLimits limits) {
        this.limits = limits;
    }

    /** Whether the time is used up, or the search was called off. */
    boolean over() {
        if (!over
                && limits.time().isPresent()
                && System.nanoTime() - startedNs > limits.time().get().toNanos()) {
            over = true;
        }
        return over;
    }

    List<String> remarks() {
        return over
                ? List.of(
                        "The time of %d ms was used up; what is shown is the best found by then, and another run may differ."
                                .formatted(limits.time().get().toMillis()))
                : List.of();
    }
}
