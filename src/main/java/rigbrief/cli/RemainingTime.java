package rigbrief.cli;

import rigbrief.proposal.budget.Progress;

/** Shows on a terminal how far a long search is, and about how long it will still take. */
final class RemainingTime implements Progress {
    /** From fewer answers than these no time can be told. */
    private static final int LEAST_DONE = 3;

    private static final double NS_PER_S = 1e9;

    private final Console console;
    private final long begunNs = System.nanoTime();

    RemainingTime(Console console) {
        this.console = console;
    }

    @Override
    public void at(int done, int of) {
        int asked = Math.max(done, of);
        double seconds = (System.nanoTime() - begunNs) / NS_PER_S;
        long left = Math.round(seconds / done * (asked - done));
        String about = done < LEAST_DONE ? "" : ", about %d s left".formatted(Math.max(1, left));
        console.progress("solving: %d of %d%s".formatted(done, asked, about));
    }
}
