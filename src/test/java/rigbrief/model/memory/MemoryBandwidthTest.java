package rigbrief.model.memory;

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

class MemoryBandwidthTest {

    /** Source: the arithmetic of the i2c-tools 4.3 module decoder (Debian), exact 2933 1/3 MT/s. */
    @Test
    @DisplayName("MEM-01: DDR4-2933 is PC4-23400, not 23500")
    void the_name_is_cut_down_not_rounded() {
        assertThat(MemoryBandwidth.moduleName(4, 2_933)).isEqualTo("PC4-23400");
    }

    /** By hand: 6000 x 8 x 2. */
    @Test
    @DisplayName("MEM-02: two DDR5-6000 modules on two channels pass 96.0 GB/s")
    void two_channels() {
        assertThat(MemoryBandwidth.bytesPerSecond(6_000, 2)).isEqualTo(96.0e9);
    }

    /** Computed apart from this program by the rule of the i2c-tools decoder. */
    @ParameterizedTest
    @CsvSource({
        "4,2133,17.067,PC4-17000",
        "4,2400,19.200,PC4-19200",
        "4,2666,21.333,PC4-21300",
        "4,2933,23.467,PC4-23400",
        "4,3200,25.600,PC4-25600",
        "5,4800,38.400,PC5-38400",
        "5,5600,44.800,PC5-44800",
        "5,6000,48.000,PC5-48000",
        "5,6400,51.200,PC5-51200"
    })
    void names_and_rates_are_those_of_the_table(
            int generation, int ratedMts, double gbPerSecond, String name) {
        assertThat(MemoryBandwidth.bytesPerSecond(ratedMts, 1) / 1e9)
                .isCloseTo(gbPerSecond, within(0.0006));
        assertThat(MemoryBandwidth.moduleName(generation, ratedMts)).isEqualTo(name);
    }

    /** By hand: 2665 and 3199 MT/s are no rounded thirds and stay, 2667 is 2666 2/3. */
    @Test
    void only_a_rate_sold_rounded_is_taken_for_a_third() {
        assertThat(MemoryBandwidth.bytesPerSecond(2_665, 1)).isCloseTo(2_665 * 8e6, within(1.0));
        assertThat(MemoryBandwidth.bytesPerSecond(3_199, 1)).isCloseTo(3_199 * 8e6, within(1.0));
        assertThat(MemoryBandwidth.bytesPerSecond(2_667, 1))
                .isEqualTo(MemoryBandwidth.bytesPerSecond(2_666, 1));
    }

    @Test
    void a_rate_beyond_the_standards_gets_a_caution() {
        assertThat(MemoryBandwidth.RATE_MTS.remark(10_000)).isPresent();
        assertThat(MemoryBandwidth.RATE_MTS.remark(8_800)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("ratedMts", () -> MemoryBandwidth.bytesPerSecond(0, 1));
        refused("channels", () -> MemoryBandwidth.bytesPerSecond(3_200, 0));
        refused("generation", () -> MemoryBandwidth.moduleName(3, 1_600));
        refused("generation", () -> MemoryBandwidth.moduleName(6, 1_600));
    }

    @Property(tries = 300)
    void a_faster_kit_never_passes_less(@ForAll @IntRange(min = 1_600, max = 8_800) int mts) {
        assertThat(MemoryBandwidth.bytesPerSecond(mts + 1, 2))
                .isGreaterThanOrEqualTo(MemoryBandwidth.bytesPerSecond(mts, 2));
    }
}
