package rigbrief.measurement.calibrate;

import java.util.Arrays;

/**
 * How far measured speeds lie from predicted ones.
 *
 * @param count number of measurements
 * @param medianShare half of them lie within this share of the prediction
 * @param ninetiethShare nine of ten lie within this share
 */
public record Errors(int count, double medianShare, double ninetiethShare) {
    /** From logarithms of measured over predicted. */
    static Errors of(double[] logs) {
        double[] shares = new double[logs.length];
        Arrays.setAll(shares, i -> Math.abs(Math.expm1(logs[i])));
        Arrays.sort(shares);
        return new Errors(logs.length, at(shares, 0.5), at(shares, 0.9));
    }

    /** By nearest rank, so that it is an error that was really made. */
    private static double at(double[] sorted, double share) {
        return sorted.length == 0
                ? Double.NaN
                : sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)];
    }
}
