package rigbrief.model.noise;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How a fan's level follows its speed.
 *
 * <p>Formula: change = 50 log10(speed / speed before), so sound energy goes with the fifth power of
 * speed; doubling the speed adds 15.05 dB.
 *
 * <p>Source: a published set of "basic fan laws" with 50 (12 V to 7 V: -11.7 dB). Others use 55 (a
 * public fan spreadsheet); 50 promises less quiet when a fan slows down, which is why it was
 * chosen.
 */
public final class FanNoise {
    /** Decibels per tenfold speed. */
    public static final double SLOPE_DB = 50;

    /** Speed shares down to which bearings and motors stay below the air's noise. */
    public static final Range SPEED_SHARE = new Range("fan speed share", 0.3, 1, "");

    private FanNoise() {}

    /**
     * Gives the change of level with a change of speed.
     *
     * @param speedRatio speed / speed before, 0 or more
     * @return dB; minus infinity for a fan that stops
     * @throws IllegalArgumentException for a negative ratio
     */
    public static double changeDb(double speedRatio) {
        return SLOPE_DB * Math.log10(Expect.notNegative(speedRatio, "speedRatio"));
    }

    /**
     * Gives the level at a speed.
     *
     * @param fullSpeedDba level at full speed, dB(A)
     * @param speedShare speed / full speed, 0 or more
     * @return dB(A)
     * @throws IllegalArgumentException for a negative share or what is no level
     */
    public static double atSpeedDba(double fullSpeedDba, double speedShare) {
        return Expect.level(fullSpeedDba, "fullSpeedDba") + changeDb(speedShare);
    }

    /**
     * Gives the factor by which a fan's sound energy changes with its speed: no logarithm needed.
     *
     * @param speedRatio speed / speed before, 0 or more
     * @return its fifth power
     */
    public static double energyFactor(double speedRatio) {
        double square = speedRatio * speedRatio;
        return square * square * speedRatio;
    }

    /**
     * Gives the speed ratio that makes a change of level, the inverse of {@link #changeDb}.
     *
     * @param changeDb change of level, dB
     * @return ratio; 0 for minus infinity, not a number for the difference of two silences
     */
    public static double ratioForChange(double changeDb) {
        return Math.pow(10, changeDb / SLOPE_DB);
    }
}
