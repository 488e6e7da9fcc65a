package rigbrief.model.noise;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How loud a tone is felt to be.
 *
 * <p>Formula: sone = 2^((phon - 40) / 10): ten phon more is twice as loud.
 *
 * <p>Source: the definition of the sone, in an encyclopedia. For tones and narrow bands; broadband
 * noise needs ISO 532.
 */
public final class Loudness {
    /** Loudness levels for which the formula is defined. */
    public static final Range PHON = new Range("loudness level", 40, 120, "phon");

    private static final double ONE_SONE_PHON = 40;
    private static final double DOUBLING_PHON = 10;

    private Loudness() {}

    /**
     * Gives the loudness of a loudness level.
     *
     * @param phon loudness level, phon
     * @return sone
     */
    public static double sone(double phon) {
        return Math.pow(2, (Expect.finite(phon, "phon") - ONE_SONE_PHON) / DOUBLING_PHON);
    }

    /**
     * Gives the loudness level of a loudness.
     *
     * @param sone loudness, sone
     * @return phon
     * @throws IllegalArgumentException for a loudness not above 0
     */
    public static double phon(double sone) {
        return ONE_SONE_PHON
                + DOUBLING_PHON * Math.log(Expect.positive(sone, "sone")) / Math.log(2);
    }
}
