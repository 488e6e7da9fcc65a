package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Values computed apart from this program from the programme's three points. */
class SupplyLossTest {
    private static final SupplyLoss GOLD =
            SupplyLoss.of(EfficiencyLevel.GOLD, MainsColumn.V115_INTERNAL);

    /** Solved apart from this program: a = 0.025543, b = -0.003831, c = 0.127714. */
    @Test
    void the_curve_runs_through_the_three_points_of_its_row() {
        assertThat(GOLD.constant()).isCloseTo(0.025543, within(1e-6));
        assertThat(GOLD.linear()).isCloseTo(-0.003831, within(1e-6));
        assertThat(GOLD.square()).isCloseTo(0.127714, within(1e-6));
        assertThat(GOLD.efficiency(0.2)).isCloseTo(0.87, within(1e-12));
        assertThat(GOLD.efficiency(0.5)).isCloseTo(0.90, within(1e-12));
        assertThat(GOLD.efficiency(1)).isCloseTo(0.87, within(1e-12));
    }

    @Test
    @DisplayName("LAW-02: Gold at 115 V and 35 % load is 0.8978 by the loss curve")
    void the_curve_bulges_over_the_straight_line() {
        assertThat(GOLD.efficiency(0.35)).isCloseTo(0.8978, within(0.0001));
    }

    @Test
    @DisplayName("LAW-03: by the loss curve 0.7909 at 10 % and 0.6608 at 5 % load")
    void a_small_load_is_carried_badly() {
        assertThat(GOLD.efficiency(0.10)).isCloseTo(0.7909, within(0.0001));
        assertThat(GOLD.efficiency(0.05)).isCloseTo(0.6608, within(0.0001));
    }

    /** By hand: sqrt(a / c), where constant and square losses are equal. */
    @Test
    @DisplayName("LAW-04: the loss curve is best at 44.72 % load")
    void the_best_load_is_below_half() {
        assertThat(GOLD.bestLoadShare().orElseThrow()).isCloseTo(0.4472, within(0.0001));
    }

    @Test
    void a_curve_without_constant_or_square_losses_has_no_best_load() {
        assertThat(new SupplyLoss(0, 0.1, 0.1).bestLoadShare()).isEmpty();
        assertThat(new SupplyLoss(0.1, 0.1, 0).bestLoadShare()).isEmpty();
        assertThat(new SupplyLoss(0.1, 0, -0.1).bestLoadShare()).isEmpty();
    }

    @Test
    void no_supply_gains_power_however_the_curve_dips() {
        assertThat(new SupplyLoss(-0.01, 0.1, 0).lossShare(0)).isZero();
        assertThat(new SupplyLoss(-0.01, 0.1, 0).lossShare(0.2)).isCloseTo(0.01, within(1e-12));
        assertThat(new SupplyLoss(-0.01, 0.1, 0).efficiency(0.05)).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource
    void every_row_loses_something_at_its_points(EfficiencyLevel level) {
        for (MainsColumn column : MainsColumn.values()) {
            if (level.isOffered(column)) {
                var loss = SupplyLoss.of(level, column);

                assertThat(loss.lossShare(0.2)).isPositive();
                assertThat(loss.efficiency(0.2))
                        .isCloseTo(Efficiency.at(level, column, 0.2).orElseThrow(), within(1e-12));
            }
        }
    }

    @Test
    void a_tiny_load_gets_a_caution() {
        assertThat(SupplyLoss.LOAD_SHARE.remark(0.01)).isPresent();
        assertThat(SupplyLoss.LOAD_SHARE.remark(0.05)).isEmpty();
    }

    /**
     * By hand: losses of 0.2 x (1/0.8 - 1), 0.5 x (1/0.8 - 1) and 1 x (1/0.8 - 1) lie on the line
     * 0.25 x; with 1/0.5 - 1 at the end the curve 0.25 x gains 0.75 x (x - 0.2)(x - 0.5) / 0.4.
     */
    @Test
    void a_curve_is_laid_through_any_three_points() {
        double[] loadShares = {0.2, 0.5, 1};

        var line = SupplyLoss.throughFirstThree(loadShares, new double[] {0.8, 0.8, 0.8});
        var curve = SupplyLoss.throughFirstThree(loadShares, new double[] {0.8, 0.8, 0.5});

        assertThat(line.constant()).isCloseTo(0, within(1e-12));
        assertThat(line.linear()).isCloseTo(0.25, within(1e-12));
        assertThat(line.square()).isCloseTo(0, within(1e-12));
        assertThat(curve.constant()).isCloseTo(0.1875, within(1e-12));
        assertThat(curve.linear()).isCloseTo(0.25 - 1.3125, within(1e-12));
        assertThat(curve.square()).isCloseTo(1.875, within(1e-12));
    }

    @Test
    void nonsense_is_refused() {
        refused("constant", () -> new SupplyLoss(Double.NaN, 0, 0));
        refused("linear", () -> new SupplyLoss(0, Double.NaN, 0));
        refused("square", () -> new SupplyLoss(0, 0, Double.NaN));
        refused("loadShare", () -> GOLD.lossShare(-0.1));
        refused("loadShare", () -> GOLD.efficiency(0));
        refused("column", () -> SupplyLoss.of(EfficiencyLevel.RUBY, MainsColumn.V115_INTERNAL));
    }
}
