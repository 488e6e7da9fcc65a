package rigbrief.model.link;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;

class DisplayTimingTest {

    /** By hand: 148.5 MHz / (2200 x 1125) = 60 Hz; x 24 bits = 3.564 Gbit/s. */
    @Test
    void rate_and_bits_follow_from_clock_and_totals() {
        var timing = new DisplayTiming(148_500_000, 2200, 1125);

        assertThat(timing.refreshHz()).isEqualTo(60);
        assertThat(timing.bitsPerSecond(24)).isEqualTo(3_564_000_000L);
    }

    @Test
    void nonsense_is_refused() {
        refused("pixelClockHz", () -> new DisplayTiming(0, 1, 1));
        refused("horizontalTotal", () -> new DisplayTiming(1, 0, 1));
        refused("verticalTotal", () -> new DisplayTiming(1, 1, 0));
        refused("bitsPerPixel", () -> new DisplayTiming(1, 1, 1).bitsPerSecond(0));
    }
}
