package rigbrief.model.noise;

import rigbrief.model.Expect;

/**
 * Adds and subtracts the levels of sources that know nothing of each other.
 *
 * <p>Formula: L = 10 log10(sum of 10^(Li/10)). Silence is minus infinity and adds nothing.
 *
 * <p>Source: lecture slides "Decibel values: sum and difference" and an engineering reference page
 * on adding decibels. Any one weighting and one distance throughout: dB(A) at 1 m adds to dB(A) at
 * 1 m.
 */
public final class SoundSum {
    /** The level of no sound at all. */
    public static final double SILENCE_DBA = Double.NEGATIVE_INFINITY;

    private static final double LN10_TENTH = Math.log(10) / 10;

    private SoundSum() {}

    /**
     * Gives a level's share of energy, in units of a level of 0 dB.
     *
     * @param levelDba level, dB
     * @return 10^(level/10); 0 for silence
     * @throws IllegalArgumentException for what is no level
     */
    public static double energy(double levelDba) {
        return Math.exp(Expect.level(levelDba, "levelDba") * LN10_TENTH);
    }

    /**
     * Gives the level of an energy, the inverse of {@link #energy}.
     *
     * @param energy in units of a level of 0 dB, 0 or more
     * @return dB; minus infinity for 0
     * @throws IllegalArgumentException for a negative energy
     */
    public static double levelDba(double energy) {
        return 10 * Math.log10(Expect.notNegative(energy, "energy"));
    }

    /**
     * Gives two sources together.
     *
     * @param oneDba level of the one, dB
     * @param otherDba level of the other, dB
     * @return dB
     */
    public static double dba(double oneDba, double otherDba) {
        return levelDba(energy(oneDba) + energy(otherDba));
    }

    /**
     * Gives any number of sources together.
     *
     * @param levelsDba levels, dB; none at all is silence
     * @return dB
     */
    public static double dba(double... levelsDba) {
        double sum = 0;
        for (double levelDba : levelsDba) {
            sum += energy(levelDba);
        }
        return levelDba(sum);
    }

    /**
     * Gives several equal sources together.
     *
     * @param levelDba level of one, dB
     * @param count how many, 0 or more
     * @return dB
     * @throws IllegalArgumentException for a negative count
     */
    public static double ofEqualDba(double levelDba, int count) {
        return levelDba(energy(levelDba) * Expect.notNegative(count, "count"));
    }

    /**
     * Gives a source alone from a measurement over a background.
     *
     * @param measuredDba both together, dB
     * @param backgroundDba background alone, dB, below the measurement
     * @return dB
     * @throws IllegalArgumentException when the background is not below the measurement
     */
    public static double aloneDba(double measuredDba, double backgroundDba) {
        double left = energy(measuredDba) - energy(backgroundDba);
        return levelDba(Expect.positive(left, "measuredDba above backgroundDba"));
    }
}
