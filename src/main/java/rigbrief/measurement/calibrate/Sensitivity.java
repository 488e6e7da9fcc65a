package rigbrief.measurement.calibrate;

/** How much of a measured speed hangs on a channel. */
final class Sensitivity {
    private static final double STEP = 1e-6;

    private Sensitivity() {}

    /**
     * Slope of the logarithm of the speed against a channel's load.
     *
     * @param at the loads, by channel
     * @param base the logarithm of the speed there
     * @return about 0 to 1 of either sign: 1 where the channel decides alone
     */
    static double slope(Speed speed, double[] at, Channel channel, double base) {
        double graphics = at[0] + (channel == Channel.GRAPHICS ? STEP : 0);
        double rays = at[1] + (channel == Channel.RAYS ? STEP : 0);
        double processor = at[2] + (channel == Channel.PROCESSOR ? STEP : 0);
        return (speed.log(graphics, rays, processor) - base) / STEP;
    }

    /** Size of that slope where the catalogue's figures hold. */
    static double asListed(Speed speed, Channel channel) {
        return Math.abs(slope(speed, new double[3], channel, speed.log(0, 0, 0)));
    }
}
