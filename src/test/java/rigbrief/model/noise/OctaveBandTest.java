package rigbrief.model.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class OctaveBandTest {

    /** Source: IEC 61672-1, weights in a published table "A, C and U weighting". */
    @ParameterizedTest
    @CsvSource({
        "HZ_31_5,31.5,-39.4",
        "HZ_63,63,-26.2",
        "HZ_125,125,-16.1",
        "HZ_250,250,-8.6",
        "HZ_500,500,-3.2",
        "HZ_1000,1000,0",
        "HZ_2000,2000,1.2",
        "HZ_4000,4000,1.0",
        "HZ_8000,8000,-1.1",
        "HZ_16000,16000,-6.6"
    })
    void weights_are_those_of_the_standard(OctaveBand band, double nominalHz, double weightDb) {
        assertThat(band.nominalHz()).isEqualTo(nominalHz);
        assertThat(band.aWeightDb()).isEqualTo(weightDb);
    }

    /** By hand: exact centres are 1000 x 10^(3n/10), so 10^2.1 = 125.89 and 10^3.9 = 7943.3 Hz. */
    @Test
    void exact_centres_are_those_of_the_formula() {
        assertThat(OctaveBand.HZ_125.exactHz()).isCloseTo(125.893, within(0.001));
        assertThat(OctaveBand.HZ_1000.exactHz()).isEqualTo(1_000);
        assertThat(OctaveBand.HZ_8000.exactHz()).isCloseTo(7_943.28, within(0.01));
    }

    @ParameterizedTest
    @EnumSource
    void printed_centres_are_the_exact_ones_to_two_percent(OctaveBand band) {
        assertThat(band.exactHz() / band.nominalHz()).isCloseTo(1, within(0.02));
    }
}
