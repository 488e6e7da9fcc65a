package rigbrief.model.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleMomentsTest {
    private static final String DATASETS = "/org/apache/commons/math3/stat/data/";

    /**
     * Source: NIST statistical reference datasets, univariate summary statistics, certified values;
     * the data as they lie in the tests of commons-math3.
     */
    @ParameterizedTest
    @CsvSource({
        "PiDigits,5000,4.53480000000000,2.86733906028871,1e-12",
        "Lottery,218,518.958715596330,291.699727470969,1e-12",
        "Lew,200,-177.435000000000,277.332168044316,1e-12",
        "Mavro,50,2.00185600000000,0.000429123454003053,1e-12",
        "Michelso,100,299.852400000000,0.0790105478190518,1e-12",
        "NumAcc1,3,10000002,1,1e-12",
        "NumAcc2,1001,1.2,0.1,1e-12",
        "NumAcc3,1001,1000000.2,0.1,1e-9",
        "NumAcc4,1001,10000000.2,0.1,1e-7"
    })
    void certified_values_are_met(
            String dataset, int count, double mean, double deviation, double tolerance)
            throws IOException {
        double[] values = read(dataset);

        assertThat(values).hasSize(count);
        assertThat(SampleMoments.mean(values)).isCloseTo(mean, within(1e-12 * Math.abs(mean)));
        // The decimals of the last two sets are not exact in binary, which bounds any algorithm.
        assertThat(SampleMoments.deviation(values))
                .isCloseTo(deviation, within(tolerance * deviation));
    }

    private static double[] read(String dataset) throws IOException {
        var stream = SampleMomentsTest.class.getResourceAsStream(DATASETS + dataset + ".txt");
        try (var reader =
                new BufferedReader(new InputStreamReader(stream, StandardCharsets.US_ASCII))) {
            return reader.lines()
                    .map(String::strip)
                    .filter(it -> it.matches("[-+]?[0-9.]+([eE][-+]?[0-9]+)?"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        }
    }

    /** By hand: 1, 2, 3 and 4 deviate by sqrt(5/3) from 2.5. */
    @Test
    void a_handful_of_numbers() {
        assertThat(SampleMoments.sum(1, 2, 3, 4)).isEqualTo(10);
        assertThat(SampleMoments.mean(1, 2, 3, 4)).isEqualTo(2.5);
        assertThat(SampleMoments.deviation(1, 2, 3, 4))
                .isCloseTo(Math.sqrt(5.0 / 3), within(1e-15));
        assertThat(SampleMoments.deviation(7, 7)).isZero();
        assertThat(SampleMoments.sum()).isZero();
    }

    @Test
    void a_small_number_survives_between_two_large_ones() {
        assertThat(SampleMoments.sum(1e17, 1, -1e17)).isEqualTo(1);
        assertThat(SampleMoments.sum(1, 1e17, -1e17)).isEqualTo(1);
    }

    /** By hand: logarithms of 1 and e² are 0 and 2, whose deviation is sqrt(2). */
    @Test
    void a_spread_of_ratios_is_the_deviation_of_logarithms() {
        assertThat(SampleMoments.logDeviation(1, Math.exp(2)))
                .isCloseTo(Math.sqrt(2), within(1e-12));
    }

    /**
     * By hand: 0, 2 and 2 deviate by sqrt(4/3); at 1e16, where numbers lie 2 apart, their mean
     * cannot be written down, and the correction makes up for it.
     */
    @Test
    void a_mean_that_is_rounded_does_not_spoil_the_deviation() {
        assertThat(SampleMoments.deviation(1e16, 1e16 + 2, 1e16 + 2))
                .isCloseTo(Math.sqrt(4.0 / 3), within(1e-12));
    }

    @Test
    void nonsense_is_refused() {
        refused("number of values", SampleMoments::mean);
        refused("number of values less one", () -> SampleMoments.deviation(1));
        refused("value", () -> SampleMoments.logDeviation(1, 0));
        refused("number of values less one", () -> SampleMoments.logDeviation(1));
    }

    /** Reference: commons-math3. */
    @Property(tries = 300)
    void mean_and_deviation_are_those_of_a_statistics_library(
            @ForAll @Size(min = 2, max = 50)
                    List<@DoubleRange(min = -500, max = 500) Double> sample) {
        double[] values = sample.stream().mapToDouble(it -> it).toArray();

        assertThat(SampleMoments.mean(values)).isCloseTo(StatUtils.mean(values), within(1e-9));
        assertThat(SampleMoments.deviation(values))
                .isCloseTo(Math.sqrt(StatUtils.variance(values)), within(1e-9));
        assertThat(SampleMoments.sum(values)).isCloseTo(Arrays.stream(values).sum(), within(1e-9));
    }
}
