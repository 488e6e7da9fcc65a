package rigbrief.measurement.fit;

/**
 * How much single observations are believed to scatter before any is seen.
 *
 * <p>Where there are hardly more observations than parameters, what is left over says nothing of
 * how much they scatter; intervals would then be far too narrow.
 *
 * @param usual standard deviation, in the unit of the observations
 * @param weight how many observations' worth that opinion has; 0 for none
 */
public record Scatter(double usual, double weight) {
    /** No opinion. */
    public static final Scatter UNKNOWN = new Scatter(0, 0);

    public Scatter {
        if (!(usual >= 0 && weight >= 0)) {
            throw new IllegalArgumentException(
                    "scatter: found %s with weight %s, expected both 0 or more"
                            .formatted(usual, weight));
        }
    }

    /**
     * The opinion and what was found, by their weights.
     *
     * @param found standard deviation found
     * @param freedom observations beyond the parameters, 0 or more
     * @return above 0
     */
    double with(double found, double freedom) {
        double together = weight + freedom;
        double square =
                together > 0
                        ? (weight * usual * usual + freedom * found * found) / together
                        : found * found;
        return Math.max(Double.MIN_NORMAL, Math.sqrt(square));
    }
}
