package rigbrief.model.link;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.model.link.LinkStandard.Family;

class LinkStandardTest {

    /**
     * Sources: DisplayPort lane rates from a chip maker's interface user guide 683273, 0.9671 from
     * an open operating system's kernel citing DisplayPort 2.1 section 3.5.2.18; HDMI rates from
     * two explanations of the fixed rate link; HDMI 1.4 from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "DP_RBR,5.184",
        "DP_HBR,8.64",
        "DP_HBR2,17.28",
        "DP_HBR3,25.92",
        "DP_HBR3_DSC,25.92",
        "DP_UHBR10,38.684",
        "DP_UHBR13_5,52.223",
        "DP_UHBR20,77.368",
        "HDMI_1_4,8.16",
        "HDMI_2_0,14.4",
        "HDMI_FRL9,8.000",
        "HDMI_FRL18,16.000",
        "HDMI_FRL24,21.333",
        "HDMI_FRL32,28.444",
        "HDMI_FRL40,35.556",
        "HDMI_FRL48,42.667"
    })
    void payloads_are_those_of_the_standards(LinkStandard standard, double gbitPerSecond) {
        assertThat(standard.payloadBitsPerSecond() / 1e9)
                .isCloseTo(gbitPerSecond, Offset.offset(0.0006));
    }

    /** By hand: 25.92 / 1.024016 = 25.3121 Gbit/s; the longer codes have paid already. */
    @Test
    void error_correction_is_paid_on_the_short_code_only() {
        assertThat(LinkStandard.DP_HBR3_DSC.compressedPayloadBitsPerSecond())
                .isEqualTo(25_312_104_498L);
        assertThat(LinkStandard.DP_UHBR10.compressedPayloadBitsPerSecond())
                .isEqualTo(LinkStandard.DP_UHBR10.payloadBitsPerSecond());
        assertThat(LinkStandard.HDMI_FRL48.compressedPayloadBitsPerSecond())
                .isEqualTo(42_666_666_666L);
    }

    @ParameterizedTest
    @CsvSource({
        "dp1.2,DP_HBR2",
        "dp1.3,DP_HBR3",
        "dp1.4,DP_HBR3_DSC",
        "dp2.1,DP_UHBR10",
        "dp2.1-uhbr13.5,DP_UHBR13_5",
        "dp2.1-uhbr20,DP_UHBR20",
        "hdmi1.4,HDMI_1_4",
        "hdmi2.0,HDMI_2_0",
        "hdmi2.1,HDMI_FRL48",
        "hdmi2.1-frl24,HDMI_FRL24"
    })
    void a_cell_names_its_standard(String id, LinkStandard standard) {
        assertThat(LinkStandard.of(id)).isEqualTo(standard);
    }

    @Test
    void every_standard_is_found_by_its_own_id() {
        for (LinkStandard standard : LinkStandard.values()) {
            assertThat(LinkStandard.find(standard.id())).contains(standard);
        }
    }

    @Test
    void an_unknown_port_is_refused_with_the_known_ones() {
        assertThat(LinkStandard.find("scart")).isEmpty();
        refused("port", () -> LinkStandard.of("scart"));
    }

    @Test
    void a_pair_runs_at_the_lesser_standard_whichever_way_round() {
        assertThat(LinkStandard.DP_UHBR20.common(LinkStandard.DP_HBR2))
                .contains(LinkStandard.DP_HBR2);
        assertThat(LinkStandard.DP_HBR2.common(LinkStandard.DP_UHBR20))
                .contains(LinkStandard.DP_HBR2);
        assertThat(LinkStandard.HDMI_2_0.common(LinkStandard.HDMI_2_0))
                .contains(LinkStandard.HDMI_2_0);
        assertThat(LinkStandard.HDMI_2_0.common(LinkStandard.DP_HBR2)).isEmpty();
    }

    /** Source: compression entered DisplayPort at 1.4 and HDMI at 2.1. */
    @Test
    void compression_begins_where_the_standards_say() {
        assertThat(LinkStandard.DP_HBR3.compresses()).isFalse();
        assertThat(LinkStandard.DP_HBR3_DSC.compresses()).isTrue();
        assertThat(LinkStandard.HDMI_2_0.compresses()).isFalse();
        assertThat(LinkStandard.HDMI_FRL9.compresses()).isTrue();
    }

    @Test
    void only_the_fixed_rate_links_pack_their_blanking() {
        assertThat(LinkStandard.HDMI_FRL24.packsBlanking()).isTrue();
        assertThat(LinkStandard.HDMI_2_0.packsBlanking()).isFalse();
        assertThat(LinkStandard.DP_UHBR10.packsBlanking()).isFalse();
        assertThat(LinkStandard.DP_UHBR10.family()).isEqualTo(Family.DISPLAYPORT);
    }
}
