package rigbrief.bench.process;

import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * How cost grows with the number of parts: the exponent of a power law, fitted by least squares to
 * the logarithms of both.
 *
 * @param exponent 1 is linear
 * @param plusMinus half the width of its 95 % interval; NaN with fewer than three points
 * @param rSquared share of the spread that the law explains
 */
public record Growth(double exponent, double plusMinus, double rSquared) {
    /** The fit of points of parts and cost. */
    public static Growth of(List<double[]> points) {
        SimpleRegression fit = new SimpleRegression();
        for (double[] point : points) {
            fit.addData(Math.log(point[0]), Math.log(point[1]));
        }
        double half = points.size() < 3 ? Double.NaN : fit.getSlopeConfidenceInterval();
        return new Growth(fit.getSlope(), half, fit.getRSquare());
    }

    /** What may be said of it. */
    public String words() {
        if (Double.isNaN(plusMinus)) {
            return "too few sizes to tell";
        }
        if (exponent - plusMinus > 1) {
            return "faster than linear";
        }
        return exponent + plusMinus < 1 ? "slower than linear" : "not told from linear";
    }
}
