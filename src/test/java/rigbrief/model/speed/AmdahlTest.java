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

class AmdahlTest {
    private static final double UNLIMITED = Double.POSITIVE_INFINITY;

    /** Source: university course notes on Amdahl's law (limit 20); the rest by hand. */
    @ParameterizedTest
    @DisplayName("PERF-01: f = 0.95 on 8, 16, 20 and unlimited workers: 5.926, 9.143, 10.256, 20")
    @CsvSource({"8,5.926", "16,9.143", "20,10.256", "Infinity,20"})
    void nineteen_twentieths_spread(double workers, double speedUp) {
        assertThat(Amdahl.speedUp(0.95, workers)).isCloseTo(speedUp, within(0.001));
    }

    /** Source: the same notes. */
    @Test
    @DisplayName("PERF-02: f = 0.6 three times as fast gives 1.667, without limit 2.5")
    void three_fifths_spread() {
        assertThat(Amdahl.speedUp(0.6, 3)).isCloseTo(1.667, within(0.001));
        assertThat(Amdahl.speedUp(0.6, UNLIMITED)).isCloseTo(2.5, within(1e-12));
    }

    /** Source: the same notes. */
    @Test
    @DisplayName("PERF-03: f = 0.99 gives at most 100")
    void ninety_nine_hundredths_spread() {
        assertThat(Amdahl.speedUp(0.99, UNLIMITED)).isCloseTo(100, within(1e-9));
    }

    /** Textbook case, from memory. */
    @Test
    @DisplayName("PERF-04: f = 0.4 ten times as fast gives 1.5625")
    void two_fifths_enhanced() {
        assertThat(Amdahl.speedUp(0.4, 10)).isCloseTo(1.5625, within(1e-12));
    }

    /** Gustafson's form, from memory: 0.05 + 0.95 x 8. */
    @Test
    @DisplayName("PERF-07: work that grows with 8 workers at f = 0.95 gives 7.65")
    void work_that_grows_with_the_machine() {
        assertThat(Amdahl.scaledSpeedUp(0.95, 8)).isCloseTo(7.65, within(1e-12));
    }

    @Test
    void nothing_spread_or_one_worker_is_no_faster() {
        assertThat(Amdahl.speedUp(0, 8)).isEqualTo(1);
        assertThat(Amdahl.speedUp(1, 8)).isEqualTo(8);
        assertThat(Amdahl.speedUp(0.5, 1)).isEqualTo(1);
        assertThat(Amdahl.scaledSpeedUp(0, 8)).isEqualTo(1);
        assertThat(Amdahl.scaledSpeedUp(0.5, 1)).isEqualTo(1);
    }

    @Test
    void nonsense_is_refused() {
        refused("parallelShare", () -> Amdahl.speedUp(1.1, 8));
        refused("factor", () -> Amdahl.speedUp(0.5, 0.9));
        refused("factor", () -> Amdahl.speedUp(0.5, Double.NaN));
        refused("parallelShare", () -> Amdahl.scaledSpeedUp(-0.1, 8));
        refused("factor", () -> Amdahl.scaledSpeedUp(0.5, 0));
    }

    @Property(tries = 500)
    void more_workers_never_slow_down_nor_beat_their_number(
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 1, max = 64) double workers) {
        double speedUp = Amdahl.speedUp(share, workers);

        assertThat(speedUp).isBetween(1 - 1e-12, workers + 1e-9);
        assertThat(Amdahl.speedUp(share, workers + 1)).isGreaterThanOrEqualTo(speedUp - 1e-12);
        assertThat(Amdahl.scaledSpeedUp(share, workers)).isGreaterThanOrEqualTo(speedUp - 1e-9);
    }
}
