package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class YearlyEnergyTest {

    /** By hand: 8.76 x (0.5 x 0.45 + 2 x 0.05 + 30 x 0.15 + 35 x 0.35). */
    @Test
    @DisplayName("TEC-01: 0.5, 2, 30 and 35 W of a conventional desktop are 149.577 kWh a year")
    void a_conventional_year() {
        assertThat(YearlyEnergy.kwh(DutyCycle.CONVENTIONAL, 0.5, 2, 30, 35))
                .isCloseTo(149.577, within(0.001));
    }

    /** By hand: 8.76 x (0.5 x 0.20 + 2 x 0.45 + 30 x 0.05 + 35 x 0.30). */
    @Test
    @DisplayName("TEC-02: with full network capability they are 113.880 kWh")
    void a_year_mostly_asleep() {
        assertThat(YearlyEnergy.kwh(DutyCycle.FULL_CAPABILITY, 0.5, 2, 30, 35))
                .isCloseTo(113.880, within(0.001));
    }

    /** By hand: 100 x 4 x 365 / 1000 = 146 kWh; x 0.25 = 36.50. */
    @Test
    @DisplayName("TEC-06: 100 W for 4 hours a day are 146.0 kWh and cost 36.50 at 0.25")
    void a_steady_daily_use() {
        double kwh = YearlyEnergy.ofDailyUseKwh(100, 4);

        assertThat(kwh).isEqualTo(146.0);
        assertThat(YearlyEnergy.cost(kwh, new BigDecimal("0.25"))).isEqualByComparingTo("36.50");
    }

    /** By hand: (300 - 50) W x 1000 h = 250 kWh. */
    @Test
    void work_takes_the_place_of_idling() {
        assertThat(YearlyEnergy.addedByLoadKwh(300, 50, 1_000)).isEqualTo(250);
        assertThat(YearlyEnergy.addedByLoadKwh(300, 50, 0)).isZero();
        assertThat(YearlyEnergy.addedByLoadKwh(40, 50, 100)).isEqualTo(-1);
    }

    @Test
    void every_state_counts_with_its_own_weight() {
        assertThat(YearlyEnergy.kwh(DutyCycle.CONVENTIONAL, 100, 0, 0, 0))
                .isCloseTo(394.2, within(1e-9));
        assertThat(YearlyEnergy.kwh(DutyCycle.CONVENTIONAL, 0, 100, 0, 0))
                .isCloseTo(43.8, within(1e-9));
        assertThat(YearlyEnergy.kwh(DutyCycle.CONVENTIONAL, 0, 0, 100, 0))
                .isCloseTo(131.4, within(1e-9));
        assertThat(YearlyEnergy.kwh(DutyCycle.CONVENTIONAL, 0, 0, 0, 100))
                .isCloseTo(306.6, within(1e-9));
    }

    /** By hand: 0.1235 kWh count as 0.124 kWh; x 2 = 0.248, exact and not rounded. */
    @Test
    void cost_counts_whole_watt_hours_and_keeps_every_digit() {
        assertThat(YearlyEnergy.cost(0.1235, new BigDecimal("2"))).isEqualByComparingTo("0.248");
        assertThat(YearlyEnergy.cost(1, new BigDecimal("0.31415"))).isEqualByComparingTo("0.31415");
        assertThat(YearlyEnergy.cost(100, BigDecimal.ZERO)).isEqualByComparingTo("0");
    }

    @Test
    void a_year_at_work_day_and_night_gets_a_caution() {
        assertThat(YearlyEnergy.LOAD_HOURS.remark(8_000)).isPresent();
        assertThat(YearlyEnergy.LOAD_HOURS.remark(2_000)).isEmpty();
    }

    @Test
    void a_day_and_a_year_have_no_more_hours_than_they_have() {
        assertThat(YearlyEnergy.ofDailyUseKwh(1, 24)).isEqualTo(8.76);
        assertThat(YearlyEnergy.addedByLoadKwh(1, 0, 8_760)).isEqualTo(8.76);
        refused("hoursADay", () -> YearlyEnergy.ofDailyUseKwh(1, 24.1));
        refused("hoursAYear", () -> YearlyEnergy.addedByLoadKwh(1, 0, 8_761));
    }

    @Test
    void nonsense_is_refused() {
        refused("offW", () -> YearlyEnergy.kwh(DutyCycle.CONVENTIONAL, -1, 0, 0, 0));
        refused("sleepW", () -> YearlyEnergy.kwh(DutyCycle.CONVENTIONAL, 0, -1, 0, 0));
        refused("longIdleW", () -> YearlyEnergy.kwh(DutyCycle.CONVENTIONAL, 0, 0, -1, 0));
        refused("shortIdleW", () -> YearlyEnergy.kwh(DutyCycle.CONVENTIONAL, 0, 0, 0, -1));
        refused("loadW", () -> YearlyEnergy.addedByLoadKwh(-1, 0, 0));
        refused("shortIdleW", () -> YearlyEnergy.addedByLoadKwh(0, -1, 0));
        refused("hoursAYear", () -> YearlyEnergy.addedByLoadKwh(0, 0, -1));
        refused("averageW", () -> YearlyEnergy.ofDailyUseKwh(-1, 1));
        refused("hoursADay", () -> YearlyEnergy.ofDailyUseKwh(1, -1));
        refused("kwh", () -> YearlyEnergy.cost(-1, BigDecimal.ONE));
        refused("tariffPerKwh", () -> YearlyEnergy.cost(1, new BigDecimal("-0.01")));
    }

    @Property(tries = 500)
    void more_watts_never_use_less_energy(
            @ForAll @DoubleRange(min = 0, max = 300) double idleW,
            @ForAll @DoubleRange(min = 0, max = 100) double moreW) {
        for (DutyCycle cycle : DutyCycle.values()) {
            assertThat(YearlyEnergy.kwh(cycle, 0.5, 2, idleW + moreW, idleW + moreW))
                    .isGreaterThanOrEqualTo(YearlyEnergy.kwh(cycle, 0.5, 2, idleW, idleW));
        }
    }
}
