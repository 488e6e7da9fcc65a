package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;
import static rigbrief.model.power.EfficiencyLevel.BRONZE;
import static rigbrief.model.power.EfficiencyLevel.GOLD;
import static rigbrief.model.power.EfficiencyLevel.TITANIUM;
import static rigbrief.model.power.MainsColumn.V115_INTERNAL;
import static rigbrief.model.power.MainsColumn.V230_EU_INTERNAL;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class WallPowerTest {

    /** By hand: 375 / 0.90 = 416.667. */
    @Test
    @DisplayName(
            "EFF-01: half of a 750 W Gold supply at 115 V draws 416.667 W, 41.667 W of it heat")
    void half_load() {
        assertThat(WallPower.acW(375, 750, GOLD, V115_INTERNAL)).isCloseTo(416.667, within(0.001));
        assertThat(WallPower.heatW(375, 750, GOLD, V115_INTERNAL)).isCloseTo(41.667, within(0.001));
    }

    /** By hand: 262.5 / 0.885 = 296.610. */
    @Test
    @DisplayName("EFF-02: 35 % of a 750 W Gold supply at 115 V draws 296.610 W")
    void between_two_points() {
        assertThat(WallPower.acW(262.5, 750, GOLD, V115_INTERNAL))
                .isCloseTo(296.610, within(0.001));
    }

    /** By hand: 550 / 0.85 = 647.059. */
    @Test
    @DisplayName("EFF-04: a full 550 W Bronze supply at 230 V draws 647.059 W")
    void full_load() {
        assertThat(WallPower.acW(550, 550, BRONZE, V230_EU_INTERNAL))
                .isCloseTo(647.059, within(0.001));
    }

    /** By hand with the loss curve of LAW-03: 75 / 0.7909 at 10 % of 750 W. */
    @Test
    void below_the_table_the_loss_curve_estimates_and_says_so() {
        assertThat(WallPower.acW(75, 750, GOLD, V115_INTERNAL)).isCloseTo(94.83, within(0.01));
        assertThat(WallPower.isEstimated(75, 750, GOLD, V115_INTERNAL)).isTrue();
        assertThat(WallPower.isEstimated(150, 750, GOLD, V115_INTERNAL)).isFalse();
        assertThat(WallPower.isEstimated(75, 750, TITANIUM, V115_INTERNAL)).isFalse();
        assertThat(WallPower.isEstimated(751, 750, GOLD, V115_INTERNAL)).isTrue();
    }

    /** By hand: 1500 / 0.87. */
    @Test
    void above_the_rating_full_load_s_efficiency_is_kept() {
        assertThat(WallPower.acW(1_500, 750, GOLD, V115_INTERNAL))
                .isCloseTo(1_724.138, within(0.001));
    }

    @Test
    void at_the_lowest_point_line_and_curve_meet() {
        double below = WallPower.acW(150 - 1e-7, 750, GOLD, V115_INTERNAL);
        double at = WallPower.acW(150, 750, GOLD, V115_INTERNAL);

        assertThat(below).isCloseTo(at, within(1e-6));
        assertThat(at).isCloseTo(150 / 0.87, within(1e-9));
    }

    @Test
    void a_load_outside_the_certified_shares_gets_a_caution() {
        assertThat(WallPower.CERTIFIED_LOAD_SHARE.remark(0.1)).isPresent();
        assertThat(WallPower.CERTIFIED_LOAD_SHARE.remark(0.2)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("dcW", () -> WallPower.acW(-1, 750, GOLD, V115_INTERNAL));
        refused("ratedW", () -> WallPower.acW(1, 0, GOLD, V115_INTERNAL));
        refused("dcW", () -> WallPower.isEstimated(-1, 750, GOLD, V115_INTERNAL));
        refused("ratedW", () -> WallPower.isEstimated(1, 0, GOLD, V115_INTERNAL));
        refused("column", () -> WallPower.acW(1, 750, EfficiencyLevel.RUBY, V115_INTERNAL));
    }

    @Property(tries = 1000)
    void wall_power_never_falls_as_load_rises_nor_below_the_load(
            @ForAll @DoubleRange(min = 0, max = 900) double dcW,
            @ForAll @DoubleRange(min = 0, max = 100) double moreW) {
        for (EfficiencyLevel level : EfficiencyLevel.values()) {
            for (MainsColumn column : MainsColumn.values()) {
                if (level.isOffered(column)) {
                    double acW = WallPower.acW(dcW, 750, level, column);

                    assertThat(acW).isGreaterThanOrEqualTo(dcW);
                    assertThat(WallPower.acW(dcW + moreW, 750, level, column))
                            .isGreaterThanOrEqualTo(acW);
                }
            }
        }
    }
}
