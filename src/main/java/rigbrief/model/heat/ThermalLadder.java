package rigbrief.model.heat;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * The temperature of a part from the room upwards, rung by rung.
 *
 * <p>Formula: T = ambient + power x (sum of thermal resistances); inside a case, ambient = room +
 * rise of the case air.
 *
 * <p>Source: three thermal-resistance notes with the same chain formula, two of them with worked
 * numbers.
 */
public final class ThermalLadder {
    /** Part powers for which a single resistance describes a desktop cooler. */
    public static final Range POWER_W = new Range("part power", 0, 600, "W");

    private ThermalLadder() {}

    /**
     * Gives the temperature at the upper end of a resistance.
     *
     * @param ambientC temperature at its lower end, °C
     * @param powerW heat that flows through it, W
     * @param resistanceKw thermal resistance, K/W; for several in a row, their sum
     * @return °C
     * @throws IllegalArgumentException for a negative power or resistance
     */
    public static double partC(double ambientC, double powerW, double resistanceKw) {
        Expect.finite(ambientC, "ambientC");
        return ambientC
                + Expect.notNegative(powerW, "powerW")
                        * Expect.notNegative(resistanceKw, "resistanceKw");
    }

    /**
     * Gives the temperature of a part in a case.
     *
     * @param roomC room, °C
     * @param caseRiseK case air above the room, K
     * @param powerW heat of the part, W
     * @param resistanceKw from the part to the case air, K/W
     * @return °C
     * @throws IllegalArgumentException for a negative rise, power or resistance
     */
    public static double partInCaseC(
            double roomC, double caseRiseK, double powerW, double resistanceKw) {
        double inletC = Expect.finite(roomC, "roomC") + Expect.notNegative(caseRiseK, "caseRiseK");
        return partC(inletC, powerW, resistanceKw);
    }

    /**
     * Gives the greatest resistance that keeps a part at a temperature.
     *
     * @param limitC temperature to keep, °C
     * @param ambientC temperature at the lower end, °C
     * @param powerW heat of the part, W, above 0
     * @return K/W; 0 or less when the ambient leaves no room
     * @throws IllegalArgumentException for a power not above 0
     */
    public static double requiredKw(double limitC, double ambientC, double powerW) {
        Expect.finite(limitC, "limitC");
        Expect.finite(ambientC, "ambientC");
        return (limitC - ambientC) / Expect.positive(powerW, "powerW");
    }
}
