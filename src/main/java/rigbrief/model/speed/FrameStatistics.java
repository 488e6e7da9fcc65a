package rigbrief.model.speed;

import java.util.Arrays;
import rigbrief.model.Expect;

/**
 * The statistics of a run's measured frame times, each with its definition in its name.
 *
 * <p>Formula: average rate = frames x 1000 / total ms, the harmonic mean of the instantaneous
 * rates; "x % low" = over the slowest ceil(x %) of frames; percentiles count frames, not time.
 *
 * <p>Source: methodology article of a frame-capture tool (percentiles, nearest rank); an article on
 * 1 % lows (mean of the slowest). Public tools disagree by definition alone, from 20 to 33 frames/s
 * on one and the same run: print the definition with the number.
 */
public final class FrameStatistics {
    private static final double MILLISECONDS = 1_000;
    private static final double PERCENT = 100;

    /** A ten-billionth of a rank is rounding. */
    private static final double ROUNDING = 1e-10;

    private final double[] sortedMs;
    private final double totalMs;

    private FrameStatistics(double[] sortedMs) {
        this.sortedMs = sortedMs;
        this.totalMs = SampleMoments.sum(sortedMs);
    }

    /** How a percentile is read off the sorted frames. */
    public enum Percentile {
        /** The first frame at which at least that share of frames is reached; no interpolation. */
        NEAREST_RANK,
        /** Straight line, rank (n - 1) p + 1: the usual one of statistics programs (type 7). */
        LINEAR,
        /** Straight line, rank n p + 1/2 (type 5). */
        HAZEN,
        /** Straight line, rank (n + 1) p (type 6). */
        WEIBULL
    }

    /**
     * Takes a run's frame times.
     *
     * @param frameMs frame times in any order, ms, each above 0; at least one
     * @return their statistics
     * @throws IllegalArgumentException for an empty run or a time not above 0
     */
    public static FrameStatistics of(double... frameMs) {
        Expect.atLeastOne(frameMs.length, "number of frames");
        double[] sorted = frameMs.clone();
        for (double ms : sorted) {
            Expect.positive(ms, "frameMs");
        }
        Arrays.sort(sorted);
        return new FrameStatistics(sorted);
    }

    /**
     * Gives the run's duration.
     *
     * @return ms
     */
    public double totalMs() {
        return totalMs;
    }

    /**
     * Gives the average rate: frames over time.
     *
     * @return 1/s
     */
    public double averagePerS() {
        return sortedMs.length * MILLISECONDS / totalMs;
    }

    /**
     * Gives the arithmetic mean of the instantaneous rates, which is too high. Never print it as
     * the average; it is here to recognise figures that were made so.
     *
     * @return 1/s
     */
    public double meanOfRatesPerS() {
        return meanRateOfSlowestPerS(sortedMs.length);
    }

    /**
     * Gives the low as the rate of the slowest frames' mean time.
     *
     * @param percent how many of the frames, above 0 to 100
     * @return 1/s, over ceil(percent) of the frames
     * @throws IllegalArgumentException for a percentage outside that
     */
    public double lowByMeanTimePerS(double percent) {
        int slowest = countOf(percent);
        double sumMs = 0;
        for (int i = sortedMs.length - slowest; i < sortedMs.length; i++) {
            sumMs += sortedMs[i];
        }
        return slowest * MILLISECONDS / sumMs;
    }

    /**
     * Gives the low as the mean rate of the slowest frames.
     *
     * @param percent how many of the frames, above 0 to 100
     * @return 1/s, over ceil(percent) of the frames
     * @throws IllegalArgumentException for a percentage outside that
     */
    public double lowByMeanRatePerS(double percent) {
        return meanRateOfSlowestPerS(countOf(percent));
    }

    private double meanRateOfSlowestPerS(int slowest) {
        double sumPerS = 0;
        for (int i = sortedMs.length - slowest; i < sortedMs.length; i++) {
            sumPerS += MILLISECONDS / sortedMs[i];
        }
        return sumPerS / slowest;
    }

    /**
     * Gives the low by time: the slowest frames that together fill a share of the run.
     *
     * @param percent share of the run's duration, above 0 to 100
     * @return rate of the fastest of those frames, 1/s
     * @throws IllegalArgumentException for a percentage outside that
     */
    public double lowByTimePerS(double percent) {
        double leftMs = totalMs * share(percent);
        int i = sortedMs.length - 1;
        while (i > 0 && leftMs > sortedMs[i] * (1 + ROUNDING)) {
            leftMs -= sortedMs[i];
            i--;
        }
        return MILLISECONDS / sortedMs[i];
    }

    /**
     * Gives a percentile of the frame times, counted in frames.
     *
     * @param percent for example 99, above 0 to 100
     * @param definition how to read it off
     * @return ms
     * @throws IllegalArgumentException for a percentage outside that
     */
    public double percentileMs(double percent, Percentile definition) {
        double share = share(percent);
        int n = sortedMs.length;
        return switch (definition) {
            case NEAREST_RANK -> sortedMs[countOf(percent) - 1];
            case LINEAR -> atRank((n - 1) * share + 1);
            case HAZEN -> atRank(n * share + 0.5);
            case WEIBULL -> atRank((n + 1) * share);
        };
    }

    private double atRank(double rank) {
        double within = Math.max(1, Math.min(sortedMs.length, rank));
        int below = (int) Math.floor(within);
        int above = Math.min(sortedMs.length, below + 1);
        double low = sortedMs[below - 1];
        return low + (within - below) * (sortedMs[above - 1] - low);
    }

    private int countOf(double percent) {
        return Math.max(1, (int) Math.ceil(sortedMs.length * share(percent) - ROUNDING));
    }

    private static double share(double percent) {
        return Expect.positive(Expect.share(percent / PERCENT, "percent / 100"), "percent");
    }
}
