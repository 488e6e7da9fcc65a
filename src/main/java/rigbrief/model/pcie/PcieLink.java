package rigbrief.model.pcie;

/**
 * A PCI Express link: how many lanes at which generation.
 *
 * <p>Formula: bytes/s per direction = line rate x coding / 8 x lanes; coding 8b/10b for generations
 * 1 and 2, 128b/130b for 3 to 5, none for 6 (counted before its frame overhead of about 8 %).
 *
 * <p>Source: PCI Express Base Specification, line rates and codings as an open operating system's
 * kernel restates them. Packet overhead is not taken off: measured payload is usually 80 to 95 % of
 * these numbers (from memory).
 *
 * @param generation 1 to 6
 * @param lanes 1, 2, 4, 8 or 16
 */
public record PcieLink(int generation, int lanes) {
    private static final double[] LINE_RATE_BITS_PER_SECOND = {2.5e9, 5e9, 8e9, 16e9, 32e9, 64e9};
    private static final int BITS_PER_BYTE = 8;
    private static final int MOST_LANES = 16;
    private static final int FIRST_LONG_CODE = 3;
    private static final int FIRST_WITHOUT_CODE = 6;

    /** Refuses a generation or a width that the standard does not have. */
    public PcieLink {
        if (generation < 1 || generation > LINE_RATE_BITS_PER_SECOND.length) {
            throw new IllegalArgumentException(
                    "generation: found %d, expected 1 to 6; write the slot's own generation"
                            .formatted(generation));
        }
        if (lanes < 1 || lanes > MOST_LANES || Integer.bitCount(lanes) != 1) {
            throw new IllegalArgumentException(
                    "lanes: found %d, expected 1, 2, 4, 8 or 16; write the wired width"
                            .formatted(lanes));
        }
    }

    /**
     * Gives the throughput of one link per direction.
     *
     * @param generation 1 to 6
     * @param lanes 1, 2, 4, 8 or 16
     * @return bytes per second
     * @throws IllegalArgumentException for a generation or width that does not exist
     */
    public static double throughputBytesPerSecond(int generation, int lanes) {
        return new PcieLink(generation, lanes).bytesPerSecond();
    }

    /**
     * Gives this link's throughput per direction.
     *
     * @return bytes per second
     */
    public double bytesPerSecond() {
        return LINE_RATE_BITS_PER_SECOND[generation - 1] * lanes * coding() / BITS_PER_BYTE;
    }

    private double coding() {
        if (generation >= FIRST_WITHOUT_CODE) {
            return 1;
        }
        return generation >= FIRST_LONG_CODE ? 128.0 / 130 : 0.8;
    }

    /**
     * Gives the link that a card and a slot agree on: the lesser generation at the lesser width.
     *
     * @param other what the other end has
     * @return the common link
     */
    public PcieLink with(PcieLink other) {
        return new PcieLink(Math.min(generation, other.generation), Math.min(lanes, other.lanes));
    }
}
