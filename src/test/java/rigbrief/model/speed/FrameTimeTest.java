package rigbrief.model.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FrameTimeTest {
    private static final double ENDLESS = Double.POSITIVE_INFINITY;

    /** By hand: 2560 x 1440, and a quarter of it at half the pixels along each axis. */
    @Test
    void upscaling_counts_along_both_axes() {
        assertThat(FrameTime.internalPixels(2_560, 1_440, 1)).isEqualTo(3_686_400);
        assertThat(FrameTime.internalPixels(2_560, 1_440, 0.5)).isEqualTo(921_600);
    }

    /** By hand: 4 ms + 2e6 / 1e9 s + 1 ms. */
    @Test
    void rays_and_what_is_fixed_come_on_top_of_the_roofline() {
        assertThat(FrameTime.graphicsS(0.004, 2e6, 1e9, 0.001)).isCloseTo(0.007, within(1e-12));
        assertThat(FrameTime.graphicsS(0.004, 0, 0, 0)).isEqualTo(0.004);
        assertThat(FrameTime.graphicsS(0.004, 1, 0, 0)).isEqualTo(ENDLESS);
        assertThat(FrameTime.graphicsS(ENDLESS, 0, 0, 0)).isEqualTo(ENDLESS);
    }

    /** By hand: 2 / 1000 + 12 / 4000 s. */
    @Test
    void the_processor_s_time_is_serial_and_parallel() {
        assertThat(FrameTime.processorS(2, 1_000, 12, 4_000)).isCloseTo(0.005, within(1e-12));
    }

    /** By hand: 3 and 4 wait for each other at p = 1, make 5 at p = 2, and 4 at p = infinity. */
    @Test
    void the_exponent_runs_from_waiting_to_overlapping() {
        assertThat(FrameTime.together(3, 4, 1)).isCloseTo(7, within(1e-12));
        assertThat(FrameTime.together(3, 4, 2)).isCloseTo(5, within(1e-12));
        assertThat(FrameTime.together(3, 4, 40)).isEqualTo(4);
        assertThat(FrameTime.together(3, 4, ENDLESS)).isEqualTo(4);
    }

    /** By hand: (3⁴ + 4⁴)^(1/4) = 337^(1/4) = 4.2846. */
    @Test
    void the_usual_exponent_has_its_own_short_way() {
        assertThat(FrameTime.together(3, 4, FrameTime.USUAL_OVERLAP))
                .isCloseTo(4.2846, within(0.0001));
        assertThat(FrameTime.together(3, 4, FrameTime.USUAL_OVERLAP))
                .isCloseTo(FrameTime.together(3, 4, 4.0000001), within(1e-6));
    }

    @Test
    void nothing_or_without_end_beside_a_time_leaves_the_larger() {
        assertThat(FrameTime.together(3, 0, 4)).isEqualTo(3);
        assertThat(FrameTime.together(0, 0, 4)).isZero();
        assertThat(FrameTime.together(3, ENDLESS, 4)).isEqualTo(ENDLESS);
        assertThat(FrameTime.together(ENDLESS, ENDLESS, 4)).isEqualTo(ENDLESS);
    }

    @Test
    void the_engine_s_cap_bounds_the_rate() {
        assertThat(FrameTime.framesPerS(0.01, ENDLESS)).isEqualTo(100);
        assertThat(FrameTime.framesPerS(0.01, 60)).isEqualTo(60);
        assertThat(FrameTime.framesPerS(0.02, 60)).isEqualTo(50);
        assertThat(FrameTime.framesPerS(0, 60)).isEqualTo(60);
        assertThat(FrameTime.framesPerS(ENDLESS, 60)).isZero();
    }

    @Test
    void milliseconds_and_rates_are_each_other_s_reciprocal() {
        assertThat(FrameTime.perSecond(20)).isEqualTo(50);
        assertThat(FrameTime.perSecond(50)).isEqualTo(20);
    }

    @Test
    void an_exponent_beyond_fits_gets_a_caution() {
        assertThat(FrameTime.OVERLAP.remark(60)).isPresent();
        assertThat(FrameTime.OVERLAP.remark(FrameTime.USUAL_OVERLAP)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("widthPx", () -> FrameTime.internalPixels(0, 1, 1));
        refused("heightPx", () -> FrameTime.internalPixels(1, 0, 1));
        refused("ratioPerAxis", () -> FrameTime.internalPixels(1, 1, 0));
        refused("rooflineS", () -> FrameTime.graphicsS(-1, 0, 0, 0));
        refused("rooflineS", () -> FrameTime.graphicsS(Double.NaN, 0, 0, 0));
        refused("fixedS", () -> FrameTime.graphicsS(1, 0, 0, -1));
        refused("work", () -> FrameTime.processorS(-1, 1, 0, 0));
        refused("timeS", () -> FrameTime.together(-1, 1, 4));
        refused("timeS", () -> FrameTime.together(1, -1, 4));
        refused("overlap", () -> FrameTime.together(1, 1, 0.9));
        refused("overlap", () -> FrameTime.together(1, 1, Double.NaN));
        refused("timeS", () -> FrameTime.framesPerS(-1, 60));
        refused("capPerS", () -> FrameTime.framesPerS(1, 0));
        refused("frameMs", () -> FrameTime.perSecond(0));
    }

    @Property(tries = 500)
    void the_time_together_is_between_the_larger_and_the_sum(
            @ForAll @DoubleRange(min = 0, max = 50) double graphics,
            @ForAll @DoubleRange(min = 0, max = 50) double processor,
            @ForAll @DoubleRange(min = 1, max = 60) double overlap) {
        double together = FrameTime.together(graphics, processor, overlap);

        assertThat(together).isBetween(Math.max(graphics, processor), graphics + processor + 1e-9);
        assertThat(FrameTime.together(processor, graphics, overlap)).isEqualTo(together);
        assertThat(FrameTime.together(graphics, processor, overlap + 1))
                .isLessThanOrEqualTo(together + 1e-9);
    }

    @Property(tries = 500)
    void a_faster_part_never_makes_a_slower_picture(
            @ForAll @DoubleRange(min = 0, max = 50) double graphics,
            @ForAll @DoubleRange(min = 0, max = 50) double processor,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double together = FrameTime.together(graphics, processor, 4);

        assertThat(FrameTime.together(share * graphics, processor, 4))
                .isLessThanOrEqualTo(together + 1e-9);
        assertThat(FrameTime.together(graphics, share * processor, 4))
                .isLessThanOrEqualTo(together + 1e-9);
    }
}
