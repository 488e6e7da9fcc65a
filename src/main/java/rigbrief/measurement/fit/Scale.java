package rigbrief.measurement.fit;

import java.util.Arrays;

/** The spread of residuals, by their median size, which outliers do not move. */
final class Scale {
    /** Median size of a normal distribution's errors over their standard deviation. */
    private static final double NORMAL = 0.6745;

    private Scale() {}

    /**
     * Gives the median of the residuals' sizes over {@value #NORMAL}.
     *
     * @param residuals at least one
     */
    static double of(double... residuals) {
        double[] sizes = new double[residuals.length];
        for (int i = 0; i < sizes.length; i++) {
            sizes[i] = Math.abs(residuals[i]);
        }
        Arrays.sort(sizes);
        int half = sizes.length / 2;
        double median = sizes.length % 2 == 1 ? sizes[half] : (sizes[half - 1] + sizes[half]) / 2;
        return median / NORMAL;
    }
}
