package rigbrief.model.speed;

import rigbrief.model.Expect;

/**
 * The standard normal distribution.
 *
 * <p>Formula: rational approximations of the integral and of its inverse, the latter with one
 * Halley step; both good to about fifteen digits.
 *
 * <p>Source: Hart et al., "Computer Approximations", 1968, in the form of West, "Better
 * approximations to cumulative normal functions", 2005 (the integral); Acklam's rational
 * approximation (the inverse); coefficients from memory, checked against a mathematics library.
 */
public final class NormalDistribution {
    private static final double SQRT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double RATIONAL_END = 10 / Math.sqrt(2);
    private static final double VANISHES = 38;

    private static final double[] TOP = {
        3.52624965998911e-2,
        0.700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };
    private static final double[] BOTTOM = {
        8.83883476483184e-2,
        1.75566716318264,
        16.064177579207,
        86.7807322029461,
        296.564248779674,
        637.333633378831,
        793.826512519948,
        440.413735824752
    };

    private static final double TAIL_SHARE = 0.02425;
    private static final double[] MIDDLE_TOP = {
        -39.69683028665376,
        220.9460984245205,
        -275.9285104469687,
        138.3577518672690,
        -30.66479806614716,
        2.506628277459239
    };
    private static final double[] MIDDLE_BOTTOM = {
        -54.47609879822406,
        161.5858368580409,
        -155.6989798598866,
        66.80131188771972,
        -13.28068155288572,
        1
    };
    private static final double[] TAIL_TOP = {
        -7.784894002430293e-3,
        -0.3223964580411365,
        -2.400758277161838,
        -2.549732539343734,
        4.374664141464968,
        2.938163982698783
    };
    private static final double[] TAIL_BOTTOM = {
        7.784695709041462e-3, 0.3224671290700398, 2.445134137142996, 3.754408661907416, 1
    };

    private NormalDistribution() {}

    /**
     * Gives the chance of a value at or below {@code z}.
     *
     * @param z distance from the mean in standard deviations; may be infinite
     * @return 0 to 1
     * @throws IllegalArgumentException for what is not a number
     */
    public static double atMost(double z) {
        if (Double.isNaN(z)) {
            Expect.finite(z, "z");
        }
        double tail = tail(Math.abs(z));
        return z > 0 ? 1 - tail : tail;
    }

    /** The chance beyond x, for x of 0 or more. */
    private static double tail(double x) {
        if (x > VANISHES) {
            return 0;
        }
        double bell = Math.exp(-x * x / 2);
        if (x < RATIONAL_END) {
            return bell * polynomial(TOP, x) / polynomial(BOTTOM, x);
        }
        double fraction = x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
        return bell / (fraction * SQRT_TWO_PI);
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = coefficients[0];
        for (int i = 1; i < coefficients.length; i++) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }

    /**
     * Gives the density.
     *
     * @param z distance from the mean in standard deviations
     * @return per standard deviation
     */
    public static double density(double z) {
        return Math.exp(-z * z / 2) / SQRT_TWO_PI;
    }

    /**
     * Gives the value below which a share lies.
     *
     * @param share above 0, below 1
     * @return distance from the mean in standard deviations
     * @throws IllegalArgumentException for a share outside that
     */
    public static double quantile(double share) {
        Expect.positive(share, "share");
        Expect.positive(1 - share, "1 - share");
        if (share > 0.5) {
            return -quantile(1 - share);
        }
        double rough = share < TAIL_SHARE ? roughTail(share) : roughMiddle(share);
        double error = (atMost(rough) - share) / density(rough);
        return rough - error / (1 + rough * error / 2);
    }

    private static double roughTail(double share) {
        double root = Math.sqrt(-2 * Math.log(share));
        return polynomial(TAIL_TOP, root) / polynomial(TAIL_BOTTOM, root);
    }

    private static double roughMiddle(double share) {
        double off = share - 0.5;
        double square = off * off;
        return off * polynomial(MIDDLE_TOP, square) / polynomial(MIDDLE_BOTTOM, square);
    }
}
