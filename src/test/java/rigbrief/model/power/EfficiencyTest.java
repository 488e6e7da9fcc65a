package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;
import static rigbrief.model.power.EfficiencyLevel.GOLD;
import static rigbrief.model.power.EfficiencyLevel.RUBY;
import static rigbrief.model.power.EfficiencyLevel.TITANIUM;
import static rigbrief.model.power.EfficiencyLevel.WHITE;
import static rigbrief.model.power.MainsColumn.V115_INTERNAL;
import static rigbrief.model.power.MainsColumn.V230_EU_INTERNAL;
import static rigbrief.model.power.MainsColumn.V230_REDUNDANT;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class EfficiencyTest {

    private static double at(EfficiencyLevel level, MainsColumn column, double loadShare) {
        return Efficiency.at(level, column, loadShare).orElseThrow();
    }

    /** By hand on the programme's table: halfway from 87 % at 20 % load to 90 % at 50 %. */
    @Test
    @DisplayName("EFF-02, LAW-01: Gold at 115 V and 35 % load is 0.885 by straight lines")
    void between_two_points_the_line_holds() {
        assertThat(at(GOLD, V115_INTERNAL, 0.35)).isCloseTo(0.8850, within(0.0001));
    }

    /** By hand on the programme's table: halfway from 90 % at 10 % load to 92 % at 20 %. */
    @Test
    @DisplayName("EFF-03: Titanium at 115 V and 15 % load is 0.91")
    void the_highest_level_speaks_below_twenty_percent() {
        assertThat(at(TITANIUM, V115_INTERNAL, 0.15)).isCloseTo(0.91, within(0.0005));
    }

    /** Source: the programme's certification table begins at 20 % load for Gold. */
    @Test
    @DisplayName("EFF-05: Gold at 115 V below 20 % load is unspecified, not extrapolated")
    void where_the_table_is_silent_so_is_the_model() {
        assertThat(Efficiency.at(GOLD, V115_INTERNAL, 0.1999)).isEmpty();
        assertThat(Efficiency.at(GOLD, V115_INTERNAL, 0)).isEmpty();
        assertThat(Efficiency.at(GOLD, V115_INTERNAL, 1.0001)).isEmpty();
        assertThat(Efficiency.at(GOLD, V115_INTERNAL, 0.2)).isPresent();
        assertThat(Efficiency.at(GOLD, V115_INTERNAL, 1)).isPresent();
    }

    /** By hand: Gold at 50 % is 90, 92 and 92 % in the three columns. */
    @Test
    void a_label_without_a_column_is_read_at_its_lowest() {
        assertThat(Efficiency.lowest(GOLD, 0.5)).hasValue(0.90);
        assertThat(Efficiency.lowest(GOLD, 1)).hasValue(0.87);
    }

    /** By hand: the base level has no redundant column, Ruby has no other. */
    @Test
    void columns_without_the_level_do_not_count() {
        assertThat(Efficiency.lowest(WHITE, 0.5)).hasValue(0.80);
        assertThat(Efficiency.lowest(RUBY, 0.5)).hasValue(0.965);
    }

    @Test
    void one_silent_column_makes_the_lowest_silent() {
        assertThat(Efficiency.lowest(GOLD, 0.1)).isEmpty();
        assertThat(Efficiency.lowest(TITANIUM, 0.1)).hasValue(0.90);
    }

    @Test
    void nonsense_is_refused() {
        refused("column", () -> Efficiency.at(WHITE, V230_REDUNDANT, 0.5));
        refused("column", () -> Efficiency.at(RUBY, V230_EU_INTERNAL, 0.5));
        refused("loadShare", () -> Efficiency.at(GOLD, V115_INTERNAL, -0.1));
    }

    /** Source: the levels are ordered; each asks at least as much as the one below it. */
    @Property(tries = 300)
    void a_higher_level_is_never_worse(@ForAll @DoubleRange(min = 0.2, max = 1) double loadShare) {
        for (int i = WHITE.ordinal(); i < TITANIUM.ordinal(); i++) {
            EfficiencyLevel lower = EfficiencyLevel.values()[i];
            EfficiencyLevel higher = EfficiencyLevel.values()[i + 1];

            assertThat(at(higher, V115_INTERNAL, loadShare))
                    .isGreaterThanOrEqualTo(at(lower, V115_INTERNAL, loadShare));
            assertThat(at(higher, V230_EU_INTERNAL, loadShare))
                    .isGreaterThanOrEqualTo(at(lower, V230_EU_INTERNAL, loadShare));
        }
    }
}
