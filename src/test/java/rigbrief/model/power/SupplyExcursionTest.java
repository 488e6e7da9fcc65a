package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;
import static rigbrief.model.power.DesignGuide.ATX2;
import static rigbrief.model.power.DesignGuide.ATX3_0;
import static rigbrief.model.power.DesignGuide.ATX3_1;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupplyExcursionTest {

    /** Source: design guide 613768 revision 2.01, table 3-3: 160 % of 850 W for 10 ms. */
    @Test
    @DisplayName("PSU-03: 850 W with the 16-contact plug stand 1300 W for 10 ms (limit 1360 W)")
    void a_large_supply_stands_a_short_peak() {
        assertThat(SupplyExcursion.allowedW(ATX3_0, 850, true, 10)).isEqualTo(1_360);
        assertThat(SupplyExcursion.allows(ATX3_0, 850, true, 10, 1_300)).isTrue();
    }

    /** Source: the same table: 135 % without the plug. */
    @Test
    @DisplayName("PSU-04: the same supply without the plug does not (limit 1147.5 W)")
    void without_the_plug_the_lower_column_holds() {
        assertThat(SupplyExcursion.allowedW(ATX3_0, 850, false, 10)).isEqualTo(1_147.5);
        assertThat(SupplyExcursion.allows(ATX3_0, 850, false, 10, 1_300)).isFalse();
    }

    /** Source: the same guide, table 3-4, which prints 882 W. */
    @Test
    @DisplayName("PSU-05: 1600 W for an eighth of the time leave a 1000 W supply 881.56 W")
    void the_low_level_keeps_the_effective_value() {
        assertThat(SupplyExcursion.lowLevelW(1_000, 1_600, 0.125)).isCloseTo(881.56, within(0.01));
    }

    /** Conservative reading of the table: between two rows the longer one holds. */
    @Test
    @DisplayName("PSU-06: 650 W do not stand 1050 W for 5 ms (10 ms row, limit 1040 W)")
    void between_rows_the_longer_one_holds() {
        assertThat(SupplyExcursion.allowedW(ATX3_0, 650, true, 5)).isEqualTo(1_040);
        assertThat(SupplyExcursion.allows(ATX3_0, 650, true, 5, 1_050)).isFalse();
    }

    /** Source: the same guide, table 3-3, percentages for both kinds of supply. */
    @ParameterizedTest
    @CsvSource({"0.1,150,200,0.05", "1,145,180,0.08", "10,135,160,0.125", "100,110,120,0.25"})
    void each_row_is_that_of_the_table(
            double durationMs, int smallPercent, int largePercent, double dutyShare) {
        assertThat(SupplyExcursion.allowedW(ATX3_1, 1_000, false, durationMs))
                .isEqualTo(10 * smallPercent);
        assertThat(SupplyExcursion.allowedW(ATX3_1, 1_000, true, durationMs))
                .isEqualTo(10 * largePercent);
        assertThat(SupplyExcursion.dutyShare(durationMs)).isEqualTo(dutyShare);
    }

    /** Source: the same guide, table 3-4, worked for a 1000 W supply, printed in whole watts. */
    @ParameterizedTest
    @CsvSource({"2000,0.05,918", "1800,0.08,897", "1600,0.125,882", "1200,0.25,924"})
    void low_levels_are_those_of_the_worked_table(double highW, double dutyShare, long lowW) {
        assertThat(Math.round(SupplyExcursion.lowLevelW(1_000, highW, dutyShare))).isEqualTo(lowW);
    }

    /** Source: the same table: "up to 450 W" belongs to the lower column. */
    @Test
    void a_supply_of_450_watts_is_a_small_one() {
        assertThat(SupplyExcursion.allowedW(ATX3_0, 450, true, 1)).isEqualTo(652.5);
        assertThat(SupplyExcursion.allowedW(ATX3_0, 451, true, 1)).isEqualTo(811.8);
    }

    @Test
    void beyond_the_table_and_for_older_guides_the_rating_holds() {
        assertThat(SupplyExcursion.allowedW(ATX3_0, 850, true, 100.5)).isEqualTo(850);
        assertThat(SupplyExcursion.allowedW(ATX2, 850, true, 0.1)).isEqualTo(850);
        assertThat(SupplyExcursion.allowedW(ATX3_0, 850, true, 0)).isEqualTo(1_700);
    }

    @Test
    void a_peak_at_the_limit_is_allowed_and_a_milliwatt_more_is_not() {
        assertThat(SupplyExcursion.allows(ATX3_0, 850, false, 10, 1_147.5)).isTrue();
        assertThat(SupplyExcursion.allows(ATX3_0, 850, false, 10, 1_147.501)).isFalse();
    }

    @Test
    void a_longer_peak_than_the_table_has_gets_a_caution() {
        assertThat(SupplyExcursion.DURATION_MS.remark(500)).isPresent();
        assertThat(SupplyExcursion.DURATION_MS.remark(100)).isEmpty();
    }

    @Test
    void a_load_that_never_rests_or_is_too_high_has_no_low_level() {
        assertThat(SupplyExcursion.lowLevelW(1_000, 1_000, 0)).isEqualTo(1_000);
        assertThat(SupplyExcursion.lowLevelW(1_000, 2_000, 0.25)).isZero();
        refused("highW", () -> SupplyExcursion.lowLevelW(1_000, 2_001, 0.25));
        refused("highW", () -> SupplyExcursion.lowLevelW(1_000, 1_000, 1));
    }

    @Test
    void nonsense_is_refused() {
        refused("ratedW", () -> SupplyExcursion.allowedW(ATX3_0, 0, true, 10));
        refused("durationMs", () -> SupplyExcursion.allowedW(ATX3_0, 850, true, -1));
        refused("peakW", () -> SupplyExcursion.allows(ATX3_0, 850, true, 10, -1));
        refused("durationMs", () -> SupplyExcursion.dutyShare(101));
        refused("ratedW", () -> SupplyExcursion.lowLevelW(0, 1, 0.1));
        refused("highW", () -> SupplyExcursion.lowLevelW(1, -1, 0.1));
        refused("dutyShare", () -> SupplyExcursion.lowLevelW(1, 1, 1.1));
    }

    @Property(tries = 500)
    void a_shorter_peak_is_never_allowed_less(
            @ForAll @IntRange(min = 200, max = 1_600) int ratedW,
            @ForAll @DoubleRange(min = 0, max = 200) double durationMs,
            @ForAll boolean hasPlug) {
        for (DesignGuide guide : DesignGuide.values()) {
            double longW = SupplyExcursion.allowedW(guide, ratedW, hasPlug, durationMs);
            double shortW = SupplyExcursion.allowedW(guide, ratedW, hasPlug, durationMs / 2);

            assertThat(shortW).isGreaterThanOrEqualTo(longW).isGreaterThanOrEqualTo(ratedW);
        }
    }
}
