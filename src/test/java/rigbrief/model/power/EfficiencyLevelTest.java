package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EfficiencyLevelTest {

    /**
     * Source: the 80 PLUS programme's certification table in a trade-press reproduction; percent at
     * 20, 50 and 100 % load for 115 V internal, 230 V redundant, 230 V EU internal.
     */
    @ParameterizedTest
    @CsvSource({
        "WHITE,80,80,80,,,,82,85,82",
        "BRONZE,82,85,82,81,85,81,85,88,85",
        "SILVER,85,88,85,85,89,85,87,90,87",
        "GOLD,87,90,87,88,92,88,90,92,89",
        "PLATINUM,90,92,89,90,94,91,92,94,90",
        "TITANIUM,92,94,90,94,96,91,94,96,94"
    })
    void points_are_those_of_the_programme(
            EfficiencyLevel level,
            double internal20,
            double internal50,
            double internal100,
            Double redundant20,
            Double redundant50,
            Double redundant100,
            double eu20,
            double eu50,
            double eu100) {
        assertPoints(level, MainsColumn.V115_INTERNAL, internal20, internal50, internal100);
        assertPoints(level, MainsColumn.V230_EU_INTERNAL, eu20, eu50, eu100);
        assertThat(level.isOffered(MainsColumn.V230_REDUNDANT)).isEqualTo(redundant20 != null);
        if (redundant20 != null) {
            assertPoints(level, MainsColumn.V230_REDUNDANT, redundant20, redundant50, redundant100);
        }
    }

    private static void assertPoints(
            EfficiencyLevel level, MainsColumn column, double at20, double at50, double at100) {
        assertThat(level.isOffered(column)).isTrue();
        assertThat(100 * Efficiency.at(level, column, 0.2).orElseThrow())
                .isCloseTo(at20, within(1e-9));
        assertThat(100 * Efficiency.at(level, column, 0.5).orElseThrow())
                .isCloseTo(at50, within(1e-9));
        assertThat(100 * Efficiency.at(level, column, 1).orElseThrow())
                .isCloseTo(at100, within(1e-9));
    }

    /** Source: the same table: 90 % at 10 % load in all three columns. */
    @ParameterizedTest
    @EnumSource
    void the_highest_desktop_level_has_a_point_at_ten_percent(MainsColumn column) {
        assertThat(Efficiency.at(EfficiencyLevel.TITANIUM, column, 0.1)).hasValue(0.90);
    }

    /** From memory: 90 / 91 / 95 / 96.5 / 92 at 5 / 10 / 20 / 50 / 100 %, redundant only. */
    @ParameterizedTest
    @CsvSource({"0.05,0.90", "0.1,0.91", "0.2,0.95", "0.5,0.965", "1,0.92"})
    void the_newest_level_is_for_redundant_supplies(double loadShare, double efficiency) {
        assertThat(Efficiency.at(EfficiencyLevel.RUBY, MainsColumn.V230_REDUNDANT, loadShare))
                .hasValue(efficiency);
        assertThat(EfficiencyLevel.RUBY.isOffered(MainsColumn.V115_INTERNAL)).isFalse();
        assertThat(EfficiencyLevel.RUBY.isOffered(MainsColumn.V230_EU_INTERNAL)).isFalse();
    }

    /** From memory: minimums of ATX12V design guide 2.2, 65 / 72 / 70 %. */
    /**
     * Source: Commission Regulation (EU) No 617/2013, Annex II, internal supplies of desktop
     * computers from July 2014 (from memory); the same as the base level has there.
     */
    @Test
    void a_supply_without_a_label_reaches_in_the_union_what_its_law_asks() {
        MainsColumn column = MainsColumn.V230_EU_INTERNAL;

        assertThat(Efficiency.at(EfficiencyLevel.NONE, column, 0.2)).hasValue(0.82);
        assertThat(Efficiency.at(EfficiencyLevel.NONE, column, 0.5)).hasValue(0.85);
        assertThat(Efficiency.at(EfficiencyLevel.NONE, column, 1)).hasValue(0.82);
    }

    /** Source: ATX12V design guide 2.2, required minimum (from memory). */
    @ParameterizedTest
    @EnumSource(names = {"V115_INTERNAL", "V230_REDUNDANT"})
    void a_supply_without_a_label_meets_elsewhere_the_guide_of_its_day(MainsColumn column) {
        assertThat(Efficiency.at(EfficiencyLevel.NONE, column, 0.2)).hasValue(0.65);
        assertThat(Efficiency.at(EfficiencyLevel.NONE, column, 0.5)).hasValue(0.72);
        assertThat(Efficiency.at(EfficiencyLevel.NONE, column, 1)).hasValue(0.70);
    }

    @ParameterizedTest
    @CsvSource({
        "none,NONE",
        "80plus,WHITE",
        "bronze,BRONZE",
        "silver,SILVER",
        "gold,GOLD",
        "platinum,PLATINUM",
        "titanium,TITANIUM",
        "ruby,RUBY"
    })
    void a_cell_names_its_level(String id, EfficiencyLevel level) {
        assertThat(EfficiencyLevel.find(id)).contains(level);
        assertThat(level.id()).isEqualTo(id);
    }

    @Test
    void an_unknown_level_is_not_found_and_a_missing_column_refused() {
        assertThat(EfficiencyLevel.find("copper")).isEmpty();
        refused("column", () -> EfficiencyLevel.WHITE.rowFor(MainsColumn.V230_REDUNDANT));
    }
}
