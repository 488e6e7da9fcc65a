package rigbrief.model.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirDensityTest {

    /** Source: table "Properties of air at 1 atm pressure" of an engineering reference site. */
    @ParameterizedTest
    @CsvSource({"15,1.225", "20,1.204", "25,1.184", "35,1.145", "40,1.127"})
    void densities_are_those_of_the_handbook_table(double airC, double densityKgM3) {
        assertThat(AirDensity.kgM3(airC, 0)).isCloseTo(densityKgM3, within(0.001));
    }

    /**
     * Standard atmosphere, formula from memory, values computed apart from this program: the flow
     * grows by the reciprocal.
     */
    @ParameterizedTest
    @CsvSource({"500,1.061", "1000,1.127", "1609,1.215", "2000,1.275", "3000,1.445"})
    void altitude_asks_for_more_flow(double altitudeM, double growth) {
        assertThat(1 / AirDensity.pressureShare(altitudeM)).isCloseTo(growth, within(0.0006));
        assertThat(AirDensity.kgM3(20, 0) / AirDensity.kgM3(20, altitudeM))
                .isCloseTo(growth, within(0.0006));
    }

    /** By hand: 98 066 / (287 x 308.15) = 1.1089 kg/m³, the density that AIR-02 starts from. */
    @Test
    void density_follows_the_ideal_gas_law() {
        assertThat(AirDensity.atPressureKgM3(35, 98_066)).isCloseTo(1.1089, withinPercentage(0.1));
        assertThat(AirDensity.pressureShare(0)).isEqualTo(1);
    }

    @Test
    void a_hot_room_and_a_high_mountain_get_a_caution() {
        assertThat(AirDensity.ROOM_C.remark(60)).isPresent();
        assertThat(AirDensity.ROOM_C.remark(40)).isEmpty();
        assertThat(AirDensity.ALTITUDE_M.remark(5_000)).isPresent();
        assertThat(AirDensity.ALTITUDE_M.remark(2_000)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("airC above absolute zero", () -> AirDensity.kgM3(-273.15, 0));
        refused("pressurePa", () -> AirDensity.atPressureKgM3(20, 0));
        refused("altitudeM", () -> AirDensity.kgM3(20, Double.NaN));
        refused("altitudeM", () -> AirDensity.pressureShare(11_001));
        assertThat(AirDensity.pressureShare(11_000)).isPositive();
    }

    @Property(tries = 1000)
    void warmer_or_higher_air_is_never_heavier(
            @ForAll @DoubleRange(min = -20, max = 60) double airC,
            @ForAll @DoubleRange(min = -400, max = 8_000) double altitudeM,
            @ForAll @DoubleRange(min = 0, max = 30) double warmerK,
            @ForAll @DoubleRange(min = 0, max = 3_000) double higherM) {
        double densityKgM3 = AirDensity.kgM3(airC, altitudeM);

        assertThat(AirDensity.kgM3(airC + warmerK, altitudeM)).isLessThanOrEqualTo(densityKgM3);
        assertThat(AirDensity.kgM3(airC, altitudeM + higherM)).isLessThanOrEqualTo(densityKgM3);
    }
}
