package rigbrief.model.noise;

/**
 * The octave bands in which sound is measured, with their A-weighting.
 *
 * <p>Source: IEC 61672-1, weights at the exact band centres 1000 x 10^(3n/10) Hz, in a published
 * table "A, C and U weighting".
 */
public enum OctaveBand {
    /** 31.5 Hz. */
    HZ_31_5(-5, 31.5, -39.4),
    /** 63 Hz. */
    HZ_63(-4, 63, -26.2),
    /** 125 Hz. */
    HZ_125(-3, 125, -16.1),
    /** 250 Hz. */
    HZ_250(-2, 250, -8.6),
    /** 500 Hz. */
    HZ_500(-1, 500, -3.2),
    /** 1 kHz. */
    HZ_1000(0, 1_000, 0),
    /** 2 kHz. */
    HZ_2000(1, 2_000, 1.2),
    /** 4 kHz. */
    HZ_4000(2, 4_000, 1.0),
    /** 8 kHz. */
    HZ_8000(3, 8_000, -1.1),
    /** 16 kHz. */
    HZ_16000(4, 16_000, -6.6);

    private final int octavesFromOneKilohertz;
    private final double nominalHz;
    private final double aWeightDb;

    OctaveBand(int octavesFromOneKilohertz, double nominalHz, double aWeightDb) {
        this.octavesFromOneKilohertz = octavesFromOneKilohertz;
        this.nominalHz = nominalHz;
        this.aWeightDb = aWeightDb;
    }

    /**
     * Gives the centre as printed.
     *
     * @return Hz
     */
    public double nominalHz() {
        return nominalHz;
    }

    /**
     * Gives the centre as the standard computes it.
     *
     * @return Hz
     */
    public double exactHz() {
        return 1_000 * Math.pow(10, 0.3 * octavesFromOneKilohertz);
    }

    /**
     * Gives the A-weighting of the band.
     *
     * @return dB, rounded to a tenth as in the standard
     */
    public double aWeightDb() {
        return aWeightDb;
    }
}
