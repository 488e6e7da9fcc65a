package rigbrief.model.link;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * Works out a progressive display mode's totals and pixel clock by the coordinated video timings.
 *
 * <p>Formula: an estimate of the line period comes from the refresh period less the least blanking
 * time; it gives the blanking lines; standard blanking takes its line blanking from a duty cycle
 * (30 % - 300 %/ms x line period, at least 20 %), reduced blanking has 160 or 80 pixels. The pixel
 * clock is rounded down, never to the nearest.
 *
 * <p>Source: VESA Coordinated Video Timings 1.1 and 1.2. Without interlace and without margins. The
 * vertical back porch is at least 6 lines, as there; a program written after a later edition takes
 * 7, which shows only where that least decides: in 16:9, below about 500 lines at 60 Hz or 1250
 * lines at 24 Hz.
 */
public final class CvtTiming {
    /** Refresh rates for which the timing has been checked. */
    public static final Range REFRESH_HZ = new Range("refresh rate", 24, 540, "Hz");

    private static final double CVT_LEAST_SYNC_AND_PORCH_US = 550;
    private static final double REDUCED_LEAST_BLANKING_US = 460;
    private static final int FRONT_PORCH_LINES = 3;
    private static final int BACK_PORCH_LINES = 6;
    private static final int RB2_LEAST_BLANKING_LINES = 15;
    private static final int RB1_LINE_BLANKING_PX = 160;
    private static final int RB2_LINE_BLANKING_PX = 80;
    private static final double LEAST_DUTY_PERCENT = 20;
    private static final int CVT_BLANKING_STEP_PX = 16;

    private CvtTiming() {}

    /**
     * Gives the timing of a mode.
     *
     * @param widthPx visible pixels per line; the first two rules round it down to a multiple of 8
     * @param heightPx visible lines
     * @param refreshHz pictures per second, Hz
     * @param rule which blanking to use
     * @return totals and pixel clock
     * @throws IllegalArgumentException for a size below one pixel, or a refresh rate that leaves no
     *     time for the least blanking
     */
    public static DisplayTiming of(int widthPx, int heightPx, double refreshHz, TimingRule rule) {
        Expect.atLeastOne(widthPx, "widthPx");
        Expect.atLeastOne(heightPx, "heightPx");
        Expect.positive(refreshHz, "refreshHz");
        int shownPx = widthPx / rule.cellPx() * rule.cellPx();
        return switch (rule) {
            case CVT -> standard(shownPx, heightPx, refreshHz, syncLines(widthPx, heightPx));
            case CVT_RB1 -> {
                int least = FRONT_PORCH_LINES + syncLines(widthPx, heightPx) + BACK_PORCH_LINES;
                yield reduced(shownPx + RB1_LINE_BLANKING_PX, heightPx, refreshHz, least, rule);
            }
            case CVT_RB2 -> {
                int totalPx = shownPx + RB2_LINE_BLANKING_PX;
                yield reduced(totalPx, heightPx, refreshHz, RB2_LEAST_BLANKING_LINES, rule);
            }
        };
    }

    private static DisplayTiming standard(int px, int lines, double refreshHz, int syncLines) {
        double spareUs = spareUs(refreshHz, CVT_LEAST_SYNC_AND_PORCH_US);
        double lineUs = spareUs / (lines + FRONT_PORCH_LINES);
        int syncAndPorch = (int) Math.floor(CVT_LEAST_SYNC_AND_PORCH_US / lineUs) + 1;
        int blankingLines =
                Math.max(syncAndPorch, syncLines + BACK_PORCH_LINES) + FRONT_PORCH_LINES;
        int totalPx = px + cvtBlankingPx(px, lineUs);
        long clockHz = roundedDown(totalPx / lineUs * 1e6, TimingRule.CVT);
        return new DisplayTiming(clockHz, totalPx, lines + blankingLines);
    }

    private static int cvtBlankingPx(int px, double lineUs) {
        double dutyPercent = Math.max(LEAST_DUTY_PERCENT, 30 - 0.3 * lineUs);
        double exactPx = px * dutyPercent / (100 - dutyPercent);
        return (int) Math.floor(exactPx / CVT_BLANKING_STEP_PX) * CVT_BLANKING_STEP_PX;
    }

    private static DisplayTiming reduced(
            int totalPx, int lines, double refreshHz, int leastBlanking, TimingRule rule) {
        double lineUs = spareUs(refreshHz, REDUCED_LEAST_BLANKING_US) / lines;
        int blanking = (int) Math.floor(REDUCED_LEAST_BLANKING_US / lineUs) + 1;
        int totalLines = lines + Math.max(blanking, leastBlanking);
        long clockHz = roundedDown(refreshHz * totalPx * totalLines, rule);
        return new DisplayTiming(clockHz, totalPx, totalLines);
    }

    private static double spareUs(double refreshHz, double leastBlankingUs) {
        double spareUs = 1e6 / refreshHz - leastBlankingUs;
        if (spareUs <= 0) {
            throw new IllegalArgumentException(
                    "refreshHz: found %s, expected a period above %s µs; give the rate in Hz"
                            .formatted(refreshHz, leastBlankingUs));
        }
        return spareUs;
    }

    private static long roundedDown(double clockHz, TimingRule rule) {
        return (long) Math.floor(clockHz / rule.clockStepHz()) * rule.clockStepHz();
    }

    /** The width of the vertical sync tells a screen the aspect ratio; it is told in lines. */
    private static int syncLines(int widthPx, int heightPx) {
        if (isRatio(widthPx, heightPx, 4, 3)) {
            return 4;
        }
        if (isRatio(widthPx, heightPx, 16, 9)) {
            return 5;
        }
        if (isRatio(widthPx, heightPx, 16, 10)) {
            return 6;
        }
        boolean nearSquare = isRatio(widthPx, heightPx, 5, 4) || isRatio(widthPx, heightPx, 15, 9);
        return nearSquare ? 7 : 10;
    }

    private static boolean isRatio(int widthPx, int heightPx, int wide, int high) {
        return (long) widthPx * high == (long) heightPx * wide;
    }
}
