package rigbrief.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.junit.jupiter.api.Test;
import rigbrief.model.speed.FrameStatistics;
import rigbrief.model.speed.FrameStatistics.Percentile;

class FrameTallyTest {
    /** Cases FRAME-01 and FRAME-05 of the published checks, worked out with numpy. */
    @Test
    void a_hundred_frames_have_the_published_average_and_99th_percentile() {
        FrameTally tally = new FrameTally();
        add(tally, 97, 10);
        add(tally, 1, 20);
        add(tally, 1, 30);
        add(tally, 1, 50);

        FrameLog log = tally.log();

        assertThat(log.frames()).isEqualTo(100);
        assertThat(log.seconds()).isCloseTo(1.07, within(1e-12));
        assertThat(log.averageFps()).isCloseTo(93.458, within(0.001));
        assertThat(log.lowFps()).isCloseTo(33.333, within(0.001));
        assertThat(log.longestMs()).isEqualTo(50);
    }

    @Test
    void a_thousand_frames_have_the_published_average_and_99th_percentile() {
        FrameTally tally = new FrameTally();
        add(tally, 900, 8);
        add(tally, 80, 10);
        add(tally, 10, 16);
        add(tally, 9, 25);
        add(tally, 1, 40);

        FrameLog log = tally.log();

        assertThat(log.averageFps()).isCloseTo(118.694, within(0.001));
        assertThat(log.lowFps()).isCloseTo(62.5, within(0.001));
    }

    private static void add(FrameTally tally, int frames, double ms) {
        for (int i = 0; i < frames; i++) {
            tally.add(ms);
        }
    }

    @Test
    void times_that_all_differ_give_the_percentile_of_the_sorted_list_within_its_class() {
        Random random = new Random(3);
        double[] times = new double[20_011];
        FrameTally tally = new FrameTally();
        for (int i = 0; i < times.length; i++) {
            times[i] = Math.exp(2.5 + 0.3 * random.nextGaussian());
            tally.add(times[i]);
        }

        FrameStatistics sorted = FrameStatistics.of(times);

        double slowestMs = sorted.percentileMs(99, Percentile.NEAREST_RANK);
        assertThat(tally.log().lowFps()).isCloseTo(1_000 / slowestMs, withinPercentage(0.01));
        assertThat(tally.log().averageFps())
                .isCloseTo(sorted.averagePerS(), withinPercentage(1e-10));
    }

    @Test
    void one_frame_is_its_own_average_and_low() {
        FrameTally tally = new FrameTally();
        tally.add(12.5);

        assertThat(tally.log()).isEqualTo(new FrameLog(1, 0.0125, 80, 80, 12.5));
    }

    @Test
    void a_time_of_nought_or_of_minutes_is_refused() {
        FrameTally tally = new FrameTally();

        assertThatThrownBy(() -> tally.add(0)).hasMessageContaining("check its unit");
        assertThatThrownBy(() -> tally.add(200_000)).hasMessageContaining("check its unit");
        assertThatThrownBy(() -> tally.add(Double.NaN)).hasMessageContaining("found NaN");
        assertThatThrownBy(tally::log).hasMessageContaining("total time");
    }
}
