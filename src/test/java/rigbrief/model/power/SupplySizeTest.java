package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupplySizeTest {

    /** By hand: load / share, then the next size on sale (common practice). */
    @ParameterizedTest
    @CsvSource({
        "0,0.8,300",
        "240,0.8,300",
        "240.001,0.8,350",
        "400,0.8,500",
        "401,0.8,550",
        "500,0.8,650",
        "700,1,750",
        "1280,0.8,1600"
    })
    void the_least_size_keeps_the_planned_share(double loadW, double share, int sizeW) {
        assertThat(SupplySize.leastW(loadW, share)).hasValue(sizeW);
    }

    @Test
    void above_the_largest_size_there_is_none() {
        assertThat(SupplySize.leastW(1_281, SupplySize.PLANNED_SHARE)).isEmpty();
        assertThat(SupplySize.nextUpW(1_600)).isEmpty();
    }

    @Test
    void the_reserve_is_the_next_size_up() {
        assertThat(SupplySize.nextUpW(550)).hasValue(650);
        assertThat(SupplySize.nextUpW(600)).hasValue(650);
        assertThat(SupplySize.nextUpW(0)).hasValue(300);
    }

    @Test
    void nonsense_is_refused() {
        refused("sustainedW", () -> SupplySize.leastW(-1, 0.8));
        refused("plannedShare", () -> SupplySize.leastW(1, 0));
        refused("plannedShare", () -> SupplySize.leastW(1, 1.1));
    }
}
