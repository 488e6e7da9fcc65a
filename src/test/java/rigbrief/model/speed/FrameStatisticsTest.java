package rigbrief.model.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import rigbrief.model.speed.FrameStatistics.Percentile;

/**
 * Two runs made for the purpose: 97 frames of 10 ms, then 20, 30 and 50; and 900 x 8, 80 x 10, 10 x
 * 16, 9 x 25, 1 x 40 ms. Expected values computed apart from this program in numpy.
 */
class FrameStatisticsTest {
    private static final FrameStatistics HUNDRED =
            FrameStatistics.of(frames(97, 10, 1, 20, 1, 30, 1, 50));
    private static final FrameStatistics THOUSAND =
            FrameStatistics.of(frames(900, 8, 80, 10, 10, 16, 9, 25, 1, 40));

    private static double[] frames(int... countAndMs) {
        double[] all = {};
        for (int i = 0; i < countAndMs.length; i += 2) {
            int from = all.length;
            all = Arrays.copyOf(all, from + countAndMs[i]);
            Arrays.fill(all, from, all.length, countAndMs[i + 1]);
        }
        return all;
    }

    @Test
    @DisplayName("FRAME-01: 1070 ms are 93.458 frames/s, 8425 ms 118.694")
    void the_average_is_frames_over_time() {
        assertThat(HUNDRED.totalMs()).isEqualTo(1_070);
        assertThat(HUNDRED.averagePerS()).isCloseTo(93.458, within(0.001));
        assertThat(THOUSAND.totalMs()).isEqualTo(8_425);
        assertThat(THOUSAND.averagePerS()).isCloseTo(118.694, within(0.001));
    }

    @Test
    @DisplayName("FRAME-02: the mean of instantaneous rates is too high, 98.033 and 121.510")
    void the_mean_of_rates_is_another_number() {
        assertThat(HUNDRED.meanOfRatesPerS()).isCloseTo(98.033, within(0.001));
        assertThat(THOUSAND.meanOfRatesPerS()).isCloseTo(121.510, within(0.001));
    }

    /** Source of the definition: an article on 1 % lows. */
    @Test
    @DisplayName("FRAME-03: 1 % low by the slowest frames' mean time: 20.000 and 37.736")
    void the_low_by_mean_time() {
        assertThat(HUNDRED.lowByMeanTimePerS(1)).isCloseTo(20.000, within(0.001));
        assertThat(THOUSAND.lowByMeanTimePerS(1)).isCloseTo(37.736, within(0.001));
    }

    @Test
    @DisplayName("FRAME-04: 1 % low by the slowest frames' mean rate: 20.000 and 38.500")
    void the_low_by_mean_rate() {
        assertThat(HUNDRED.lowByMeanRatePerS(1)).isCloseTo(20.000, within(0.001));
        assertThat(THOUSAND.lowByMeanRatePerS(1)).isCloseTo(38.500, within(0.001));
    }

    /** Source of the definition: methodology article of a frame-capture tool, place 990 of 1000. */
    @Test
    @DisplayName("FRAME-05: 99th percentile by nearest rank: 30 ms (33.333) and 16 ms (62.5)")
    void the_percentile_by_nearest_rank() {
        double hundredMs = HUNDRED.percentileMs(99, Percentile.NEAREST_RANK);
        double thousandMs = THOUSAND.percentileMs(99, Percentile.NEAREST_RANK);

        assertThat(hundredMs).isEqualTo(30);
        assertThat(FrameTime.perSecond(hundredMs)).isCloseTo(33.333, within(0.001));
        assertThat(thousandMs).isEqualTo(16);
        assertThat(FrameTime.perSecond(thousandMs)).isCloseTo(62.5, within(0.001));
    }

    @Test
    @DisplayName("FRAME-06: the same by straight lines: 30.2 ms (33.113) and 16.09 ms (62.150)")
    void the_percentile_by_straight_lines() {
        double hundredMs = HUNDRED.percentileMs(99, Percentile.LINEAR);
        double thousandMs = THOUSAND.percentileMs(99, Percentile.LINEAR);

        assertThat(hundredMs).isCloseTo(30.2, within(0.001));
        assertThat(FrameTime.perSecond(hundredMs)).isCloseTo(33.113, within(0.001));
        assertThat(thousandMs).isCloseTo(16.09, within(0.001));
        assertThat(FrameTime.perSecond(thousandMs)).isCloseTo(62.150, within(0.001));
    }

    @Test
    @DisplayName("FRAME-07: the same after Weibull and Hazen: 49.8 and 40.0 ms")
    void the_percentile_by_two_more_definitions() {
        assertThat(HUNDRED.percentileMs(99, Percentile.WEIBULL)).isCloseTo(49.8, within(0.001));
        assertThat(HUNDRED.percentileMs(99, Percentile.HAZEN)).isCloseTo(40.0, within(0.001));
    }

    /** Source: an article on 1 % lows, which prints the arithmetic mean, 73.4. */
    @Test
    @DisplayName("FRAME-08: frames of 7 and 250 ms average 7.782 frames/s, not 73.4")
    void a_published_misprint_is_not_repeated() {
        var two = FrameStatistics.of(7, 250);

        assertThat(two.averagePerS()).isCloseTo(7.782, within(0.001));
        assertThat(two.meanOfRatesPerS()).isCloseTo(73.4, within(0.05));
    }

    /**
     * By hand: the slowest frames that fill 10.7 ms (1 %) are part of the one of 50 ms; 80 ms are
     * exactly the two slowest, 80.1 ms reach into the third.
     */
    @Test
    void the_low_by_time_counts_milliseconds() {
        assertThat(HUNDRED.lowByTimePerS(1)).isEqualTo(20);
        assertThat(HUNDRED.lowByTimePerS(100 * 80 / 1_070.0)).isCloseTo(33.333, within(0.001));
        assertThat(HUNDRED.lowByTimePerS(100 * 80.1 / 1_070.0)).isCloseTo(50, within(0.001));
        assertThat(HUNDRED.lowByTimePerS(100)).isCloseTo(100, within(0.001));
    }

    @Test
    void one_frame_is_all_its_statistics() {
        var one = FrameStatistics.of(20);

        assertThat(one.averagePerS()).isEqualTo(50);
        assertThat(one.lowByMeanTimePerS(1)).isEqualTo(50);
        assertThat(one.lowByMeanRatePerS(0.1)).isEqualTo(50);
        assertThat(one.lowByTimePerS(1)).isEqualTo(50);
        for (Percentile definition : Percentile.values()) {
            assertThat(one.percentileMs(99, definition)).isEqualTo(20);
        }
    }

    @Test
    void the_array_given_is_left_as_it_was() {
        double[] frameMs = {30, 10, 20};

        FrameStatistics.of(frameMs);

        assertThat(frameMs).containsExactly(30, 10, 20);
    }

    @Test
    void nonsense_is_refused() {
        refused("number of frames", FrameStatistics::of);
        refused("frameMs", () -> FrameStatistics.of(10, 0));
        refused("frameMs", () -> FrameStatistics.of(10, Double.NaN));
        refused("percent", () -> HUNDRED.percentileMs(0, Percentile.LINEAR));
        refused("percent / 100", () -> HUNDRED.percentileMs(101, Percentile.LINEAR));
        refused("percent", () -> HUNDRED.lowByMeanTimePerS(0));
        refused("percent", () -> HUNDRED.lowByMeanRatePerS(0));
        refused("percent", () -> HUNDRED.lowByTimePerS(0));
    }

    /** Reference: commons-math3, estimation types. */
    @Property(tries = 500)
    void percentiles_are_those_of_a_statistics_library(
            @ForAll @Size(min = 1, max = 60) List<@DoubleRange(min = 1, max = 100) Double> frameMs,
            @ForAll @DoubleRange(min = 1, max = 99) double percent) {
        double[] times = array(frameMs);
        var statistics = FrameStatistics.of(times);

        for (Percentile definition : Percentile.values()) {
            double expected =
                    new org.apache.commons.math3.stat.descriptive.rank.Percentile()
                            .withEstimationType(typeOf(definition))
                            .evaluate(times, percent);
            assertThat(statistics.percentileMs(percent, definition))
                    .as("%s", definition)
                    .isCloseTo(expected, within(1e-9));
        }
    }

    private static EstimationType typeOf(Percentile definition) {
        return switch (definition) {
            case NEAREST_RANK -> EstimationType.R_1;
            case LINEAR -> EstimationType.R_7;
            case HAZEN -> EstimationType.R_5;
            case WEIBULL -> EstimationType.R_6;
        };
    }

    @Property(tries = 300)
    void no_low_is_above_the_average_nor_the_average_above_the_mean_of_rates(
            @ForAll @Size(min = 1, max = 60)
                    List<@DoubleRange(min = 1, max = 100) Double> frameMs) {
        var statistics = FrameStatistics.of(array(frameMs));
        double averagePerS = statistics.averagePerS();

        assertThat(statistics.lowByMeanTimePerS(1)).isLessThanOrEqualTo(averagePerS + 1e-9);
        assertThat(statistics.lowByMeanTimePerS(1))
                .isLessThanOrEqualTo(statistics.lowByMeanRatePerS(1) + 1e-9);
        assertThat(averagePerS).isLessThanOrEqualTo(statistics.meanOfRatesPerS() + 1e-9);
    }

    @Property(tries = 100)
    void the_order_of_frames_changes_nothing(
            @ForAll @Size(min = 2, max = 40) List<@DoubleRange(min = 1, max = 99) Double> frameMs) {
        var shuffled = new ArrayList<>(frameMs);
        Collections.reverse(shuffled);

        var one = FrameStatistics.of(array(frameMs));
        var other = FrameStatistics.of(array(shuffled));

        assertThat(one.averagePerS()).isEqualTo(other.averagePerS());
        assertThat(one.lowByMeanTimePerS(5)).isEqualTo(other.lowByMeanTimePerS(5));
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(it -> it).toArray();
    }
}
