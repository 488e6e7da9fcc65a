package rigbrief.model.air;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * What another speed does to a fan: flow with the speed, pressure with its square, power with its
 * cube.
 *
 * <p>Formula: x' = x (n'/n)^1, ^2, ^3.
 *
 * <p>Source: the affinity laws, in a fan maker's "basic fan laws".
 */
public final class FanLaws {
    /** Speed shares for which a fan still follows the laws. */
    public static final Range SPEED_SHARE = new Range("fan speed share", 0.2, 1, "");

    private FanLaws() {}

    /**
     * Gives the flow at another speed.
     *
     * @param flowM3h flow now, m³/h
     * @param speedRatio other speed / speed now
     * @return m³/h
     */
    public static double flowM3h(double flowM3h, double speedRatio) {
        return Expect.notNegative(flowM3h, "flowM3h") * ratio(speedRatio);
    }

    /**
     * Gives the pressure at another speed.
     *
     * @param pressurePa pressure now, Pa
     * @param speedRatio other speed / speed now
     * @return Pa
     */
    public static double pressurePa(double pressurePa, double speedRatio) {
        return Expect.notNegative(pressurePa, "pressurePa") * ratio(speedRatio) * speedRatio;
    }

    /**
     * Gives the power at another speed.
     *
     * @param powerW power now, W
     * @param speedRatio other speed / speed now
     * @return W
     */
    public static double powerW(double powerW, double speedRatio) {
        return Expect.notNegative(powerW, "powerW") * ratio(speedRatio) * speedRatio * speedRatio;
    }

    private static double ratio(double speedRatio) {
        return Expect.notNegative(speedRatio, "speedRatio");
    }
}
