package rigbrief.model.memory;

/**
 * What a SATA port carries.
 *
 * <p>Formula: line rate x 0.8 / 8, for 8b/10b coding.
 *
 * <p>Source: a chipset support note on Serial ATA transfer rates.
 */
public final class SataLink {
    private static final long FIRST_BYTES_PER_SECOND = 150_000_000;
    private static final int NEWEST = 3;

    private SataLink() {}

    /**
     * Gives the payload rate.
     *
     * @param generation 1, 2 or 3 (1.5, 3 or 6 Gbit/s)
     * @return bytes per second
     * @throws IllegalArgumentException for another generation
     */
    public static long bytesPerSecond(int generation) {
        if (generation < 1 || generation > NEWEST) {
            throw new IllegalArgumentException(
                    "generation: found %d, expected 1 to 3; write 3 for 6 Gbit/s"
                            .formatted(generation));
        }
        return FIRST_BYTES_PER_SECOND << (generation - 1);
    }
}
