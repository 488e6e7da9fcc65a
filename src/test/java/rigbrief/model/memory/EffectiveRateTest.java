package rigbrief.model.memory;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EffectiveRateTest {

    /** By hand: the least of kit, board and processor, wherever it stands. */
    @ParameterizedTest
    @CsvSource({"6000,6400,5600,5600", "6000,4800,5600,4800", "5200,6400,5600,5200", "1,1,1,1"})
    void the_slowest_of_the_three_decides(int kit, int board, int processor, int rate) {
        assertThat(EffectiveRate.mts(kit, board, processor)).isEqualTo(rate);
    }

    @Test
    void nonsense_is_refused() {
        refused("kitMts", () -> EffectiveRate.mts(0, 1, 1));
        refused("boardMtsForModules", () -> EffectiveRate.mts(1, 0, 1));
        refused("processorMts", () -> EffectiveRate.mts(1, 1, 0));
    }
}
