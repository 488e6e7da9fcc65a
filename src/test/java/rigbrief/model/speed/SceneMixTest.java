package rigbrief.model.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SceneMixTest {
    private static final double UNCAPPED = Double.POSITIVE_INFINITY;
    private static final double[] SIXTY_AND_THIRTY_MS = {1_000.0 / 60, 1_000.0 / 30};
    private static final double[] HALVES = {1, 1};

    /** By hand: two frames in 1/60 + 1/30 s are 40 a second; two halves of a second are 45. */
    @Test
    @DisplayName("FRAME-09: equal frames at 60 and 30 frames/s average 40, equal time 45")
    void frames_and_time_are_different_shares() {
        assertThat(SceneMix.averageOfFrameSharesPerS(SIXTY_AND_THIRTY_MS, HALVES))
                .isCloseTo(40, within(1e-9));
        assertThat(SceneMix.rates(SIXTY_AND_THIRTY_MS, HALVES, UNCAPPED, 0).averagePerS())
                .isCloseTo(45, within(1e-9));
    }

    /** By hand: of 90 frames in two seconds 60 fall into the faster scene. */
    @Test
    void shares_of_time_become_shares_of_frames() {
        assertThat(SceneMix.frameShares(SIXTY_AND_THIRTY_MS, HALVES))
                .containsExactly(new double[] {2.0 / 3, 1.0 / 3}, within(1e-12));
        assertThat(SceneMix.frameShares(SIXTY_AND_THIRTY_MS, new double[] {5, 0}))
                .containsExactly(1, 0);
    }

    /** By hand: one scene of 10 ms; the mean stays 10 ms, the 99th percentile is lognormal. */
    @Test
    void one_scene_is_its_own_mean_and_percentile() {
        double sigma = 0.2;

        var rates = SceneMix.rates(new double[] {10}, new double[] {1}, UNCAPPED, sigma);

        double slowestMs = 10 * Math.exp(-sigma * sigma / 2 + 2.3263478740 * sigma);
        assertThat(rates.averagePerS()).isCloseTo(100, within(1e-9));
        assertThat(rates.lowPerS()).isCloseTo(1_000 / slowestMs, within(1e-6));
    }

    /** By hand: without spread the low is the scene that the slowest hundredth of frames is in. */
    @Test
    void without_spread_the_slowest_hundredth_names_its_scene() {
        double[] frameMs = {10, 20};

        double above = 1.02;
        double below = 0.98;
        // Shares of frames 99 : 1 are shares of time 99 x 10 : 1 x 20.
        assertThat(low(frameMs, 990, 20 * above)).isCloseTo(50, within(1e-9));
        assertThat(low(frameMs, 990, 20 * below)).isCloseTo(100, within(1e-9));
    }

    private static double low(double[] frameMs, double oneShare, double otherShare) {
        return SceneMix.rates(frameMs, new double[] {oneShare, otherShare}, UNCAPPED, 0).lowPerS();
    }

    /** By hand: of 100 frames exactly one takes 20 ms, so one in a hundred exceeds 10 ms. */
    @Test
    void exactly_the_slowest_hundredth_may_be_slower() {
        assertThat(low(new double[] {10, 20}, 990, 20)).isCloseTo(100, within(1e-9));
    }

    @Test
    void a_spread_of_almost_nothing_is_none() {
        var none = SceneMix.rates(new double[] {10, 20}, HALVES, UNCAPPED, 0);

        assertThat(SceneMix.rates(new double[] {10, 20}, HALVES, UNCAPPED, 9e-7)).isEqualTo(none);
        assertThat(SceneMix.rates(new double[] {10, 20}, HALVES, UNCAPPED, 2e-6).lowPerS())
                .isCloseTo(none.lowPerS(), within(0.001))
                .isNotEqualTo(none.lowPerS());
    }

    /** By hand: capped at 60 frames/s, a scene of 10 ms takes 16.667 ms like everything faster. */
    @Test
    void the_cap_lifts_faster_frames() {
        var rates = SceneMix.rates(new double[] {10, 20}, HALVES, 60, 0);

        assertThat(rates.averagePerS()).isCloseTo((60 + 50) / 2.0, within(1e-9));
        assertThat(rates.lowPerS()).isCloseTo(50, within(1e-9));
        var fast = SceneMix.rates(new double[] {2}, new double[] {1}, 60, 0.1);
        assertThat(fast.averagePerS()).isCloseTo(60, within(1e-9));
        assertThat(fast.lowPerS()).isCloseTo(60, within(1e-9));
    }

    /** Reference: commons-math3, distribution and root finder. */
    @Property(tries = 300)
    void the_low_is_the_percentile_of_the_mixture(
            @ForAll @DoubleRange(min = 2, max = 40) double oneMs,
            @ForAll @DoubleRange(min = 2, max = 40) double otherMs,
            @ForAll @DoubleRange(min = 0.01, max = 1) double share,
            @ForAll @DoubleRange(min = 0.02, max = 0.5) double sigma) {
        double[] frameMs = {oneMs, otherMs};
        double[] timeShares = {share, 1};
        double[] frameShares = SceneMix.frameShares(frameMs, timeShares);
        var one = lognormal(oneMs, sigma);
        var other = lognormal(otherMs, sigma);
        UnivariateFunction tail =
                ms ->
                        frameShares[0] * one.cumulativeProbability(ms)
                                + frameShares[1] * other.cumulativeProbability(ms)
                                - 0.99;
        double slowestMs = new BrentSolver(1e-12, 1e-12).solve(500, tail, 1, 400);

        var rates = SceneMix.rates(frameMs, timeShares, UNCAPPED, sigma);

        assertThat(rates.lowPerS()).isCloseTo(1_000 / slowestMs, withinPercentage(1e-5));
    }

    /** Reference: commons-math3, numeric integration of the longer of frame and cap. */
    @Property(tries = 100)
    void the_average_under_a_cap_is_the_integral(
            @ForAll @DoubleRange(min = 4, max = 40) double frameMs,
            @ForAll @DoubleRange(min = 0.05, max = 0.4) double sigma,
            @ForAll @DoubleRange(min = 30, max = 200) double capPerS) {
        double capMs = 1_000 / capPerS;
        double logMedian = Math.log(frameMs) - sigma * sigma / 2;
        UnivariateFunction lifted =
                z ->
                        Math.max(capMs, Math.exp(logMedian + sigma * z))
                                * Math.exp(-z * z / 2)
                                / Math.sqrt(2 * Math.PI);
        double kink = Math.max(-8, Math.min(8, (Math.log(capMs) - logMedian) / sigma));
        double meanMs = integral(lifted, -8, kink) + integral(lifted, kink, 8);

        var rates = SceneMix.rates(new double[] {frameMs}, new double[] {1}, capPerS, sigma);

        assertThat(rates.averagePerS()).isCloseTo(1_000 / meanMs, withinPercentage(1e-6));
    }

    private static double integral(UnivariateFunction function, double low, double high) {
        return high - low < 1e-9
                ? 0
                : new RombergIntegrator(1e-11, 1e-13, 6, 20)
                        .integrate(1 << 22, function, low, high);
    }

    private static LogNormalDistribution lognormal(double meanMs, double sigma) {
        return new LogNormalDistribution(Math.log(meanMs) - sigma * sigma / 2, sigma);
    }

    @Test
    void a_wild_spread_gets_a_caution() {
        assertThat(SceneMix.SIGMA.remark(0.8)).isPresent();
        assertThat(SceneMix.SIGMA.remark(0.1)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        double[] one = {10};
        double[] none = {};
        refused("scenes", () -> SceneMix.rates(one, HALVES, 60, 0));
        refused("scenes", () -> SceneMix.rates(none, none, 60, 0));
        refused("frameMs", () -> SceneMix.rates(new double[] {0}, one, 60, 0));
        refused("share", () -> SceneMix.rates(one, new double[] {-1}, 60, 0));
        refused("sum of shares", () -> SceneMix.rates(one, new double[] {0}, 60, 0));
        refused("capPerS", () -> SceneMix.rates(one, one, 0, 0));
        refused("capPerS", () -> SceneMix.rates(one, one, Double.NaN, 0));
        refused("sigma", () -> SceneMix.rates(one, one, 60, -0.1));
        refused("scenes", () -> SceneMix.frameShares(one, HALVES));
        refused("scenes", () -> SceneMix.averageOfFrameSharesPerS(one, HALVES));
        refused("scenes", () -> SceneMix.averagePerS(one, HALVES, 60, 0));
        refused("sigma", () -> SceneMix.averagePerS(one, one, 60, -0.1));
    }

    @Property(tries = 300)
    void slower_scenes_or_a_wider_spread_never_raise_the_low(
            @ForAll @DoubleRange(min = 2, max = 40) double oneMs,
            @ForAll @DoubleRange(min = 2, max = 40) double otherMs,
            @ForAll @DoubleRange(min = 0, max = 0.3) double sigma,
            @ForAll @DoubleRange(min = 1, max = 2) double slower) {
        double[] frameMs = {oneMs, otherMs};
        double[] slowerMs = {oneMs * slower, otherMs * slower};
        var rates = SceneMix.rates(frameMs, HALVES, 144, sigma);
        var slowerRates = SceneMix.rates(slowerMs, HALVES, 144, sigma);

        assertThat(slowerRates.lowPerS()).isLessThanOrEqualTo(rates.lowPerS() + 1e-6);
        assertThat(slowerRates.averagePerS()).isLessThanOrEqualTo(rates.averagePerS() + 1e-6);
        assertThat(rates.lowPerS()).isLessThanOrEqualTo(144 + 1e-9);
        assertThat(SceneMix.rates(frameMs, HALVES, 144, sigma + 0.1).lowPerS())
                .isLessThanOrEqualTo(rates.lowPerS() + 1e-6);
    }

    @Test
    void the_average_alone_is_that_of_both_rates() {
        double[] frameMs = {4, 9, 21};
        double[] shares = {0.5, 0.3, 0.2};

        for (double cap : new double[] {60, 150, 300, UNCAPPED}) {
            assertThat(SceneMix.averagePerS(frameMs, shares, cap, 0.12))
                    .isEqualTo(SceneMix.rates(frameMs, shares, cap, 0.12).averagePerS());
        }
    }
}
