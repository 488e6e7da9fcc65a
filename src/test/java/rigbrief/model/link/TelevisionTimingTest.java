package rigbrief.model.link;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TelevisionTimingTest {

    /** Source: CTA-861, clocks as listed by edid-decode (Debian 12), --list-vics. */
    @ParameterizedTest
    @CsvSource({
        "1920,1080,60,148.5",
        "1920,1080,120,297",
        "3840,2160,60,594",
        "3840,2160,120,1188",
        "5120,2160,60,742.5",
        "7680,4320,60,2376"
    })
    void clocks_are_those_of_the_standard(int widthPx, int heightPx, int refreshHz, double mhz) {
        var timing = TelevisionTiming.find(widthPx, heightPx, refreshHz).orElseThrow();

        assertThat(timing.pixelClockHz()).isEqualTo(Math.round(mhz * 1e6));
        assertThat(timing.refreshHz()).isEqualTo(refreshHz);
        assertThat(timing.horizontalTotal()).isGreaterThan(widthPx);
        assertThat(timing.verticalTotal()).isGreaterThan(heightPx);
    }

    @Test
    void an_unlisted_mode_has_no_fixed_timing() {
        assertThat(TelevisionTiming.find(1920, 1080, 144)).isEmpty();
        assertThat(TelevisionTiming.find(1920, 1200, 60)).isEmpty();
        assertThat(TelevisionTiming.find(1921, 1080, 60)).isEmpty();
    }

    @Test
    void each_mode_gives_its_own_timing() {
        assertThat(TelevisionTiming.ULTRA_60.timing().pixelClockHz()).isEqualTo(594_000_000L);
    }
}
