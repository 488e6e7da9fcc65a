package rigbrief.model.heat;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How a cooler's thermal resistance grows as its fan slows down.
 *
 * <p>Formula: R(s) = R(full) x s^-0.5, s the share of full speed.
 *
 * <p>Common practice: the exponent 0.5 is that of laminar flow along a plate (Nusselt number with
 * the square root of the Reynolds number), flow in proportion to speed. The part of the resistance
 * that conducts, and does not feel the fan, is slowed with the rest: the model errs to the warm
 * side.
 */
public final class CoolerResistance {
    /** Speed shares for which the law has been thought of. */
    public static final Range SPEED_SHARE = new Range("cooler fan speed share", 0.3, 1, "");

    /** The slowest that a cooler's fan is planned to turn, share of full speed. Common practice. */
    public static final double LEAST_SPEED_SHARE = 0.3;

    private CoolerResistance() {}

    /**
     * Gives the resistance at a speed.
     *
     * @param fullSpeedKw resistance at full speed, K/W
     * @param speedShare speed / full speed, above 0
     * @return K/W
     * @throws IllegalArgumentException for a negative resistance or a speed not above 0
     */
    public static double atSpeed(double fullSpeedKw, double speedShare) {
        Expect.notNegative(fullSpeedKw, "fullSpeedKw");
        return fullSpeedKw / Math.sqrt(Expect.positive(speedShare, "speedShare"));
    }

    /**
     * Gives the speed at which the resistance falls to a value.
     *
     * @param fullSpeedKw resistance at full speed, K/W
     * @param requiredKw resistance wanted, K/W
     * @return share of full speed; above 1 when full speed is not enough; infinite when the wanted
     *     resistance is 0 or less
     * @throws IllegalArgumentException for a negative resistance at full speed
     */
    public static double speedFor(double fullSpeedKw, double requiredKw) {
        Expect.notNegative(fullSpeedKw, "fullSpeedKw");
        if (!(requiredKw > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double ratio = fullSpeedKw / requiredKw;
        return ratio * ratio;
    }
}
