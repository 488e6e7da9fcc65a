package rigbrief.measurement.fit;

/**
 * What is held of a parameter before anything is measured.
 *
 * @param centre most likely value
 * @param sigma how far off it may well be, one standard deviation; infinite for no opinion
 * @param yields whether it gives way where the parameter lies far out, rather than pull ever harder
 */
public record Prior(double centre, double sigma, boolean yields) {
    public Prior {
        if (!(sigma > 0) || !Double.isFinite(centre)) {
            throw new IllegalArgumentException(
                    "prior: found centre %s and sigma %s, expected a number and a sigma above 0"
                            .formatted(centre, sigma));
        }
    }

    /** No opinion; the centre is where the search starts. */
    public static Prior none(double start) {
        return new Prior(start, Double.POSITIVE_INFINITY, false);
    }

    /** A normal distribution. */
    public static Prior normal(double centre, double sigma) {
        return new Prior(centre, sigma, false);
    }

    /** A distribution that is normal in the middle and has long tails. */
    public static Prior longTailed(double centre, double sigma) {
        return new Prior(centre, sigma, true);
    }

    /** Weight of the equation parameter = centre; 0 without an opinion. */
    public double precision() {
        return 1 / (sigma * sigma);
    }
}
