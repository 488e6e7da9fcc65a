package rigbrief.measurement.tune;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.measurement.tune.FrameCap.SteadyBy;

class CapFinderTest {
    private static final double NO_CAP = Double.POSITIVE_INFINITY;

    /** Hand calculation: whole fractions of the refresh rate, cut to a hundredth. */
    @ParameterizedTest
    @CsvSource({
        "165, 16499, 8250, 2",
        "165, 16500, 16500, 1",
        "165, 8249, 5500, 3",
        "165, 5499, 4125, 4",
        "144, 7000, 4800, 3",
        "60, 5999, 3000, 2"
    })
    void a_screen_without_variable_refresh_is_capped_at_a_fraction_held_in_full(
            int refreshHz, long held, long cap, int refreshes) {
        CapFinder finder = new CapFinder(screen(refreshHz, OptionalInt.of(0)), NO_CAP);

        Optional<FrameCap> found = finder.highest(held, 60);

        assertThat(found)
                .contains(
                        new FrameCap(
                                cap,
                                refreshes == 1 ? SteadyBy.REFRESH : SteadyBy.DIVISOR,
                                refreshes));
        assertThat(finder.highestFixed(held)).isEqualTo(found);
    }

    @Test
    void a_screen_without_variable_refresh_has_no_cap_below_24() {
        CapFinder finder = new CapFinder(screen(60, OptionalInt.of(0)), NO_CAP);

        assertThat(finder.highest(2_999, 60)).isEmpty();
    }

    /** Common practice: nine tenths of 60 are 54. */
    @ParameterizedTest
    @CsvSource({"5400, 6000", "5399, 5500", "16200, 16200", "99900, 16200", "4000, 4125"})
    void a_screen_that_waits_holds_a_cap_from_nine_tenths_on(long held, long cap) {
        CapFinder finder = new CapFinder(screen(165, OptionalInt.of(48)), NO_CAP);

        assertThat(finder.highest(held, 60).map(FrameCap::hundredthsFps)).contains(cap);
    }

    @Test
    void a_rate_below_the_range_is_shown_twice_if_twice_it_is_within_the_screens_reach() {
        CapFinder narrow = new CapFinder(screen(75, OptionalInt.of(48)), NO_CAP);

        // 40 is below 48, and 80 is beyond 75; every second refresh is 37.5.
        assertThat(narrow.highest(4_000, 60).map(FrameCap::hundredthsFps)).contains(3_750L);
    }

    @Test
    void a_target_that_is_no_usual_rate_is_a_candidate_too() {
        CapFinder finder = new CapFinder(screen(144, OptionalInt.of(48)), NO_CAP);

        assertThat(finder.highest(6_000, 66).map(FrameCap::hundredthsFps)).contains(6_600L);
        assertThat(finder.highest(6_000, 60).map(FrameCap::hundredthsFps)).contains(6_000L);
    }

    @Test
    void the_engines_own_cap_is_the_highest() {
        CapFinder finder = new CapFinder(screen(360, OptionalInt.of(48)), 300);

        assertThat(finder.highest(99_900, 60).map(FrameCap::hundredthsFps)).contains(30_000L);
    }

    @Test
    void without_a_screen_the_usual_rates_are_left() {
        CapFinder finder =
                new CapFinder(new ScreenPace(OptionalInt.empty(), OptionalInt.empty()), NO_CAP);

        assertThat(finder.highest(6_600, 60).map(FrameCap::hundredthsFps)).contains(7_200L);
        assertThat(finder.highestFixed(6_600)).isEmpty();
    }

    private static ScreenPace screen(int refreshHz, OptionalInt variableFromHz) {
        return new ScreenPace(OptionalInt.of(refreshHz), variableFromHz);
    }
}
