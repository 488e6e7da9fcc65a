package rigbrief.model.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.model.link.LinkResult.Carried;

class DisplayLinkTest {
    private static final List<LinkStandard> LINKS =
            List.of(
                    LinkStandard.HDMI_1_4,
                    LinkStandard.HDMI_2_0,
                    LinkStandard.HDMI_FRL24,
                    LinkStandard.HDMI_FRL32,
                    LinkStandard.HDMI_FRL40,
                    LinkStandard.HDMI_FRL48,
                    LinkStandard.DP_HBR2,
                    LinkStandard.DP_HBR3,
                    LinkStandard.DP_UHBR10,
                    LinkStandard.DP_UHBR13_5,
                    LinkStandard.DP_UHBR20);

    /**
     * Mode, bits per pixel, Gbit/s by RBv1 and RBv2, then for each link whether it carries the mode
     * without compression. Computed apart from this program in numpy from the timings of
     * edid-decode and the standards' payload rates.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            1920,1080,60,24,3.324,3.200,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            1920,1080,60,30,4.155,4.000,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            1920,1080,144,24,8.316,7.997,RBv2,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            1920,1080,144,30,10.395,9.996,no,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            1920,1080,240,24,14.556,13.997,no,RBv2,yes,yes,yes,yes,yes,yes,yes,yes,yes
            1920,1080,240,30,18.195,17.496,no,no,yes,yes,yes,yes,no,yes,yes,yes,yes
            2560,1440,60,24,5.796,5.630,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            2560,1440,60,30,7.245,7.038,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            2560,1440,144,24,14.502,14.078,no,RBv2,yes,yes,yes,yes,yes,yes,yes,yes,yes
            2560,1440,144,30,18.128,17.598,no,no,yes,yes,yes,yes,no,yes,yes,yes,yes
            2560,1440,165,24,16.788,16.298,no,no,yes,yes,yes,yes,yes,yes,yes,yes,yes
            2560,1440,165,30,20.985,20.373,no,no,yes,yes,yes,yes,no,yes,yes,yes,yes
            2560,1440,240,24,25.362,24.619,no,no,no,yes,yes,yes,no,yes,yes,yes,yes
            2560,1440,240,30,31.703,30.774,no,no,no,no,yes,yes,no,no,yes,yes,yes
            3440,1440,60,24,7.674,7.507,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            3440,1440,60,30,9.592,9.384,no,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            3440,1440,100,24,13.044,12.756,no,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            3440,1440,100,30,16.305,15.946,no,no,yes,yes,yes,yes,yes,yes,yes,yes,yes
            3440,1440,144,24,19.194,18.771,no,no,yes,yes,yes,yes,no,yes,yes,yes,yes
            3440,1440,144,30,23.992,23.463,no,no,no,yes,yes,yes,no,yes,yes,yes,yes
            3840,2160,30,24,6.306,6.184,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            3840,2160,30,30,7.883,7.730,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            3840,2160,60,24,12.798,12.543,no,yes,yes,yes,yes,yes,yes,yes,yes,yes,yes
            3840,2160,60,30,15.998,15.678,no,no,yes,yes,yes,yes,yes,yes,yes,yes,yes
            3840,2160,120,24,26.346,25.819,no,no,no,yes,yes,yes,no,RBv2,yes,yes,yes
            3840,2160,120,30,32.932,32.274,no,no,no,no,yes,yes,no,no,yes,yes,yes
            3840,2160,144,24,31.986,31.349,no,no,no,no,yes,yes,no,no,yes,yes,yes
            3840,2160,144,30,39.983,39.186,no,no,no,no,no,yes,no,no,no,yes,yes
            3840,2160,240,24,55.962,54.845,no,no,no,no,no,no,no,no,no,no,yes
            3840,2160,240,30,69.953,68.556,no,no,no,no,no,no,no,no,no,no,yes
            5120,1440,120,24,23.184,22.838,no,no,no,yes,yes,yes,no,yes,yes,yes,yes
            5120,1440,120,30,28.980,28.548,no,no,no,no,yes,yes,no,no,yes,yes,yes
            5120,1440,240,24,49.236,48.492,no,no,no,no,no,no,no,no,no,yes,yes
            5120,1440,240,30,61.545,60.615,no,no,no,no,no,no,no,no,no,no,yes
            5120,2880,60,24,22.518,22.179,no,no,no,yes,yes,yes,no,yes,yes,yes,yes
            5120,2880,60,30,28.148,27.724,no,no,no,yes,yes,yes,no,no,yes,yes,yes
            7680,4320,60,24,50.154,49.648,no,no,no,no,no,no,no,no,no,yes,yes
            7680,4320,60,30,62.693,62.060,no,no,no,no,no,no,no,no,no,no,yes
            """)
    void every_mode_fits_the_links_that_the_standards_say(ArgumentsAccessor row) {
        for (int i = 0; i < LINKS.size(); i++) {
            var result = carries(LINKS.get(i), row);
            boolean plain = result.carried() == Carried.UNCOMPRESSED;

            assertThat(plain).as("%s", LINKS.get(i)).isEqualTo(!row.getString(6 + i).equals("no"));
            if (plain) {
                boolean second = row.getString(6 + i).equals("RBv2");
                assertThat(result.timing())
                        .isEqualTo(second ? TimingRule.CVT_RB2 : TimingRule.CVT_RB1);
                assertThat(result.requiredBitsPerSecond() / 1e9)
                        .isCloseTo(row.getDouble(second ? 5 : 4), within(0.0006));
            }
        }
    }

    private static LinkResult carries(LinkStandard link, ArgumentsAccessor row) {
        return DisplayLink.carries(
                link,
                link,
                row.getInteger(0),
                row.getInteger(1),
                row.getInteger(2),
                row.getInteger(3) / 3);
    }

    /** Source: edid-decode timings, DisplayPort 1.4 payload. */
    @Test
    @DisplayName(
            "LINK-05: 3840 x 2160 at 120 Hz fits the third rate by RBv2 alone, 25.819 of 25.92")
    void the_closest_call_of_the_third_rate() {
        var result =
                DisplayLink.carries(LinkStandard.DP_HBR3, LinkStandard.DP_HBR3, 3840, 2160, 120, 8);

        assertThat(result.carried()).isEqualTo(Carried.UNCOMPRESSED);
        assertThat(result.timing()).isEqualTo(TimingRule.CVT_RB2);
        assertThat(result.requiredBitsPerSecond() / 1e9).isCloseTo(25.819, within(0.001));
        assertThat(result.availableBitsPerSecond()).isEqualTo(25_920_000_000L);
        var first = CvtTiming.of(3840, 2160, 120, TimingRule.CVT_RB1);
        assertThat(first.bitsPerSecond(24) / 1e9).isCloseTo(26.346, within(0.001));
    }

    /** Source: edid-decode timings, HDMI 2.0 character rate of 600 MHz. */
    @Test
    @DisplayName(
            "LINK-06: 1920 x 1080 at 240 Hz fits 600 MHz by RBv2 (583.2) and not by RBv1 (606.5)")
    void a_fast_small_screen_on_hdmi() {
        var result =
                DisplayLink.carries(
                        LinkStandard.HDMI_2_0, LinkStandard.HDMI_2_0, 1920, 1080, 240, 8);

        assertThat(result.timing()).isEqualTo(TimingRule.CVT_RB2);
        assertThat(result.requiredBitsPerSecond()).isEqualTo(583_200_000L * 24);
        assertThat(606_500_000L * 24).isGreaterThan(result.availableBitsPerSecond());
    }

    /**
     * Source: CTA-861 clock of 594 MHz, HDMI 2.0 character rate (from memory: x 1.25 at 10 bits).
     */
    @Test
    @DisplayName("LINK-07: 594 MHz needs 14.256 Gbit/s at 24 bits, 17.820 at 30, of which 14.4 fit")
    void the_television_timing_fits_at_eight_bits_only() {
        var timing = TelevisionTiming.find(3840, 2160, 60).orElseThrow();
        long available = LinkStandard.HDMI_2_0.payloadBitsPerSecond();

        assertThat(timing.bitsPerSecond(24)).isEqualTo(14_256_000_000L).isLessThan(available);
        assertThat(timing.bitsPerSecond(30)).isEqualTo(17_820_000_000L).isGreaterThan(available);
    }

    /** Source: edid-decode timing; 2.4016 % for error correction as an open kernel counts it. */
    @Test
    @DisplayName("LINK-08: 3840 x 2160 at 240 Hz compressed needs 18.282 Gbit/s: HBR3 yes, HBR2 no")
    void a_fast_large_screen_passes_compressed() {
        var result =
                DisplayLink.carries(
                        LinkStandard.DP_HBR3_DSC, LinkStandard.DP_HBR3_DSC, 3840, 2160, 240, 8);
        var second = CvtTiming.of(3840, 2160, 240, TimingRule.CVT_RB2);

        assertThat(result.carried()).isEqualTo(Carried.COMPRESSED);
        assertThat(result.availableBitsPerSecond() / 1e9).isCloseTo(25.312, within(0.001));
        assertThat(second.bitsPerSecond(8) / 1e9).isCloseTo(18.282, within(0.001));
        assertThat(LinkStandard.DP_HBR2.compressedPayloadBitsPerSecond() / 1e9)
                .isCloseTo(16.875, within(0.001));
    }

    @Test
    void without_compression_at_one_end_nothing_is_compressed() {
        var result =
                DisplayLink.carries(
                        LinkStandard.DP_HBR3_DSC, LinkStandard.DP_HBR3, 3840, 2160, 240, 8);

        assertThat(result.fits()).isFalse();
        assertThat(result.standard()).contains(LinkStandard.DP_HBR3);
        assertThat(result.timing()).isEqualTo(TimingRule.CVT_RB2);
        assertThat(result.requiredBitsPerSecond()).isEqualTo(2_285_203_000L * 24);
        assertThat(result.availableBitsPerSecond()).isEqualTo(25_920_000_000L);
    }

    @Test
    void plugs_of_different_families_carry_nothing() {
        var result =
                DisplayLink.carries(
                        LinkStandard.DP_UHBR20, LinkStandard.HDMI_FRL48, 800, 600, 60, 8);

        assertThat(result.carried()).isEqualTo(Carried.NO);
        assertThat(result.availableBitsPerSecond()).isZero();
        assertThat(result.standard()).isEmpty();
        assertThat(result.requiredBitsPerSecond()).isPositive();
    }

    /** By hand: 8 bit/px x 2331.75 MHz (RBv1) = 18.654 Gbit/s, within 25.312. */
    @Test
    void compression_is_tried_with_the_first_blanking_first() {
        var result =
                DisplayLink.carries(
                        LinkStandard.DP_UHBR10, LinkStandard.DP_HBR3_DSC, 3840, 2160, 240, 10);

        assertThat(result.timing()).isEqualTo(TimingRule.CVT_RB1);
        assertThat(result.requiredBitsPerSecond()).isEqualTo(2_331_750_000L * 8);
    }

    /**
     * By hand: 7680 x 4320 x 120 x 8 bits is 31.9 Gbit/s in visible pixels alone, 25.3 are there.
     */
    @Test
    void a_mode_beyond_compression_is_refused() {
        var result =
                DisplayLink.carries(
                        LinkStandard.DP_HBR3_DSC, LinkStandard.DP_HBR3_DSC, 7680, 4320, 120, 8);

        assertThat(result.carried()).isEqualTo(Carried.NO);
        assertThat(result.availableBitsPerSecond()).isEqualTo(25_920_000_000L);
    }

    /** Source: edid-decode, 480.00 MHz by RBv1; by hand x 30 bits = 14.4 Gbit/s, HDMI 2.0's all. */
    @Test
    void a_mode_that_fills_the_link_to_the_last_bit_fits() {
        var result =
                DisplayLink.carries(
                        LinkStandard.HDMI_2_0, LinkStandard.HDMI_2_0, 2560, 1440, 116, 10);

        assertThat(result.carried()).isEqualTo(Carried.UNCOMPRESSED);
        assertThat(result.timing()).isEqualTo(TimingRule.CVT_RB1);
        assertThat(result.requiredBitsPerSecond())
                .isEqualTo(result.availableBitsPerSecond())
                .isEqualTo(14_400_000_000L);
    }

    /** Source: edid-decode, 2000.00 MHz by RBv1; by hand x 8 bits = 16 Gbit/s, this link's all. */
    @Test
    void a_compressed_mode_that_fills_the_link_to_the_last_bit_fits() {
        var result =
                DisplayLink.carries(
                        LinkStandard.HDMI_FRL18, LinkStandard.HDMI_FRL18, 5120, 2880, 124, 8);

        assertThat(result.carried()).isEqualTo(Carried.COMPRESSED);
        assertThat(result.timing()).isEqualTo(TimingRule.CVT_RB1);
        assertThat(result.requiredBitsPerSecond()).isEqualTo(result.availableBitsPerSecond());
    }

    /**
     * Source: edid-decode, 3176.50 MHz by RBv1 and 3106.005 MHz by RBv2; by hand x 8 bits 25.412
     * and 24.848 Gbit/s, of which 25.312 are there.
     */
    @Test
    void compression_takes_the_second_blanking_where_the_first_is_too_much() {
        var result =
                DisplayLink.carries(
                        LinkStandard.DP_HBR3_DSC, LinkStandard.DP_HBR3_DSC, 3440, 1440, 478, 8);

        assertThat(result.carried()).isEqualTo(Carried.COMPRESSED);
        assertThat(result.timing()).isEqualTo(TimingRule.CVT_RB2);
        assertThat(result.requiredBitsPerSecond()).isEqualTo(3_106_005_000L * 8);
    }

    @Test
    void nonsense_is_refused() {
        refused(
                "bitsPerColour",
                () ->
                        DisplayLink.carries(
                                LinkStandard.DP_HBR2, LinkStandard.DP_HBR2, 800, 600, 60, 0));
        refused(
                "refreshHz",
                () ->
                        DisplayLink.carries(
                                LinkStandard.DP_HBR2, LinkStandard.HDMI_1_4, 800, 600, -1, 8));
    }

    @Property(tries = 200)
    void a_lower_refresh_never_needs_a_faster_link(
            @ForAll @IntRange(min = 640, max = 7680) int widthPx,
            @ForAll @IntRange(min = 480, max = 4320) int heightPx,
            @ForAll @IntRange(min = 24, max = 359) int refreshHz) {
        for (LinkStandard link : LINKS) {
            var faster = DisplayLink.carries(link, link, widthPx, heightPx, refreshHz + 1, 8);
            var slower = DisplayLink.carries(link, link, widthPx, heightPx, refreshHz, 8);

            assertThat(slower.carried()).isLessThanOrEqualTo(faster.carried());
        }
    }
}
