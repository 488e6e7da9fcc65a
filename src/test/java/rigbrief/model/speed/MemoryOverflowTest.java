package rigbrief.model.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class MemoryOverflowTest {

    /** By hand: 10 GB in 8 GB are a quarter too much, x penalty 4 = 1 more. */
    @Test
    void a_quarter_too_much_costs_a_quarter_of_the_penalty() {
        assertThat(MemoryOverflow.factor(10, 8, 4)).isCloseTo(2, within(1e-12));
    }

    @Test
    void what_fits_costs_nothing() {
        assertThat(MemoryOverflow.factor(8, 8, 4)).isEqualTo(1);
        assertThat(MemoryOverflow.factor(0, 8, 4)).isEqualTo(1);
        assertThat(MemoryOverflow.factor(10, 8, 0)).isEqualTo(1);
    }

    @Test
    void far_more_than_there_is_gets_a_caution() {
        assertThat(MemoryOverflow.NEEDED_SHARE.remark(2)).isPresent();
        assertThat(MemoryOverflow.NEEDED_SHARE.remark(1.2)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("neededGb", () -> MemoryOverflow.factor(-1, 8, 4));
        refused("availableGb", () -> MemoryOverflow.factor(1, 0, 4));
        refused("penalty", () -> MemoryOverflow.factor(1, 8, -4));
    }

    @Property(tries = 300)
    void more_memory_never_slows_down(
            @ForAll @DoubleRange(min = 0, max = 64) double neededGb,
            @ForAll @DoubleRange(min = 1, max = 64) double availableGb,
            @ForAll @DoubleRange(min = 0, max = 32) double moreGb) {
        double factor = MemoryOverflow.factor(neededGb, availableGb, 4);

        assertThat(factor).isGreaterThanOrEqualTo(1);
        assertThat(MemoryOverflow.factor(neededGb, availableGb + moreGb, 4))
                .isLessThanOrEqualTo(factor);
    }
}
