package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TypicalDrawTest {

    @Test
    void nothing_draws_more_at_rest_than_at_work() {
        assertThat(TypicalDraw.BOARD_IDLE_W).isLessThan(TypicalDraw.BOARD_LOAD_W);
        assertThat(TypicalDraw.MODULE_IDLE_W).isLessThan(TypicalDraw.MODULE_LOAD_W);
        assertThat(TypicalDraw.M2_DRIVE_IDLE_W).isLessThan(TypicalDraw.M2_DRIVE_LOAD_W);
        assertThat(TypicalDraw.SATA_DRIVE_IDLE_W).isLessThan(TypicalDraw.SATA_DRIVE_LOAD_W);
        assertThat(TypicalDraw.DISK_IDLE_W).isLessThan(TypicalDraw.DISK_LOAD_W);
        assertThat(TypicalDraw.OFF_MAINS_W).isLessThan(TypicalDraw.SLEEP_MAINS_W);
    }

    /**
     * Source: an M.2 slot gives 3.3 V at no more than about 2.5 A to a drive, so 8 W bound it;
     * Regulation (EU) No 617/2013 allows 0.5 W switched off (both from memory).
     */
    @Test
    void typical_values_stay_within_what_standards_allow() {
        assertThat(TypicalDraw.M2_DRIVE_LOAD_W).isLessThan(3.3 * 2.5);
        assertThat(TypicalDraw.OFF_MAINS_W).isLessThanOrEqualTo(0.5);
    }

    /** By hand: 6 + 0.08 x 100 and 5 + 0.05 x 300 (common practice). */
    @Test
    void idle_power_is_a_constant_and_a_share() {
        assertThat(TypicalDraw.processorIdleW(100)).isCloseTo(14, within(1e-12));
        assertThat(TypicalDraw.cardIdleW(300)).isCloseTo(20, within(1e-12));
    }

    @Test
    void a_small_part_idles_at_no_more_than_it_works_at() {
        assertThat(TypicalDraw.processorIdleW(5)).isEqualTo(5);
        assertThat(TypicalDraw.cardIdleW(4)).isEqualTo(4);
        assertThat(TypicalDraw.processorIdleW(0)).isZero();
        assertThat(TypicalDraw.cardIdleW(0)).isZero();
    }

    @Test
    void nonsense_is_refused() {
        refused("sustainedW", () -> TypicalDraw.processorIdleW(-1));
        refused("boardPowerW", () -> TypicalDraw.cardIdleW(-1));
    }

    @Property(tries = 300)
    void a_larger_part_never_idles_at_less(
            @ForAll @DoubleRange(min = 0, max = 600) double watts,
            @ForAll @DoubleRange(min = 0, max = 100) double more) {
        assertThat(TypicalDraw.processorIdleW(watts + more))
                .isGreaterThanOrEqualTo(TypicalDraw.processorIdleW(watts));
        assertThat(TypicalDraw.cardIdleW(watts + more))
                .isGreaterThanOrEqualTo(TypicalDraw.cardIdleW(watts));
    }
}
