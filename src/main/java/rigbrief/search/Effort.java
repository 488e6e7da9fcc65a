package rigbrief.search;

import java.util.function.BooleanSupplier;

/**
 * How much of a search's allowance is used up.
 *
 * <p>A step counts 1. Among few candidates that is fair; in a large catalogue a look at a pair and
 * a step that pairs cases with coolers go through thousands of them, so there both count for what
 * they take, or a search of so many steps would not end. Depends on what was done alone, never on a
 * clock. Mutable.
 */
final class Effort {
    /**
     * What each look at a pair counts for each thousand candidates, by how close it is; what the
     * last one tries counts by itself.
     */
    private static final double[] LOOK = {0, 0, 0.1, 0.8, 1};

    private static final int CANDIDATES = 1_000;

    /** So many thousand candidates make a step take as long again. */
    private static final int THOUSANDS_A_STEP = 8;

    /** So many groups of cards bounded count as a step. */
    private static final int GROUPS_A_STEP = 4;

    /** The same where other looks don't count either. */
    private static final int GROUPS_A_STEP_AMONG_FEW = 1_024;

    /** Levels of coolers in cases asked for, for one step's worth. */
    private static final int TRIES = 12;

    /** After so much it is asked whether to stop. */
    private static final int ASKED_EVERY = 256;

    /** What a last look is worth for that among few candidates, where it doesn't count. */
    private static final int LAST_LOOK = 16;

    private final double thousands;
    private final boolean counted;
    private final BooleanSupplier stop;
    private long used;
    private long limit;
    private long sinceAsked;
    private long worked;
    private long tries;
    private long triesLeft;
    private double looked;
    private long groups;
    private boolean stopped;

    /**
     * Nothing used.
     *
     * @param candidates number of candidates in all slots
     * @param limit how much there is to use
     * @param stop asked now and then; true ends the search
     */
    Effort(int candidates, long limit, BooleanSupplier stop) {
        this((double) candidates / CANDIDATES, candidates >= CANDIDATES, limit, stop);
    }

    private Effort(double thousands, boolean counted, long limit, BooleanSupplier stop) {
        this.thousands = thousands;
        this.counted = counted;
        this.limit = limit;
        this.stop = stop;
    }

    /** The same allowance, but looks count as among a thousand candidates. */
    Effort countingLooks() {
        return new Effort(1, true, limit, stop);
    }

    /** Whether there are so many candidates that looks count. */
    boolean large() {
        return counted;
    }

    long used() {
        return used;
    }

    /** How much was done, looks counted among few candidates too. */
    long worked() {
        return worked;
    }

    long limit() {
        return limit;
    }

    /** From now on it ends at so much. */
    void limit(long newLimit) {
        limit = newLimit;
        stopped = false;
    }

    /** Counts a step: what it goes through grows with the catalogue, though more slowly. */
    void step() {
        add(counted ? 1 + (long) (thousands / THOUSANDS_A_STEP) : 1);
    }

    /** Counts a group of cards that is bounded. */
    void group() {
        if (++groups % (counted ? GROUPS_A_STEP : GROUPS_A_STEP_AMONG_FEW) == 0) {
            step();
        }
    }

    /** Counts a look at a pair. */
    void look(int closeness) {
        if (counted) {
            looked += LOOK[closeness] * thousands;
            add((long) looked);
            looked -= (long) looked;
        } else if (closeness == LOOK.length - 1) {
            work(LAST_LOOK);
        }
    }

    /**
     * Counts levels of coolers in cases.
     *
     * @param all how many since the search began
     */
    void tried(long all) {
        triesLeft += all - tries;
        tries = all;
        if (counted) {
            add(triesLeft / TRIES);
        } else {
            work(triesLeft / TRIES);
        }
        triesLeft %= TRIES;
    }

    private void add(long more) {
        used += more;
        work(more);
    }

    private void work(long more) {
        sinceAsked += more;
        worked += more;
    }

    /** Whether it is used up, or somebody wants the search to stop. */
    boolean over() {
        if (sinceAsked >= ASKED_EVERY) {
            sinceAsked = 0;
            stopped |= stop.getAsBoolean();
        }
        return stopped || used >= limit;
    }

    /** Whether somebody wanted the search to stop. */
    boolean stopped() {
        return stopped;
    }
}
