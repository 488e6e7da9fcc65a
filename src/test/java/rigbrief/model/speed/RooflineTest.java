package rigbrief.model.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The machine of Williams, Waterman, Patterson (2009), page 69: 17.6 GFlop/s and 15 GB/s. */
class RooflineTest {
    private static final double PEAK = 17.6e9;
    private static final double BANDWIDTH = 15e9;

    /** By hand from the paper's machine: min(17.6, 15 x intensity). */
    @ParameterizedTest
    @DisplayName("PERF-05: at 0.25, 0.5, 1.07 and 2 flop/byte it attains 3.75, 7.5, 16.05, 17.6")
    @CsvSource({"0.25,3.75", "0.5,7.5", "1.07,16.05", "2,17.6"})
    void the_lower_roof_holds(double intensity, double attainable) {
        assertThat(Roofline.attainablePerS(PEAK, BANDWIDTH, intensity) / 1e9)
                .isCloseTo(attainable, within(1e-9));
    }

    /** By hand: 17.6 / 15. */
    @Test
    @DisplayName("PERF-06: its ridge point is at 1.1733 flop/byte")
    void the_roofs_meet_at_the_ridge() {
        assertThat(Roofline.ridgePerByte(PEAK, BANDWIDTH)).isCloseTo(1.1733, within(0.0001));
    }

    /** By hand: 35.2 Gflop take 2 s; with 45 GB beside them 3 s. */
    @Test
    void time_is_that_of_the_slower_of_both() {
        assertThat(Roofline.seconds(35.2e9, PEAK, 15e9, BANDWIDTH)).isCloseTo(2, within(1e-12));
        assertThat(Roofline.seconds(35.2e9, PEAK, 45e9, BANDWIDTH)).isCloseTo(3, within(1e-12));
    }

    @Test
    void no_work_takes_no_time_even_without_a_rate() {
        assertThat(Roofline.workSeconds(0, 0)).isZero();
        assertThat(Roofline.workSeconds(10, 5)).isEqualTo(2);
        assertThat(Roofline.workSeconds(1, 0)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void nonsense_is_refused() {
        refused("peakPerS", () -> Roofline.attainablePerS(-1, 1, 1));
        refused("bytesPerS", () -> Roofline.attainablePerS(1, -1, 1));
        refused("operationsPerByte", () -> Roofline.attainablePerS(1, 1, -1));
        refused("peakPerS", () -> Roofline.ridgePerByte(-1, 1));
        refused("bytesPerS", () -> Roofline.ridgePerByte(1, 0));
        refused("work", () -> Roofline.workSeconds(-1, 1));
        refused("perS", () -> Roofline.workSeconds(1, -1));
    }

    @Property(tries = 500)
    void rate_and_time_tell_the_same(@ForAll @DoubleRange(min = 0.01, max = 100) double intensity) {
        double operations = 1e12;

        assertThat(Roofline.seconds(operations, PEAK, operations / intensity, BANDWIDTH))
                .isCloseTo(
                        operations / Roofline.attainablePerS(PEAK, BANDWIDTH, intensity),
                        within(1e-6));
    }
}
