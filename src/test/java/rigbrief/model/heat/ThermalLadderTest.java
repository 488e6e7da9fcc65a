package rigbrief.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ThermalLadderTest {

    /** Source: a thermal-resistance note with this worked example. */
    @Test
    @DisplayName("THERM-01: 5 W over 3 + 1 + 8 K/W in 25 °C air: junction 85 °C, case 70 °C")
    void a_ladder_of_three_rungs() {
        assertThat(ThermalLadder.partC(25, 5, 3 + 1 + 8)).isEqualTo(85);
        assertThat(ThermalLadder.partC(25, 5, 1 + 8)).isEqualTo(70);
    }

    /** Source: another such note, which prints 76 and 88. */
    @Test
    @DisplayName("THERM-02: 3.9 W over 13 and 3.125 K/W: case 75.7 °C, junction 87.9 °C")
    void a_ladder_climbed_rung_by_rung() {
        double caseC = ThermalLadder.partC(25, 3.9, 13);

        assertThat(caseC).isCloseTo(75.7, within(0.1));
        assertThat(ThermalLadder.partC(caseC, 3.9, 3.125)).isCloseTo(87.9, within(0.1));
    }

    /** By hand: 22 + 8 + 120 x 0.40. */
    @Test
    @DisplayName("THERM-03: a room of 22 °C, a rise of 8 K and 120 W over 0.40 K/W make 78 °C")
    void a_part_in_a_case() {
        assertThat(ThermalLadder.partInCaseC(22, 8, 120, 0.40)).isEqualTo(78);
    }

    /** By hand: THERM-03 turned round, (78 - 30) / 120. */
    @Test
    void the_required_resistance_is_the_ladder_turned_round() {
        assertThat(ThermalLadder.requiredKw(78, 30, 120)).isCloseTo(0.40, within(1e-12));
        assertThat(ThermalLadder.requiredKw(30, 30, 120)).isZero();
        assertThat(ThermalLadder.requiredKw(20, 30, 120)).isNegative();
    }

    @Test
    void a_card_of_900_watts_gets_a_caution() {
        assertThat(ThermalLadder.POWER_W.remark(900)).isPresent();
        assertThat(ThermalLadder.POWER_W.remark(600)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("ambientC", () -> ThermalLadder.partC(Double.NaN, 1, 1));
        refused("powerW", () -> ThermalLadder.partC(25, -1, 1));
        refused("resistanceKw", () -> ThermalLadder.partC(25, 1, -1));
        refused("roomC", () -> ThermalLadder.partInCaseC(Double.NaN, 8, 1, 1));
        refused("caseRiseK", () -> ThermalLadder.partInCaseC(25, -8, 1, 1));
        refused("limitC", () -> ThermalLadder.requiredKw(Double.NaN, 30, 1));
        refused("ambientC", () -> ThermalLadder.requiredKw(80, Double.NaN, 1));
        refused("powerW", () -> ThermalLadder.requiredKw(80, 30, 0));
    }

    @Property(tries = 500)
    void more_watts_never_cool_a_part(
            @ForAll @DoubleRange(min = 0, max = 600) double powerW,
            @ForAll @DoubleRange(min = 0, max = 2) double resistanceKw,
            @ForAll @DoubleRange(min = 0, max = 100) double moreW) {
        assertThat(ThermalLadder.partC(25, powerW + moreW, resistanceKw))
                .isGreaterThanOrEqualTo(ThermalLadder.partC(25, powerW, resistanceKw));
    }
}
