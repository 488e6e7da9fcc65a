package rigbrief.model.link;

import java.util.Optional;

/**
 * The fixed timings that screens with a television's manners use instead of computed ones.
 *
 * <p>Source: CTA-861, as listed by an independent timing program (pixel clocks); the totals are
 * from memory and agree with clock = rate x totals.
 */
public enum TelevisionTiming {
    /** 1920 x 1080 at 60 Hz, 148.5 MHz. */
    FULL_60(1920, 1080, 60, 2200, 1125),
    /** 1920 x 1080 at 120 Hz, 297 MHz. */
    FULL_120(1920, 1080, 120, 2200, 1125),
    /** 3840 x 2160 at 60 Hz, 594 MHz. */
    ULTRA_60(3840, 2160, 60, 4400, 2250),
    /** 3840 x 2160 at 120 Hz, 1188 MHz. */
    ULTRA_120(3840, 2160, 120, 4400, 2250),
    /** 5120 x 2160 at 60 Hz, 742.5 MHz. */
    WIDE_60(5120, 2160, 60, 5500, 2250),
    /** 7680 x 4320 at 60 Hz, 2376 MHz. */
    ULTRA_DOUBLE_60(7680, 4320, 60, 9000, 4400);

    private final int widthPx;
    private final int heightPx;
    private final int refreshHz;
    private final DisplayTiming timing;

    TelevisionTiming(
            int widthPx, int heightPx, int refreshHz, int horizontalTotal, int verticalTotal) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.refreshHz = refreshHz;
        long clockHz = (long) refreshHz * horizontalTotal * verticalTotal;
        this.timing = new DisplayTiming(clockHz, horizontalTotal, verticalTotal);
    }

    /**
     * Gives the mode with its blanking.
     *
     * @return totals and pixel clock
     */
    public DisplayTiming timing() {
        return timing;
    }

    /**
     * Finds the fixed timing of a mode.
     *
     * @param widthPx visible pixels per line
     * @param heightPx visible lines
     * @param refreshHz pictures per second, whole Hz
     * @return the timing, or nothing when none is listed here
     */
    public static Optional<DisplayTiming> find(int widthPx, int heightPx, int refreshHz) {
        for (TelevisionTiming mode : values()) {
            if (mode.widthPx == widthPx
                    && mode.heightPx == heightPx
                    && mode.refreshHz == refreshHz) {
                return Optional.of(mode.timing);
            }
        }
        return Optional.empty();
    }
}
