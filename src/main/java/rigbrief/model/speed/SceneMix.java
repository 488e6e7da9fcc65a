package rigbrief.model.speed;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * Average rate and 1 % low of a workload whose scenes fill known shares of the play time.
 *
 * <p>Formula: in each scene the frame time is lognormal with the scene's value as its mean and
 * sigma as the deviation of its logarithm; the engine's cap lifts shorter frames to 1/cap. A
 * scene's share of <em>frames</em> is its share of time over its mean frame time, made to sum to 1.
 * Average = total frames / total time = 1 / sum(share of frames x mean frame time). Low = 1 / T
 * where 1 % of all frames take longer than T: the 99th percentile of frame time, counted in frames.
 *
 * <p>Source: the averaging is an identity; percentiles counted in frames follow the methodology
 * article of a frame-capture tool. Common practice: the lognormal spread.
 */
public final class SceneMix {
    /** Spreads of frame time within a scene. */
    public static final Range SIGMA = new Range("spread of frame times", 0, 0.5, "");

    /** Share of frames slower than the low. */
    public static final double SLOWEST_SHARE = 0.01;

    private static final double SLOWEST_Z = -NormalDistribution.quantile(SLOWEST_SHARE);
    private static final double MILLISECONDS = 1_000;

    /** A spread below this counts as none. */
    public static final double NO_SPREAD = 1e-6;

    private static final double CLOSE = 1e-11;
    private static final int MOST_STEPS = 80;

    private final double[] logMedianMs;
    private final double[] frameShares;
    private final double sigma;
    private final double meanMs;

    /**
     * The two rates of a mix.
     *
     * @param averagePerS total frames over total time, 1/s
     * @param lowPerS rate at the 99th percentile of frame time, counted in frames, 1/s
     */
    public record Rates(double averagePerS, double lowPerS) {}

    private SceneMix(double[] frameMs, double[] timeShares, double capMs, double sigma) {
        this.sigma = sigma;
        this.logMedianMs = new double[frameMs.length];
        this.frameShares = new double[frameMs.length];
        double frames = 0;
        double time = 0;
        for (int i = 0; i < frameMs.length; i++) {
            logMedianMs[i] = Math.log(frameMs[i]) - sigma * sigma / 2;
            double cappedMs = meanOverCap(frameMs[i], logMedianMs[i], capMs, sigma);
            frameShares[i] = timeShares[i] / cappedMs;
            frames += frameShares[i];
            time += timeShares[i];
        }
        for (int i = 0; i < frameShares.length; i++) {
            frameShares[i] /= frames;
        }
        this.meanMs = time / frames;
    }

    /**
     * Gives both rates.
     *
     * @param frameMs mean frame time of each scene before the cap, ms; at least one
     * @param timeShares share of play time of each scene, same order, any common scale
     * @param capPerS the engine's greatest rate, 1/s; infinite for none
     * @param sigma deviation of the logarithm of frame times within a scene, 0 or more
     * @return average and low
     * @throws IllegalArgumentException for lists of different length, no scene, a time or a sum of
     *     shares not above 0, a negative share or spread, a cap not above 0
     */
    public static Rates rates(double[] frameMs, double[] timeShares, double capPerS, double sigma) {
        check(frameMs, timeShares);
        Expect.notNegative(sigma, "sigma");
        double capMs = MILLISECONDS / aboveZero(capPerS);
        double spread = sigma < NO_SPREAD ? 0 : sigma;
        SceneMix mix = new SceneMix(frameMs, timeShares, capMs, spread);
        return new Rates(
                MILLISECONDS / mix.meanMs, MILLISECONDS / Math.max(capMs, mix.slowestMs()));
    }

    /**
     * Gives the average rate alone, for whoever asks a million times.
     *
     * @param frameMs mean frame time of each scene before the cap, ms; at least one
     * @param timeShares share of play time of each scene, same order, any common scale
     * @param capPerS the engine's greatest rate, 1/s; infinite for none
     * @param sigma deviation of the logarithm of frame times within a scene, 0 or more
     * @return the average of {@link #rates}, 1/s
     * @throws IllegalArgumentException as for {@link #rates}
     */
    public static double averagePerS(
            double[] frameMs, double[] timeShares, double capPerS, double sigma) {
        check(frameMs, timeShares);
        Expect.notNegative(sigma, "sigma");
        double capMs = MILLISECONDS / aboveZero(capPerS);
        return MILLISECONDS
                / new SceneMix(frameMs, timeShares, capMs, sigma < NO_SPREAD ? 0 : sigma).meanMs;
    }

    /**
     * Gives the shares of frames that shares of play time amount to.
     *
     * @param frameMs mean frame time of each scene, ms
     * @param timeShares share of play time of each scene, same order
     * @return shares of frames, same order, summing to 1
     * @throws IllegalArgumentException as for {@link #rates}
     */
    public static double[] frameShares(double[] frameMs, double[] timeShares) {
        check(frameMs, timeShares);
        return new SceneMix(frameMs, timeShares, 0, 0).frameShares;
    }

    /**
     * Gives the average rate of scenes whose shares are counted in frames.
     *
     * @param frameMs mean frame time of each scene, ms
     * @param frameShares share of all frames of each scene, same order
     * @return total frames over total time, 1/s
     * @throws IllegalArgumentException as for {@link #rates}
     */
    public static double averageOfFrameSharesPerS(double[] frameMs, double[] frameShares) {
        check(frameMs, frameShares);
        double frames = 0;
        double timeMs = 0;
        for (int i = 0; i < frameMs.length; i++) {
            frames += frameShares[i];
            timeMs += frameShares[i] * frameMs[i];
        }
        return frames * MILLISECONDS / timeMs;
    }

    private static void check(double[] frameMs, double[] shares) {
        if (frameMs.length != shares.length || frameMs.length == 0) {
            throw new IllegalArgumentException(
                    "scenes: found %d times and %d shares, expected equal counts; give one each"
                            .formatted(frameMs.length, shares.length));
        }
        double sum = 0;
        for (int i = 0; i < frameMs.length; i++) {
            Expect.positive(frameMs[i], "frameMs");
            sum += Expect.notNegative(shares[i], "share");
        }
        Expect.positive(sum, "sum of shares");
    }

    private static double aboveZero(double capPerS) {
        if (!(capPerS > 0)) {
            Expect.positive(capPerS, "capPerS");
        }
        return capPerS;
    }

    /** The mean of a lognormal frame time when frames shorter than the cap's are lifted to it. */
    private static double meanOverCap(
            double frameMs, double logMedianMs, double capMs, double sigma) {
        if (capMs == 0 || sigma == 0) {
            return Math.max(capMs, frameMs);
        }
        double z = (Math.log(capMs) - logMedianMs) / sigma;
        return capMs * NormalDistribution.atMost(z)
                + frameMs * NormalDistribution.atMost(sigma - z);
    }

    /** Without the cap, which lifts a percentile as it lifts a frame. */
    private double slowestMs() {
        return sigma == 0 ? slowestWithoutSpreadMs() : Math.exp(slowestLogMs());
    }

    /** The least of the scenes' times which at most one frame in a hundred exceeds. */
    private double slowestWithoutSpreadMs() {
        double least = Double.POSITIVE_INFINITY;
        for (double candidate : logMedianMs) {
            if (candidate < least && shareOfScenesAbove(candidate) <= SLOWEST_SHARE) {
                least = candidate;
            }
        }
        return Math.exp(least);
    }

    private double shareOfScenesAbove(double logMs) {
        double share = 0;
        for (int i = 0; i < logMedianMs.length; i++) {
            share += logMedianMs[i] > logMs ? frameShares[i] : 0;
        }
        return share;
    }

    private double shareAbove(double logMs) {
        double share = 0;
        for (int i = 0; i < logMedianMs.length; i++) {
            share += frameShares[i] * NormalDistribution.atMost((logMedianMs[i] - logMs) / sigma);
        }
        return share;
    }

    private double densityAt(double logMs) {
        double density = 0;
        for (int i = 0; i < logMedianMs.length; i++) {
            density +=
                    frameShares[i] * NormalDistribution.density((logMs - logMedianMs[i]) / sigma);
        }
        return density / sigma;
    }

    /** Newton's steps on the logarithm of the tail, which is concave, kept within a bracket. */
    private double slowestLogMs() {
        double low = edge(Double.POSITIVE_INFINITY, true);
        double high = edge(Double.NEGATIVE_INFINITY, false);
        double at = high;
        for (int step = 0; step < MOST_STEPS && high - low > CLOSE; step++) {
            double above = shareAbove(at);
            if (above > SLOWEST_SHARE) {
                low = at;
            } else {
                high = at;
            }
            double next = at + Math.log(above / SLOWEST_SHARE) * above / densityAt(at);
            if (Math.abs(next - at) < CLOSE) {
                return next;
            }
            at = next > low && next < high ? next : (low + high) / 2;
        }
        return at;
    }

    /** Every scene's own 99th percentile lies within the mixture's bracket or forms its end. */
    private double edge(double start, boolean lowest) {
        double deviations = SLOWEST_Z * sigma;
        double edge = start;
        for (int i = 0; i < logMedianMs.length; i++) {
            double own = logMedianMs[i] + deviations;
            edge = lowest ? Math.min(edge, own) : Math.max(edge, own);
        }
        return edge;
    }
}
