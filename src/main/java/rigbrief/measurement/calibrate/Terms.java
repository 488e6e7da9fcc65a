package rigbrief.measurement.calibrate;

import rigbrief.catalogue.FrameRate;
import rigbrief.measurement.fit.Loss;
import rigbrief.measurement.fit.Prior;

/**
 * How much the catalogue is believed before anything is measured, as spreads of natural logarithms:
 * 0.1 is about 10 %.
 *
 * @param demandSigma of the demand of a workload
 * @param rateSigma of the rate of a part
 * @param pieceSigma of one piece of a part against the others of its model
 * @param loss how measurements are weighed
 */
public record Terms(double demandSigma, double rateSigma, double pieceSigma, Loss loss) {
    /**
     * How far a title's memory exponent may well be off, one standard deviation. Common practice:
     * titles lie between 0.1 and 0.4.
     */
    static final double EXPONENT_SIGMA = 0.10;

    /** Share of a title's spread of frame times by which it may well be off. Common practice. */
    static final double SPREAD_SHARE = 0.30;

    /** How far a title's spread of frame times may well be off, one standard deviation. */
    static double spreadSigma(FrameRate title) {
        return SPREAD_SHARE * Math.max(LEAST_SPREAD, title.shape().spread());
    }

    /** A title without any spread may still have some. */
    private static final double LEAST_SPREAD = 0.05;

    public Terms {
        if (!(demandSigma > 0 && rateSigma > 0 && pieceSigma > 0)) {
            throw new IllegalArgumentException(
                    "terms: found spreads %s, %s, %s, expected all above 0; 0.25, 0.1, 0.03 are usual"
                            .formatted(demandSigma, rateSigma, pieceSigma));
        }
    }

    /**
     * A demand within a quarter of the catalogue's, a rate within a tenth, pieces within 3 %.
     *
     * <p>Common practice: reviews that test several pieces of a part find a few percent between
     * them; a demand is worked out from fewer facts than a rate is.
     */
    public static Terms usual() {
        return new Terms(0.25, 0.10, 0.03, Loss.BISQUARE);
    }

    /** A piece may be set up wrongly, so its prior gives way far out. */
    Prior prior(Unknown unknown) {
        return switch (unknown.sort()) {
            case DEMAND -> Prior.normal(0, demandSigma);
            case RATE -> Prior.normal(0, rateSigma);
            case MEMORY -> Prior.normal(0, EXPONENT_SIGMA);
            case PIECE -> Prior.longTailed(0, pieceSigma);
        };
    }
}
