package rigbrief.model.pcie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PcieLinkTest {

    /** Source: line rates and codings of an open operating system's kernel (pci.h). */
    @ParameterizedTest
    @CsvSource({
        "1,250,1.000,2.000,4.000",
        "2,500,2.000,4.000,8.000",
        "3,984.615,3.938,7.877,15.754",
        "4,1969.231,7.877,15.754,31.508",
        "5,3938.462,15.754,31.508,63.015",
        "6,8000,32.0,64.0,128.0"
    })
    void throughput_is_that_of_the_generation(
            int generation, double laneMbs, double x4Gbs, double x8Gbs, double x16Gbs) {
        assertThat(throughput(generation, 1) / 1e6).isCloseTo(laneMbs, within(0.001));
        assertThat(throughput(generation, 4) / 1e9).isCloseTo(x4Gbs, within(0.001));
        assertThat(throughput(generation, 8) / 1e9).isCloseTo(x8Gbs, within(0.001));
        assertThat(throughput(generation, 16) / 1e9).isCloseTo(x16Gbs, within(0.001));
    }

    private static double throughput(int generation, int lanes) {
        return PcieLink.throughputBytesPerSecond(generation, lanes);
    }

    /** Source: as above, 16 GT/s x 128/130 / 8 x 4. */
    @Test
    @DisplayName("PCIE-01: generation 4 x4 passes 7.877 GB/s")
    void a_fourth_generation_drive() {
        assertThat(throughput(4, 4) / 1e9).isCloseTo(7.877, within(0.001));
    }

    /** Source: as above. */
    @Test
    @DisplayName("PCIE-02: generation 3 x16 equals generation 4 x8, 15.754 GB/s")
    void twice_the_lanes_make_up_for_half_the_rate() {
        assertThat(throughput(3, 16)).isEqualTo(throughput(4, 8));
        assertThat(throughput(3, 16) / 1e9).isCloseTo(15.754, within(0.001));
    }

    /** From memory: both ends agree on the lesser generation and the lesser width. */
    @Test
    @DisplayName(
            "PCIE-03: a generation 5 x8 card in a generation 3 slot wired x4 runs at 3.938 GB/s")
    void a_card_and_a_slot_meet_at_the_lesser_of_both() {
        var card = new PcieLink(5, 8);
        var slot = new PcieLink(3, 4);

        assertThat(card.with(slot)).isEqualTo(slot.with(card)).isEqualTo(new PcieLink(3, 4));
        assertThat(card.with(slot).bytesPerSecond() / 1e9).isCloseTo(3.938, within(0.001));
    }

    @Test
    void what_the_standard_does_not_have_is_refused() {
        refused("generation", () -> new PcieLink(0, 16));
        refused("generation", () -> new PcieLink(7, 16));
        refused("lanes", () -> new PcieLink(4, 0));
        refused("lanes", () -> new PcieLink(4, 3));
        refused("lanes", () -> new PcieLink(4, 32));
    }
}
