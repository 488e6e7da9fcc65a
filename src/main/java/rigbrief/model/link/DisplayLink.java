package rigbrief.model.link;

import java.util.Optional;
import rigbrief.model.Expect;
import rigbrief.model.link.LinkResult.Carried;

/**
 * Tells whether a mode passes from an output to an input.
 *
 * <p>Formula: required = pixel clock x 3 colours x bits per colour, fits when required is at most
 * the payload; reduced blanking version 1 is tried first, then version 2, then compression to 8
 * bits per pixel where both ends have it. Both sides are whole bits per second.
 *
 * <p>Source: VESA CVT 1.2 and DisplayPort 1.4 / 2.1, HDMI 2.1; 8 bits per pixel is the usual target
 * of display stream compression, 6 its floor. The pair runs at the lesser standard of one family;
 * an adapter is not thought of. On HDMI's fixed rate links a result within 1 % of the limit is no
 * proof either way: see {@link LinkResult#needsDeclaredMode()}.
 */
public final class DisplayLink {
    /** Bits per pixel after compression, whatever the colour depth. */
    public static final int COMPRESSED_BITS_PER_PIXEL = 8;

    private static final int COLOURS = 3;

    private DisplayLink() {}

    /**
     * Gives how a cable between two ports carries a mode.
     *
     * @param output port of the card or board
     * @param input port of the display
     * @param widthPx visible pixels per line
     * @param heightPx visible lines
     * @param refreshHz pictures per second, Hz
     * @param bitsPerColour 8, 10 or 12
     * @return the answer with both rates
     * @throws IllegalArgumentException for an impossible mode
     */
    public static LinkResult carries(
            LinkStandard output,
            LinkStandard input,
            int widthPx,
            int heightPx,
            double refreshHz,
            int bitsPerColour) {
        int bitsPerPixel = COLOURS * Expect.atLeastOne(bitsPerColour, "bitsPerColour");
        DisplayTiming first = CvtTiming.of(widthPx, heightPx, refreshHz, TimingRule.CVT_RB1);
        DisplayTiming second = CvtTiming.of(widthPx, heightPx, refreshHz, TimingRule.CVT_RB2);
        Optional<LinkStandard> pair = output.common(input);
        if (pair.isEmpty()) {
            long required = second.bitsPerSecond(bitsPerPixel);
            return new LinkResult(Carried.NO, TimingRule.CVT_RB2, required, 0, pair);
        }
        return uncompressed(pair, first, TimingRule.CVT_RB1, bitsPerPixel)
                .or(() -> uncompressed(pair, second, TimingRule.CVT_RB2, bitsPerPixel))
                .or(() -> compressed(pair, first, TimingRule.CVT_RB1, bitsPerPixel))
                .or(() -> compressed(pair, second, TimingRule.CVT_RB2, bitsPerPixel))
                .orElseGet(() -> refused(pair, second, bitsPerPixel));
    }

    private static Optional<LinkResult> uncompressed(
            Optional<LinkStandard> pair, DisplayTiming timing, TimingRule rule, int bitsPerPixel) {
        long required = timing.bitsPerSecond(bitsPerPixel);
        long available = pair.orElseThrow().payloadBitsPerSecond();
        return required > available
                ? Optional.empty()
                : Optional.of(
                        new LinkResult(Carried.UNCOMPRESSED, rule, required, available, pair));
    }

    private static Optional<LinkResult> compressed(
            Optional<LinkStandard> pair, DisplayTiming timing, TimingRule rule, int bitsPerPixel) {
        LinkStandard standard = pair.orElseThrow();
        long required = timing.bitsPerSecond(Math.min(COMPRESSED_BITS_PER_PIXEL, bitsPerPixel));
        long available = standard.compressedPayloadBitsPerSecond();
        return !standard.compresses() || required > available
                ? Optional.empty()
                : Optional.of(new LinkResult(Carried.COMPRESSED, rule, required, available, pair));
    }

    private static LinkResult refused(
            Optional<LinkStandard> pair, DisplayTiming leanest, int bitsPerPixel) {
        long required = leanest.bitsPerSecond(bitsPerPixel);
        long available = pair.orElseThrow().payloadBitsPerSecond();
        return new LinkResult(Carried.NO, TimingRule.CVT_RB2, required, available, pair);
    }
}
