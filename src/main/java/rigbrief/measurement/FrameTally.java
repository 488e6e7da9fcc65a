package rigbrief.measurement;

import rigbrief.model.Expect;

/**
 * Frame times counted one by one, in memory that does not grow with their number.
 *
 * <p>Formula: times fall into classes 0.01 % wide, each with its count and its own mean; the 99th
 * percentile by nearest rank is the mean of the class in which that rank falls, so it is exact
 * where the class holds equal times and within 0.01 % elsewhere. Average = frames x 1000 / total
 * ms, the total with its rounding error carried along.
 *
 * <p>Source: definitions as in {@link rigbrief.model.speed.FrameStatistics}.
 */
public final class FrameTally {
    /** Shortest frame time taken, ms: a million frames a second. */
    public static final double LEAST_MS = 0.001;

    /** Longest frame time taken, ms: a hundred seconds. */
    public static final double MOST_MS = 100_000;

    private static final double CLASSES_PER_E = 10_000;
    private static final double MILLISECONDS = 1_000;
    private static final long PERCENT = 100;
    private static final double LOG_LEAST = Math.log(LEAST_MS);
    private static final int CLASSES = classOf(MOST_MS) + 1;

    private final long[] counts = new long[CLASSES];
    private final double[] sumsMs = new double[CLASSES];
    private long frames;
    private double totalMs;
    private double lostMs;
    private double longestMs;

    private static int classOf(double ms) {
        return (int) ((Math.log(ms) - LOG_LEAST) * CLASSES_PER_E);
    }

    /**
     * Counts a frame.
     *
     * @param ms its time, {@value #LEAST_MS} to {@value #MOST_MS} ms
     * @throws IllegalArgumentException for a time outside that
     */
    public void add(double ms) {
        if (!(ms >= LEAST_MS && ms <= MOST_MS)) {
            throw new IllegalArgumentException(
                    "ms: found %s, expected %s to %s; check its unit"
                            .formatted(ms, LEAST_MS, MOST_MS));
        }
        int index = classOf(ms);
        counts[index]++;
        sumsMs[index] += ms;
        frames++;
        longestMs = Math.max(longestMs, ms);
        double next = totalMs + ms;
        lostMs += totalMs >= ms ? (totalMs - next) + ms : (ms - next) + totalMs;
        totalMs = next;
    }

    /**
     * Gives the number of frames counted.
     *
     * @return frames
     */
    public long frames() {
        return frames;
    }

    /**
     * Gives what they amount to.
     *
     * @return the summary
     * @throws IllegalArgumentException when no frame was counted
     */
    public FrameLog log() {
        double ms = Expect.positive(totalMs + lostMs, "total time");
        return new FrameLog(
                frames,
                ms / MILLISECONDS,
                frames * MILLISECONDS / ms,
                MILLISECONDS / slowestMs(),
                longestMs);
    }

    /** The time at the nearest rank: the first at which at least 99 of 100 frames are reached. */
    private double slowestMs() {
        // In whole numbers, since 0.99 x frames rounds either way.
        long rank = frames - frames / PERCENT;
        long reached = 0;
        int index = -1;
        while (reached < rank) {
            index++;
            reached += counts[index];
        }
        return sumsMs[index] / counts[index];
    }
}
