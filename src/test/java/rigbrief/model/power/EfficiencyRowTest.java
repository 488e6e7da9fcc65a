package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;

class EfficiencyRowTest {
    private final EfficiencyRow row = EfficiencyRow.of(20, 80, 50, 90, 100, 85);

    @Test
    void its_points_are_met_exactly() {
        assertThat(row.at(0.2)).hasValue(0.80);
        assertThat(row.at(0.5)).hasValue(0.90);
        assertThat(row.at(1)).hasValue(0.85);
        assertThat(row.lowestShare()).isEqualTo(0.2);
    }

    /** By hand: a third of the way from 80 to 90 %, and half the way from 90 to 85 %. */
    @Test
    void between_its_points_lie_straight_lines() {
        assertThat(row.between(0.3)).isCloseTo(0.8333, within(0.0001));
        assertThat(row.between(0.75)).isCloseTo(0.875, within(1e-12));
    }

    @Test
    void above_the_rating_the_last_point_is_kept_but_nothing_is_certified() {
        assertThat(row.between(1.2)).isEqualTo(0.85);
        assertThat(row.at(1.2)).isEmpty();
        assertThat(row.at(0.19)).isEmpty();
    }

    /** By hand: 0.2 x (1 / 0.8 - 1) = 0.05 of the rating is lost at the lowest point. */
    @Test
    void its_loss_curve_meets_its_lowest_point() {
        assertThat(row.loss().lossShare(0.2)).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void nonsense_is_refused() {
        refused("loadShare", () -> row.at(-0.1));
        refused("loadShare", () -> row.at(Double.NaN));
    }
}
