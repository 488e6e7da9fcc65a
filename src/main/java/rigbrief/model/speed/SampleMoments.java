package rigbrief.model.speed;

import rigbrief.model.Expect;

/**
 * Mean and standard deviation of measurements.
 *
 * <p>Formula: mean = sum / n; deviation = sqrt(sum of squared distances from the mean / (n - 1)),
 * in two passes with a correction for the mean's own rounding.
 *
 * <p>Source: Chan, Golub, LeVeque, "Algorithms for computing the sample variance", The American
 * Statistician 37(3), 1983 (from memory); checked against certified values of the NIST statistical
 * reference datasets.
 */
public final class SampleMoments {
    private SampleMoments() {}

    /**
     * Gives the sum, each rounding error carried along.
     *
     * @param values any number of values
     * @return their sum; 0 for none
     */
    public static double sum(double... values) {
        double sum = 0;
        double lost = 0;
        for (double value : values) {
            double next = sum + value;
            lost += Math.abs(sum) >= Math.abs(value) ? (sum - next) + value : (value - next) + sum;
            sum = next;
        }
        return sum + lost;
    }

    /**
     * Gives the arithmetic mean.
     *
     * @param values at least one
     * @return the mean
     * @throws IllegalArgumentException for no values
     */
    public static double mean(double... values) {
        return sum(values) / Expect.atLeastOne(values.length, "number of values");
    }

    /**
     * Gives the sample standard deviation.
     *
     * @param values at least two
     * @return the deviation, in the unit of the values
     * @throws IllegalArgumentException for fewer than two values
     */
    public static double deviation(double... values) {
        Expect.atLeastOne(values.length - 1, "number of values less one");
        double mean = mean(values);
        double squares = 0;
        double rest = 0;
        for (double value : values) {
            double apart = value - mean;
            squares += apart * apart;
            rest += apart;
        }
        return Math.sqrt((squares - rest * rest / values.length) / (values.length - 1));
    }

    /**
     * Gives the spread of positive measurements as a ratio: the deviation of their logarithms.
     *
     * @param values at least two, each above 0
     * @return standard deviation on the natural log scale, no unit
     * @throws IllegalArgumentException for fewer than two values or one not above 0
     */
    public static double logDeviation(double... values) {
        double[] logs = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            logs[i] = Math.log(Expect.positive(values[i], "value"));
        }
        return deviation(logs);
    }
}
