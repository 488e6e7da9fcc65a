package rigbrief.model.memory;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * What memory modules pass, and the names under which modules are sold.
 *
 * <p>Formula: bytes/s = transfers/s x 8 bytes x channels; module name = PC4 or PC5 and MB/s cut
 * down to hundreds. A rate which is sold rounded (2133, 2666, 2933) is exactly a multiple of 133
 * 1/3 MT/s.
 *
 * <p>Source: JESD79-4 and JESD79-5 (64 data bits a module); the arithmetic of the i2c-tools module
 * decoder for the names. Peak figures: measured ones are lower.
 */
public final class MemoryBandwidth {
    /** Rates of the two generations, JESD79-4 to JESD79-5C. */
    public static final Range RATE_MTS = new Range("memory rate", 1_600, 8_800, "MT/s");

    private static final int BYTES_PER_TRANSFER = 8;
    private static final int STEP_THIRDS = 400;
    private static final int THIRDS = 3;
    private static final int NAME_STEP_MBS = 100;
    private static final long BYTES_PER_MEGABYTE = 1_000_000;

    private MemoryBandwidth() {}

    /**
     * Gives the peak bandwidth.
     *
     * @param ratedMts rate as sold, MT/s
     * @param channels modules that work side by side, 1 or more
     * @return bytes per second
     * @throws IllegalArgumentException for a rate or a count below 1
     */
    public static double bytesPerSecond(int ratedMts, int channels) {
        Expect.atLeastOne(channels, "channels");
        double perThird = (double) BYTES_PER_TRANSFER * BYTES_PER_MEGABYTE / THIRDS;
        return thirdsOfMts(ratedMts) * perThird * channels;
    }

    /**
     * Gives a module's trade name.
     *
     * @param generation 4 for DDR4, 5 for DDR5
     * @param ratedMts rate as sold, MT/s
     * @return for example {@code PC4-23400}
     * @throws IllegalArgumentException for another generation or a rate below 1
     */
    public static String moduleName(int generation, int ratedMts) {
        if (generation != 4 && generation != 5) {
            throw new IllegalArgumentException(
                    "generation: found %d, expected 4 or 5; write 5 for DDR5"
                            .formatted(generation));
        }
        int hundreds = thirdsOfMts(ratedMts) * BYTES_PER_TRANSFER / (THIRDS * NAME_STEP_MBS);
        return "PC%d-%d".formatted(generation, hundreds * NAME_STEP_MBS);
    }

    /** The exact rate in thirds of a MT/s, so that 2933 1/3 is a whole number. */
    private static int thirdsOfMts(int ratedMts) {
        int thirds = Expect.atLeastOne(ratedMts, "ratedMts") * THIRDS;
        int nearest = Math.round((float) thirds / STEP_THIRDS) * STEP_THIRDS;
        return Math.abs(nearest - thirds) < THIRDS ? nearest : thirds;
    }
}
