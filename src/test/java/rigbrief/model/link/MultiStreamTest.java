package rigbrief.model.link;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MultiStreamTest {

    /** Source: an open operating system's kernel, test vectors of its multi-stream helper. */
    @ParameterizedTest
    @DisplayName("LINK-09: the bandwidth number meets the kernel's test vectors")
    @CsvSource({
        "154000,30,false,689",
        "234000,30,false,1047",
        "297000,24,false,1063",
        "332880,24,false,1191",
        "324540,24,false,1161",
        "324540,24,true,1189"
    })
    void bandwidth_numbers_are_those_of_the_kernel(
            int kilohertz, int bitsPerPixel, boolean corrected, long number) {
        assertThat(MultiStream.bandwidthNumber(kilohertz, bitsPerPixel, corrected))
                .isEqualTo(number);
    }

    /** By hand: 54 x 125 x 8 kHz at 8 bits: 54000 x 64/54 x 1.006 / 1000 = 64.384. */
    @Test
    void a_fraction_is_rounded_up() {
        assertThat(MultiStream.bandwidthNumber(54_000, 8, false)).isEqualTo(65);
    }

    /** By hand: 54 000 000 kHz at 1 bit: 54e6/8 x 64/54 x 1.006 / 1000 = 8048, a whole number. */
    @Test
    void a_whole_number_stays() {
        assertThat(MultiStream.bandwidthNumber(54_000_000, 1, false)).isEqualTo(8_048);
    }

    @Test
    void nonsense_is_refused() {
        refused("pixelClockKhz", () -> MultiStream.bandwidthNumber(0, 24, false));
        refused("bitsPerPixel", () -> MultiStream.bandwidthNumber(1, 0, false));
    }
}
