package rigbrief.model.link;

import rigbrief.model.Expect;

/**
 * The bandwidth number by which a DisplayPort chain of several screens shares one cable.
 *
 * <p>Formula: PBN = ceil(kHz x bits per pixel / 8 x 64/54 x 1.006 / 1000), times 1.024016 where
 * error correction runs; whole-number arithmetic, so that the ceiling never rests on a rounding
 * error.
 *
 * <p>Source: DisplayPort 1.2 multi-stream transport, with the margins of an open operating system's
 * kernel (0.6 % for spread spectrum, 2.4016 % for error correction) and its published test vectors.
 */
public final class MultiStream {
    private static final long MILLION = 1_000_000;
    private static final long CORRECTION_MILLIONTHS = 1_024_016;
    private static final long BITS_PER_BYTE = 8;

    private MultiStream() {}

    /**
     * Gives the bandwidth number of one stream.
     *
     * @param pixelClockKhz pixel clock, kHz
     * @param bitsPerPixel bits per pixel as sent
     * @param withErrorCorrection true on an 8b/10b link that carries compressed streams
     * @return whole units of 54/64 MB/s, rounded up
     * @throws IllegalArgumentException for a clock or a depth below 1
     */
    public static long bandwidthNumber(
            int pixelClockKhz, int bitsPerPixel, boolean withErrorCorrection) {
        Expect.atLeastOne(pixelClockKhz, "pixelClockKhz");
        Expect.atLeastOne(bitsPerPixel, "bitsPerPixel");
        long plain = (long) pixelClockKhz * bitsPerPixel * 64 * 1_006;
        long above = withErrorCorrection ? Math.multiplyExact(plain, CORRECTION_MILLIONTHS) : plain;
        long below = BITS_PER_BYTE * 54 * MILLION * (withErrorCorrection ? MILLION : 1);
        return Math.floorDiv(above + below - 1, below);
    }
}
