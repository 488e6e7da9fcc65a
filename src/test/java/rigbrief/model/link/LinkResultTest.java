package rigbrief.model.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.model.link.LinkResult.Carried;

class LinkResultTest {

    private static LinkResult result(LinkStandard standard, long required, long available) {
        return new LinkResult(
                Carried.NO, TimingRule.CVT_RB2, required, available, Optional.ofNullable(standard));
    }

    /**
     * From memory: 3840 x 2160 at 120 Hz and 30 bits in television timing needs 35.640 Gbit/s
     * against 35.556 on a 40 Gbit/s link, and is commonly offered on such ports.
     */
    @Test
    void within_a_hundredth_on_a_packing_link_only_a_declared_mode_settles_it() {
        long required = TelevisionTiming.ULTRA_120.timing().bitsPerSecond(30);
        long available = LinkStandard.HDMI_FRL40.payloadBitsPerSecond();

        assertThat(required).isGreaterThan(available);
        assertThat(result(LinkStandard.HDMI_FRL40, required, available).needsDeclaredMode())
                .isTrue();
    }

    @Test
    void the_hundredth_is_counted_from_the_available_rate_and_includes_its_end() {
        assertThat(result(LinkStandard.HDMI_FRL40, 101, 100).needsDeclaredMode()).isTrue();
        assertThat(result(LinkStandard.HDMI_FRL40, 99, 100).needsDeclaredMode()).isTrue();
        assertThat(result(LinkStandard.HDMI_FRL40, 102, 100).needsDeclaredMode()).isFalse();
        assertThat(result(LinkStandard.HDMI_FRL40, 98, 100).needsDeclaredMode()).isFalse();
    }

    @Test
    void other_links_and_no_link_are_settled_by_arithmetic() {
        assertThat(result(LinkStandard.DP_HBR3, 100, 100).needsDeclaredMode()).isFalse();
        assertThat(result(null, 0, 0).needsDeclaredMode()).isFalse();
    }

    @Test
    void both_ways_of_carrying_fit() {
        for (Carried carried : Carried.values()) {
            var result = new LinkResult(carried, TimingRule.CVT_RB1, 1, 1, Optional.empty());

            assertThat(result.fits()).isEqualTo(carried != Carried.NO);
        }
    }
}
