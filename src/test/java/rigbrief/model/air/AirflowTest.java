package rigbrief.model.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirflowTest {
    /** Density at which density x heat capacity is the 1206 J/(m³ K) of the rows below. */
    private static final double USUAL_KG_M3 = 1_206.0 / AirDensity.HEAT_CAPACITY_J_KGK;

    /** Source: "Forced air cooling calculation for industrial enclosures", which prints 0.265. */
    @Test
    @DisplayName("AIR-01: 800 W at 3 K need 0.2653 kg of air a second")
    void the_worked_example_in_mass() {
        assertThat(Airflow.forHeatKgS(800, 3)).isCloseTo(0.2653, within(0.0005));
    }

    /** Source: the same article's air (35 °C, 98.066 kPa); values computed apart from this one. */
    @Test
    @DisplayName("AIR-02: the same in air of 1.1089 kg/m³ is 0.2393 m³/s or 507.0 cfm")
    void the_worked_example_in_volume() {
        double densityKgM3 = AirDensity.atPressureKgM3(35, 98_066);

        double flowM3h = Airflow.forHeatM3h(800, 3, densityKgM3);

        assertThat(densityKgM3).isCloseTo(1.1089, withinPercentage(0.1));
        assertThat(flowM3h / 3_600).isCloseTo(0.2393, withinPercentage(0.1));
        assertThat(Airflow.cfm(flowM3h)).isCloseTo(507.0, withinPercentage(0.1));
    }

    /** By hand: 500 / (1206 x 10) x 3600 = 149.25 m³/h. */
    @Test
    @DisplayName("AIR-03: 500 W at 10 K need 149.25 m³/h or 87.85 cfm")
    void half_a_kilowatt() {
        double flowM3h = Airflow.forHeatM3h(500, 10, USUAL_KG_M3);

        assertThat(flowM3h).isCloseTo(149.25, withinPercentage(0.05));
        assertThat(Airflow.cfm(flowM3h)).isCloseTo(87.85, withinPercentage(0.05));
    }

    /** By hand: 300 / (1206 x 15) x 3600 = 59.70 m³/h. */
    @Test
    @DisplayName("AIR-04: 300 W at 15 K need 59.70 m³/h or 35.14 cfm")
    void a_third_of_a_kilowatt() {
        double flowM3h = Airflow.forHeatM3h(300, 15, USUAL_KG_M3);

        assertThat(flowM3h).isCloseTo(59.70, withinPercentage(0.05));
        assertThat(Airflow.cfm(flowM3h)).isCloseTo(35.14, withinPercentage(0.05));
    }

    /**
     * Source: a fan maker's application note, cfm = 3160 x kW / °F. The constant is this law at one
     * air: 1.8 / (3.16 x cubic feet a minute in m³/s) = 1206.9 J/(m³ K), within 0.3 % of the
     * handbook's 20 °C air (1.204 kg/m³ x 1005 J/(kg K)).
     */
    @Test
    @DisplayName("AIR-05: 1 kW at 27 °F need 117.04 cfm")
    void the_constant_of_the_fan_makers() {
        double airOfTheConstantJM3K = 1.8 / (3.16 * 0.3048 * 0.3048 * 0.3048 / 60);

        double flowM3h =
                Airflow.forHeatM3h(
                        1_000, 15, airOfTheConstantJM3K / AirDensity.HEAT_CAPACITY_J_KGK);

        assertThat(airOfTheConstantJM3K).isCloseTo(1.204 * 1_005, withinPercentage(0.3));
        assertThat(Airflow.cfm(flowM3h)).isCloseTo(117.04, within(0.01));
    }

    /** Computed apart from this program: m³/h per W/K at 1206 J/(m³ K), and at 25 °C air. */
    @ParameterizedTest
    @CsvSource({"1206,2.985", "1192.3,3.019"})
    void other_handbook_constants_are_the_same_law(double airJM3K, double constant) {
        assertThat(Airflow.forHeatM3h(1, 1, airJM3K / AirDensity.HEAT_CAPACITY_J_KGK))
                .isCloseTo(constant, within(0.0006));
    }

    /**
     * By hand: 500 W at 15 K are 58.6 cfm. A widely copied short cut with 1.08, made for BTU/h and
     * °F, gives 30.9.
     */
    @Test
    void the_short_cut_for_other_units_is_not_copied() {
        double flowCfm = Airflow.cfm(Airflow.forHeatM3h(500, 15, USUAL_KG_M3));

        assertThat(flowCfm).isCloseTo(58.6, within(0.1)).isNotCloseTo(30.9, within(1.0));
    }

    /** By hand: a foot is 0.3048 m by definition, so 1 cfm = 1.699011 m³/h. */
    @Test
    void cubic_feet_a_minute_are_those_of_the_foot_s_definition() {
        assertThat(Airflow.M3H_PER_CFM).isCloseTo(1.699011, within(1e-6));
        assertThat(Airflow.m3h(50)).isCloseTo(84.95, within(0.01));
        assertThat(Airflow.cfm(Airflow.m3h(73))).isCloseTo(73, within(1e-12));
    }

    @Test
    void nonsense_is_refused() {
        refused("heatW", () -> Airflow.forHeatKgS(-1, 10));
        refused("riseK", () -> Airflow.forHeatKgS(1, 0));
        refused("densityKgM3", () -> Airflow.forHeatM3h(1, 10, 0));
    }

    @Property(tries = 200)
    void flow_and_rise_are_each_other_s_inverse(
            @ForAll @DoubleRange(min = 50, max = 1_000) double heatW,
            @ForAll @DoubleRange(min = 1, max = 15) double riseK) {
        double flowM3h = Airflow.forHeatM3h(heatW, riseK, USUAL_KG_M3);

        if (flowM3h >= AirRise.NATURAL_FLOW_M3H) {
            assertThat(AirRise.kelvin(heatW, flowM3h, USUAL_KG_M3)).isCloseTo(riseK, within(1e-9));
        }
    }
}
