package rigbrief.model.heat;

import rigbrief.model.Expect;
import rigbrief.model.Range;
import rigbrief.model.noise.FanNoise;

/**
 * A graphics card's own cooler: the fan speed it needs, and how loud that is.
 *
 * <p>Formula: reference resistance = (card - inlet) / board power at the reference; speed ratio =
 * (reference resistance / required resistance)², 1 at the reference; level = load level + 50
 * log10(ratio), never under the idle level.
 *
 * <p>Common practice: a card's sheet states its load level with the card at 75 °C in 25 °C air at
 * full board power. A catalogue with other reference conditions passes its own.
 */
public final class CardCooling {
    /** Card powers for which air coolers of this kind exist. */
    public static final Range CARD_W = new Range("card power", 0, 600, "W");

    /** Air at the card's inlet in the reference, °C. Common practice. */
    public static final double REFERENCE_INLET_C = 25;

    /** The card's temperature in the reference, °C. Common practice. */
    public static final double REFERENCE_CARD_C = 75;

    /** The fastest the fans turn, over their reference speed. Common practice. */
    public static final double MOST_RATIO = 1.4;

    /** Below this ratio the fans stand, and the fins cool as if at it. Common practice. */
    public static final double LEAST_RATIO = 0.2;

    private CardCooling() {}

    /**
     * Gives the resistance at the reference of this class.
     *
     * @param boardPowerW board power, W, above 0
     * @return K/W
     * @throws IllegalArgumentException for a power not above 0
     */
    public static double referenceKw(double boardPowerW) {
        return referenceKw(boardPowerW, REFERENCE_INLET_C, REFERENCE_CARD_C);
    }

    /**
     * Gives the resistance at another reference.
     *
     * @param boardPowerW board power, W, above 0
     * @param inletC air at the card's inlet, °C
     * @param cardC the card's temperature, °C, not below the inlet
     * @return K/W
     * @throws IllegalArgumentException for a power not above 0 or a card colder than its inlet
     */
    public static double referenceKw(double boardPowerW, double inletC, double cardC) {
        double required = ThermalLadder.requiredKw(cardC, inletC, boardPowerW);
        return Expect.notNegative(required, "(cardC - inletC) / boardPowerW");
    }

    /**
     * Gives the fan speed that keeps the card at a temperature.
     *
     * @param referenceKw as from {@link #referenceKw(double)}, K/W
     * @param limitC temperature to keep, °C
     * @param inletC air at the card's inlet, °C
     * @param powerW what the card draws, W, 0 or more
     * @return ratio to the reference speed; infinite when the inlet leaves no room
     * @throws IllegalArgumentException for a negative power or resistance
     */
    public static double ratioFor(double referenceKw, double limitC, double inletC, double powerW) {
        Expect.notNegative(powerW, "powerW");
        return CoolerResistance.speedFor(referenceKw, (limitC - inletC) / powerW);
    }

    /**
     * Tells whether a ratio is beyond what the fans can do.
     *
     * @param ratio as from {@link #ratioFor}
     * @return true above {@link #MOST_RATIO}
     */
    public static boolean isTooHot(double ratio) {
        return !(ratio <= MOST_RATIO);
    }

    /**
     * Gives the slowest ratio at which the card's fans run: the speed of its idle level.
     *
     * @param loadDba level at the reference, dB(A)
     * @param idleDba level at rest, dB(A); minus infinity when the fans stop
     * @return at least {@link #LEAST_RATIO}
     */
    public static double leastRatio(double loadDba, double idleDba) {
        Expect.level(loadDba, "loadDba");
        Expect.level(idleDba, "idleDba");
        double idleRatio = FanNoise.ratioForChange(idleDba - loadDba);
        // Two silences have no difference; such a card has no fans to turn.
        return idleRatio > LEAST_RATIO ? Math.min(idleRatio, MOST_RATIO) : LEAST_RATIO;
    }

    /**
     * Gives the level at a ratio.
     *
     * @param loadDba level at the reference, dB(A) at the sheet's distance
     * @param idleDba level at rest, dB(A) at the same distance
     * @param ratio speed / reference speed, 0 or more
     * @return dB(A) at that distance, never under the idle level
     */
    public static double levelDba(double loadDba, double idleDba, double ratio) {
        Expect.level(idleDba, "idleDba");
        return Math.max(idleDba, FanNoise.atSpeedDba(loadDba, ratio));
    }
}
