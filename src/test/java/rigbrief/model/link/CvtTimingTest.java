package rigbrief.model.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CvtTimingTest {

    /**
     * 57 timings of edid-decode cb74358c2896 (Debian 12): width, height, refresh, then MHz, pixels
     * per line and lines by CVT, by RBv1 and by RBv2. xcvt 0.1.2 agrees on all 19 by CVT.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            1920, 1080, 60, 173, 2576, 1120, 138.5, 2080, 1111, 133.32, 2000, 1111
            1920, 1080, 144, 452.5, 2672, 1177, 346.5, 2080, 1157, 333.216, 2000, 1157
            1920, 1080, 240, 809.5, 2704, 1248, 606.5, 2080, 1215, 583.2, 2000, 1215
            2560, 1440, 60, 312.25, 3488, 1493, 241.5, 2720, 1481, 234.59, 2640, 1481
            2560, 1440, 144, 808.75, 3584, 1568, 604.25, 2720, 1543, 586.586, 2640, 1543
            2560, 1440, 165, 938.5, 3584, 1588, 699.5, 2720, 1559, 679.1, 2640, 1559
            2560, 1440, 240, 1442.5, 3616, 1663, 1056.75, 2720, 1619, 1025.798, 2640, 1619
            3440, 1440, 60, 419.5, 4688, 1493, 319.75, 3600, 1481, 312.787, 3520, 1481
            3440, 1440, 100, 728, 4768, 1527, 543.5, 3600, 1510, 531.52, 3520, 1510
            3440, 1440, 144, 1086.75, 4816, 1568, 799.75, 3600, 1543, 782.115, 3520, 1543
            3840, 2160, 30, 338.75, 5136, 2200, 262.75, 4000, 2191, 257.661, 3920, 2191
            3840, 2160, 60, 712.75, 5312, 2237, 533.25, 4000, 2222, 522.614, 3920, 2222
            3840, 2160, 120, 1498.25, 5392, 2316, 1097.75, 4000, 2287, 1075.804, 3920, 2287
            3840, 2160, 144, 1829.25, 5408, 2350, 1332.75, 4000, 2314, 1306.206, 3920, 2314
            3840, 2160, 240, 3253.25, 5440, 2492, 2331.75, 4000, 2429, 2285.203, 3920, 2429
            5120, 1440, 120, 1322.75, 7136, 1545, 966, 5280, 1525, 951.6, 5200, 1525
            5120, 1440, 240, 2885.25, 7232, 1663, 2051.5, 5280, 1619, 2020.512, 5200, 1619
            5120, 2880, 60, 1276.5, 7136, 2982, 938.25, 5280, 2962, 924.144, 5200, 2962
            7680, 4320, 60, 2892.5, 10784, 4471, 2089.75, 7840, 4443, 2068.66, 7760, 4443
            """)
    void every_timing_of_the_reference_program_is_met_exactly(
            int widthPx,
            int heightPx,
            int refreshHz,
            double cvtMhz,
            int cvtWidth,
            int cvtHeight,
            double firstMhz,
            int firstWidth,
            int firstHeight,
            double secondMhz,
            int secondWidth,
            int secondHeight) {
        assertThat(CvtTiming.of(widthPx, heightPx, refreshHz, TimingRule.CVT))
                .isEqualTo(timing(cvtMhz, cvtWidth, cvtHeight));
        assertThat(CvtTiming.of(widthPx, heightPx, refreshHz, TimingRule.CVT_RB1))
                .isEqualTo(timing(firstMhz, firstWidth, firstHeight));
        assertThat(CvtTiming.of(widthPx, heightPx, refreshHz, TimingRule.CVT_RB2))
                .isEqualTo(timing(secondMhz, secondWidth, secondHeight));
    }

    private static DisplayTiming timing(double mhz, int horizontalTotal, int verticalTotal) {
        return new DisplayTiming(Math.round(mhz * 1e6), horizontalTotal, verticalTotal);
    }

    /** Source: edid-decode and xcvt, Debian 12. */
    @Test
    @DisplayName("LINK-01: 1920 x 1080 at 60 Hz by CVT is 173 MHz, 2576 x 1120, 59.963 Hz")
    void full_hd_by_cvt_runs_a_little_slow() {
        var timing = CvtTiming.of(1920, 1080, 60, TimingRule.CVT);

        assertThat(timing).isEqualTo(new DisplayTiming(173_000_000, 2576, 1120));
        assertThat(timing.refreshHz()).isCloseTo(59.963, within(0.001));
    }

    /** Source: edid-decode, Debian 12. */
    @Test
    @DisplayName("LINK-02: 2560 x 1440 at 165 Hz by RBv2 is 679.100 MHz, 2640 x 1559")
    void a_fast_mode_by_the_second_reduced_blanking() {
        assertThat(CvtTiming.of(2560, 1440, 165, TimingRule.CVT_RB2))
                .isEqualTo(new DisplayTiming(679_100_000, 2640, 1559));
    }

    /** Source: edid-decode, Debian 12. */
    @Test
    @DisplayName("LINK-03: 3440 x 1440 at 144 Hz by RBv1 is 799.75 MHz, 3600 x 1543")
    void a_wide_mode_by_the_first_reduced_blanking() {
        assertThat(CvtTiming.of(3440, 1440, 144, TimingRule.CVT_RB1))
                .isEqualTo(new DisplayTiming(799_750_000, 3600, 1543));
    }

    /** Source: edid-decode, Debian 12. */
    @Test
    @DisplayName("LINK-04: 5120 x 1440 at 120 Hz by RBv2 is 951.600 MHz, 5200 x 1525")
    void a_very_wide_mode_by_the_second_reduced_blanking() {
        assertThat(CvtTiming.of(5120, 1440, 120, TimingRule.CVT_RB2))
                .isEqualTo(new DisplayTiming(951_600_000, 5200, 1525));
    }

    /** By hand: 480 lines at 60 Hz, (1/60 - 460 us)/480 = 33.76 us, 13 + 1 blanking lines. */
    @Test
    void few_lines_still_get_the_least_blanking() {
        assertThat(CvtTiming.of(640, 480, 60, TimingRule.CVT_RB1).verticalTotal()).isEqualTo(494);
        assertThat(CvtTiming.of(640, 480, 60, TimingRule.CVT_RB2).verticalTotal()).isEqualTo(495);
    }

    /**
     * By hand: at 24 Hz and 200 lines the blanking time is 2 + 1 lines, so the floor decides: 3 +
     * sync + 6 lines in the first reduced blanking, 15 in the second. Sync widths by aspect ratio,
     * source: CVT 1.1: 4:3 4, 16:9 5, 16:10 6, 5:4 and 15:9 7, others 10.
     */
    @ParameterizedTest
    @CsvSource({"240,180,4", "320,180,5", "288,180,6", "225,180,7", "300,180,7", "360,180,10"})
    void the_sync_width_tells_the_aspect_ratio(int widthPx, int heightPx, int syncLines) {
        var first = CvtTiming.of(widthPx, heightPx, 24, TimingRule.CVT_RB1);
        var second = CvtTiming.of(widthPx, heightPx, 24, TimingRule.CVT_RB2);

        assertThat(first.verticalTotal()).isEqualTo(heightPx + 3 + syncLines + 6);
        assertThat(second.verticalTotal()).isEqualTo(heightPx + 15);
    }

    /** By hand: the same floor in standard blanking, where sync and back porch last 550 us. */
    @Test
    void standard_blanking_has_its_floor_of_lines_too() {
        assertThat(CvtTiming.of(320, 180, 24, TimingRule.CVT).verticalTotal())
                .isEqualTo(180 + 3 + 5 + 6);
    }

    /** By hand: (1/24 - 550 us)/183 = 224.7 us per line, 30 - 67 % is below the least 20 %. */
    @Test
    void slow_lines_get_the_least_blanking_duty() {
        assertThat(CvtTiming.of(320, 180, 24, TimingRule.CVT).horizontalTotal())
                .isEqualTo(320 + 80);
    }

    /** Source: CVT 1.1, cells of 8 pixels in the first two rules, single pixels in the third. */
    @Test
    void an_odd_width_is_cut_to_whole_cells() {
        assertThat(CvtTiming.of(1366, 768, 60, TimingRule.CVT_RB1).horizontalTotal())
                .isEqualTo(1360 + 160);
        assertThat(CvtTiming.of(1366, 768, 60, TimingRule.CVT_RB2).horizontalTotal())
                .isEqualTo(1366 + 80);
    }

    @Test
    void nonsense_is_refused() {
        refused("widthPx", () -> CvtTiming.of(0, 1080, 60, TimingRule.CVT));
        refused("heightPx", () -> CvtTiming.of(1920, -1, 60, TimingRule.CVT));
        refused("refreshHz", () -> CvtTiming.of(1920, 1080, Double.NaN, TimingRule.CVT));
        refused("refreshHz", () -> CvtTiming.of(1920, 1080, 1e6 / 460, TimingRule.CVT_RB1));
    }

    @Property(tries = 300)
    void a_lower_refresh_never_needs_a_faster_clock(
            @ForAll @IntRange(min = 640, max = 7680) int widthPx,
            @ForAll @IntRange(min = 480, max = 4320) int heightPx,
            @ForAll @IntRange(min = 24, max = 359) int refreshHz) {
        for (TimingRule rule : TimingRule.values()) {
            long slower = CvtTiming.of(widthPx, heightPx, refreshHz, rule).pixelClockHz();
            long faster = CvtTiming.of(widthPx, heightPx, refreshHz + 1, rule).pixelClockHz();

            assertThat(slower).isLessThanOrEqualTo(faster);
        }
    }
}
