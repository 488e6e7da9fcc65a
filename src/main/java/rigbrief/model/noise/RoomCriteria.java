package rigbrief.model.noise;

import rigbrief.model.Range;

/**
 * The noise rating of a room: the curve which the loudest octave band touches.
 *
 * <p>Formula: level of curve NR in a band = A + B x NR, so NR = (level - A) / B, the greatest over
 * all bands.
 *
 * <p>Source: table of NR curves on an acoustic program's help page, with 4.8 at 500 Hz as in other
 * tables (one revision prints 4.2).
 */
public final class RoomCriteria {
    /** Ratings that the curves are drawn for. */
    public static final Range RATING = new Range("noise rating", 0, 130, "");

    private static final double[] A = {55.4, 35.4, 22.0, 12.0, 4.8, 0.0, -3.5, -6.1, -8.0};
    private static final double[] B = {
        0.681, 0.790, 0.870, 0.930, 0.974, 1.000, 1.015, 1.025, 1.030
    };

    private RoomCriteria() {}

    /**
     * A rating and the band that set it.
     *
     * @param rating NR, not rounded
     * @param governedBy the band whose level touches the curve
     */
    public record Rating(double rating, OctaveBand governedBy) {}

    /**
     * Gives the level of a curve in a band.
     *
     * @param rating NR
     * @param band up to 8 kHz
     * @return dB
     * @throws IllegalArgumentException for 16 kHz, which the curves leave out
     */
    public static double curveDb(double rating, OctaveBand band) {
        refuseBeyond(band, 1, A.length);
        return A[band.ordinal()] + B[band.ordinal()] * rating;
    }

    /**
     * Gives the rating of a row of octave bands.
     *
     * @param first band of the first level
     * @param octaveDb levels of that band and the ones above it, up to 8 kHz, dB; none at all is
     *     rated minus infinity
     * @return the rating with its governing band
     * @throws IllegalArgumentException for more levels than the curves have
     */
    public static Rating rating(OctaveBand first, double... octaveDb) {
        refuseBeyond(first, octaveDb.length, A.length);
        int governing = first.ordinal();
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < octaveDb.length; i++) {
            int band = first.ordinal() + i;
            double rating = (octaveDb[i] - A[band]) / B[band];
            if (rating > highest) {
                highest = rating;
                governing = band;
            }
        }
        return new Rating(highest, OctaveBand.values()[governing]);
    }

    static void refuseBeyond(OctaveBand first, int count, int bands) {
        if (first.ordinal() + count > bands) {
            throw new IllegalArgumentException(
                    "octaveDb: found %d from %s Hz on, expected at most %d; leave out the last"
                            .formatted(count, first.nominalHz(), bands - first.ordinal()));
        }
    }
}
