package rigbrief.model.speed;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * A predicted rate or time with the spread that measurements have left around such predictions.
 *
 * <p>Formula: the logarithm is normal around that of the middle value; range at confidence c =
 * middle x exp(± sigma x quantile((1 + c) / 2)); chance of at least x = normal(ln(middle / x) /
 * sigma).
 *
 * <p>Common practice: ratios of measured to predicted speed scatter evenly on a log scale.
 *
 * @param middle the predicted value, any unit, above 0: as often exceeded as missed
 * @param sigma standard deviation on the natural log scale, 0 or more; 0.1 is about 10 %
 */
public record PredictionRange(double middle, double sigma) {
    /** Spreads that a fit worth its name leaves. */
    public static final Range SIGMA = new Range("spread of the prediction", 0.01, 0.4, "");

    /** Refuses a value not above 0 and a negative spread. */
    public PredictionRange {
        Expect.positive(middle, "middle");
        Expect.notNegative(sigma, "sigma");
    }

    /**
     * Gives the lower end of the range.
     *
     * @param confidence chance that the truth is within both ends, 0 to below 1
     * @return in the unit of the middle
     * @throws IllegalArgumentException for a confidence outside that
     */
    public double low(double confidence) {
        return middle * Math.exp(-sigma * deviations(confidence));
    }

    /**
     * Gives the upper end of the range.
     *
     * @param confidence chance that the truth is within both ends, 0 to below 1
     * @return in the unit of the middle
     * @throws IllegalArgumentException for a confidence outside that
     */
    public double high(double confidence) {
        return middle * Math.exp(sigma * deviations(confidence));
    }

    private static double deviations(double confidence) {
        return NormalDistribution.quantile((1 + Expect.share(confidence, "confidence")) / 2);
    }

    /**
     * Gives the chance that the truth is at least a value: for rates.
     *
     * @param required in the unit of the middle, above 0
     * @return 0 to 1; without spread, 1 when the middle reaches it
     * @throws IllegalArgumentException for a value not above 0
     */
    public double chanceOfAtLeast(double required) {
        double log = Math.log(middle / Expect.positive(required, "required"));
        if (sigma == 0) {
            return log >= 0 ? 1 : 0;
        }
        return NormalDistribution.atMost(log / sigma);
    }

    /**
     * Gives the chance that the truth is at most a value: for times.
     *
     * @param allowed in the unit of the middle, above 0
     * @return 0 to 1; without spread, 1 when the middle keeps within it
     * @throws IllegalArgumentException for a value not above 0
     */
    public double chanceOfAtMost(double allowed) {
        double log = Math.log(Expect.positive(allowed, "allowed") / middle);
        if (sigma == 0) {
            return log >= 0 ? 1 : 0;
        }
        return NormalDistribution.atMost(log / sigma);
    }
}
