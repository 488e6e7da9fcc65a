package rigbrief.model.memory;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SataLinkTest {

    /** Source: a chipset support note "Serial ATA transfer rates". */
    @Test
    @DisplayName("STO-01: the third SATA generation passes 600 MB/s")
    void the_third_generation() {
        assertThat(SataLink.bytesPerSecond(3)).isEqualTo(600_000_000);
    }

    /** Source: the same note; 1.5, 3.0 and 6.0 Gbit/s x 0.8 / 8. */
    @ParameterizedTest
    @CsvSource({"1,1.5", "2,3.0", "3,6.0"})
    void payload_is_the_line_rate_after_coding(int generation, double lineGbits) {
        assertThat(SataLink.bytesPerSecond(generation))
                .isEqualTo(Math.round(lineGbits * 1e9 * 0.8 / 8));
    }

    @Test
    void a_generation_that_does_not_exist_is_refused() {
        refused("generation", () -> SataLink.bytesPerSecond(0));
        refused("generation", () -> SataLink.bytesPerSecond(4));
    }
}
