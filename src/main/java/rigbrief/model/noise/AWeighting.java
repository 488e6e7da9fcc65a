package rigbrief.model.noise;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * The A-weighting: how much less the ear makes of low and very high tones.
 *
 * <p>Formula: 20 log10(12194² f⁴ / ((f² + 20.6²) sqrt((f² + 107.7²)(f² + 737.9²)) (f² + 12194²))) +
 * 2.00.
 *
 * <p>Source: IEC 61672-1, analytic form in a published table "A, C and U weighting"; agrees with
 * the tabled weights to 0.05 dB at the exact band centres.
 */
public final class AWeighting {
    /** Frequencies of hearing. */
    public static final Range FREQUENCY_HZ = new Range("frequency", 10, 20_000, "Hz");

    private static final double POLE_1_HZ = 20.6;
    private static final double POLE_2_HZ = 107.7;
    private static final double POLE_3_HZ = 737.9;
    private static final double POLE_4_HZ = 12_194;
    private static final double ZERO_AT_ONE_KILOHERTZ_DB = 2.00;

    private AWeighting() {}

    /**
     * Gives the weight at a frequency.
     *
     * @param frequencyHz frequency, Hz
     * @return dB to add to the level
     * @throws IllegalArgumentException for a frequency not above 0
     */
    public static double weightDb(double frequencyHz) {
        double f2 = square(Expect.positive(frequencyHz, "frequencyHz"));
        double above = square(POLE_4_HZ) * f2 * f2;
        double middle = Math.sqrt((f2 + square(POLE_2_HZ)) * (f2 + square(POLE_3_HZ)));
        double below = (f2 + square(POLE_1_HZ)) * middle * (f2 + square(POLE_4_HZ));
        return 20 * Math.log10(above / below) + ZERO_AT_ONE_KILOHERTZ_DB;
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * Gives the A-weighted level of a row of octave bands.
     *
     * @param first band of the first level
     * @param octaveDb levels of that band and the ones above it, dB
     * @return dB(A)
     * @throws IllegalArgumentException for more levels than there are bands
     */
    public static double dba(OctaveBand first, double... octaveDb) {
        OctaveBand[] bands = OctaveBand.values();
        RoomCriteria.refuseBeyond(first, octaveDb.length, bands.length);
        double energy = 0;
        for (int i = 0; i < octaveDb.length; i++) {
            energy += SoundSum.energy(octaveDb[i] + bands[first.ordinal() + i].aWeightDb());
        }
        return SoundSum.levelDba(energy);
    }
}
