package rigbrief.assess;

import rigbrief.model.speed.NormalDistribution;

/**
 * How far a prediction is to be trusted.
 *
 * <p>Formulas: {@link rigbrief.model.speed.PredictionRange}.
 */
public final class Sureness {
    private static final double PERCENT = 100;

    private final double oneSided;
    private final double twoSided;

    /**
     * A sureness.
     *
     * @param sigma spread of predictions, standard deviation of the natural logarithm
     * @param confidencePercent chance with which a must has to hold, 1 to 99
     */
    public Sureness(double sigma, int confidencePercent) {
        double share = confidencePercent / PERCENT;
        this.oneSided = Math.exp(sigma * NormalDistribution.quantile(share));
        this.twoSided = Math.exp(sigma * NormalDistribution.quantile((1 + share) / 2));
    }

    /** What a rate is at least, with that chance. */
    public double atLeast(double rate) {
        return rate / oneSided;
    }

    /** What a time is at most, with that chance. */
    public double atMost(double time) {
        return time * oneSided;
    }

    /** Lower end of the range in which a figure lies with that chance. */
    public double low(double figure) {
        return figure / twoSided;
    }

    /** Upper end of that range. */
    public double high(double figure) {
        return figure * twoSided;
    }
}
