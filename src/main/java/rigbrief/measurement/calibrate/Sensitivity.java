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
        double[] beside = at.clone();
        beside[channel.ordinal()] += STEP;
        return (speed.log(beside) - base) / STEP;
    }

    /** Size of that slope where the catalogue's figures hold. */
    static double asListed(Speed speed, Channel channel) {
        double[] listed = new double[Channel.values().length];
        return Math.abs(slope(speed, listed, channel, speed.log(listed)));
    }
}
