package rigbrief.model.air;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How heavy air is, at a temperature and an altitude.
 *
 * <p>Formula: density = pressure / (287.05 x absolute temperature); pressure at altitude h = 101
 * 325 Pa x (1 - 2.25577e-5 h)^5.25588. Dry air; damp air is up to 1 % lighter.
 *
 * <p>Source: ideal gas law, checked against a handbook table of air at one atmosphere; the standard
 * atmosphere's formula is from memory.
 */
public final class AirDensity {
    /** Room temperatures in which a desktop computer is meant to run. */
    public static final Range ROOM_C = new Range("room temperature", 5, 40, "°C");

    /** Altitudes for which makers' cooling figures still hold after scaling with density. */
    public static final Range ALTITUDE_M = new Range("altitude", -400, 3_050, "m");

    /**
     * Heat that warms one kilogram of air by one kelvin, J/(kg K). Handbooks print 1005 to 1007.
     */
    public static final double HEAT_CAPACITY_J_KGK = 1_005;

    private static final double GAS_CONSTANT_J_KGK = 287.05;
    private static final double SEA_LEVEL_PA = 101_325;
    private static final double ABSOLUTE_ZERO_C = -273.15;
    private static final double LAPSE_PER_M = 2.25577e-5;
    private static final double EXPONENT = 5.25588;
    private static final double TROPOPAUSE_M = 11_000;

    private AirDensity() {}

    /**
     * Gives the density at a temperature and a pressure.
     *
     * @param airC air temperature, °C
     * @param pressurePa absolute pressure, Pa
     * @return kg/m³
     * @throws IllegalArgumentException at or below absolute zero, or for a pressure not above 0
     */
    public static double atPressureKgM3(double airC, double pressurePa) {
        double absoluteK = Expect.positive(airC - ABSOLUTE_ZERO_C, "airC above absolute zero");
        return Expect.positive(pressurePa, "pressurePa") / (GAS_CONSTANT_J_KGK * absoluteK);
    }

    /**
     * Gives the density at a temperature and an altitude.
     *
     * @param airC air temperature, °C
     * @param altitudeM height above the sea, m
     * @return kg/m³
     * @throws IllegalArgumentException as the other two methods
     */
    public static double kgM3(double airC, double altitudeM) {
        return atPressureKgM3(airC, SEA_LEVEL_PA * pressureShare(altitudeM));
    }

    /**
     * Gives the air pressure at an altitude as a share of that at the sea.
     *
     * @param altitudeM height above the sea, m, below 11 000
     * @return the share; the flow for the same cooling grows by its reciprocal
     * @throws IllegalArgumentException above 11 km, where the formula ends
     */
    public static double pressureShare(double altitudeM) {
        if (Expect.finite(altitudeM, "altitudeM") > TROPOPAUSE_M) {
            throw new IllegalArgumentException(
                    "altitudeM: found %s, expected at most 11000; give it in metres"
                            .formatted(altitudeM));
        }
        return Math.pow(1 - LAPSE_PER_M * altitudeM, EXPONENT);
    }
}
