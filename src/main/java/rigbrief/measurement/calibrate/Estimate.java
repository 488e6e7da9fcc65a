package rigbrief.measurement.calibrate;

/**
 * A factor on a figure of the catalogue, with its interval.
 *
 * @param factor most likely factor; 1 leaves the figure
 * @param low lower end of the 95 % interval
 * @param high upper end of the 95 % interval
 */
public record Estimate(double factor, double low, double high) {
    /**
     * From the logarithm.
     *
     * @param log natural logarithm of the factor
     * @param error its standard error
     * @param quantile how many errors the interval reaches to either side
     */
    static Estimate ofLog(double log, double error, double quantile) {
        return new Estimate(
                Math.exp(log), Math.exp(log - quantile * error), Math.exp(log + quantile * error));
    }
}
