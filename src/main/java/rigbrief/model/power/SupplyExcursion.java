package rigbrief.model.power;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How far above its rating a supply may be drawn, and for how long.
 *
 * <p>Formula: allowed = rating x percentage of the row whose duration is the next longer one; the
 * low level between two peaks is sqrt((P² - d x high²) / (1 - d)), which keeps the effective value
 * at the rating P at duty d.
 *
 * <p>Source: ATX12VO design guide 613768 revision 2.01, tables 3-3 and 3-4; the ATX guide 336521
 * carries the same table. A supply of an older guide is given no more than its rating (common
 * practice). The table belongs to the guide's own power budget: a supply whose processor share was
 * cut asks for its own calculation.
 */
public final class SupplyExcursion {
    /** Durations that the table covers. */
    public static final Range DURATION_MS = new Range("excursion duration", 0.1, 100, "ms");

    /** Up to this rating, or without the 16-contact connector, the lower column holds, W. */
    private static final int SMALL_SUPPLY_W = 450;

    private static final double[] ROW_MS = {0.1, 1, 10, 100};
    private static final int[] SMALL_PERCENT = {150, 145, 135, 110};
    private static final int[] LARGE_PERCENT = {200, 180, 160, 120};
    private static final double[] DUTY_SHARE = {0.05, 0.08, 0.125, 0.25};
    private static final int RATING_PERCENT = 100;
    private static final long MILLIWATTS = 1_000;

    private SupplyExcursion() {}

    /**
     * Gives the power allowed for a duration.
     *
     * @param guide the guide the supply is built to
     * @param ratedW its rating, W
     * @param has12v2x6 whether it has the 16-contact connector
     * @param durationMs how long the peak lasts, ms; above 100 ms the rating holds
     * @return W
     * @throws IllegalArgumentException for a rating below 1 or a negative duration
     */
    public static double allowedW(
            DesignGuide guide, int ratedW, boolean has12v2x6, double durationMs) {
        Expect.atLeastOne(ratedW, "ratedW");
        int percent = percent(guide, ratedW, has12v2x6, durationMs);
        return (double) ratedW * percent / RATING_PERCENT;
    }

    /**
     * Tells whether a supply stands a peak; compared in whole milliwatts, equality allowed.
     *
     * @param guide as for {@link #allowedW}
     * @param ratedW as for {@link #allowedW}
     * @param has12v2x6 as for {@link #allowedW}
     * @param durationMs as for {@link #allowedW}
     * @param peakW the peak, W
     * @return true when allowed
     */
    public static boolean allows(
            DesignGuide guide, int ratedW, boolean has12v2x6, double durationMs, double peakW) {
        Expect.notNegative(peakW, "peakW");
        long allowedMw = Math.round(allowedW(guide, ratedW, has12v2x6, durationMs) * MILLIWATTS);
        return Math.round(peakW * MILLIWATTS) <= allowedMw;
    }

    private static int percent(
            DesignGuide guide, int ratedW, boolean has12v2x6, double durationMs) {
        int row = rowOf(durationMs);
        if (!guide.allowsExcursions() || row == ROW_MS.length) {
            return RATING_PERCENT;
        }
        boolean small = ratedW <= SMALL_SUPPLY_W || !has12v2x6;
        return small ? SMALL_PERCENT[row] : LARGE_PERCENT[row];
    }

    private static int rowOf(double durationMs) {
        Expect.notNegative(durationMs, "durationMs");
        int row = 0;
        while (row < ROW_MS.length && durationMs > ROW_MS[row]) {
            row++;
        }
        return row;
    }

    /**
     * Gives the share of time that the guide's test spends at the peak.
     *
     * @param durationMs how long each peak lasts, ms, at most 100
     * @return the duty of the next longer row
     * @throws IllegalArgumentException above 100 ms, where the load is continuous
     */
    public static double dutyShare(double durationMs) {
        int row = rowOf(durationMs);
        if (row == DUTY_SHARE.length) {
            throw new IllegalArgumentException(
                    "durationMs: found %s, expected at most 100; longer peaks are continuous load"
                            .formatted(durationMs));
        }
        return DUTY_SHARE[row];
    }

    /**
     * Gives the load between two peaks which keeps the effective value at the rating.
     *
     * @param ratedW rating, W
     * @param highW the peak, W
     * @param dutyShare share of time at the peak, 0 to below 1
     * @return W
     * @throws IllegalArgumentException when the peaks alone exceed the rating's effective value
     */
    public static double lowLevelW(double ratedW, double highW, double dutyShare) {
        Expect.positive(ratedW, "ratedW");
        Expect.notNegative(highW, "highW");
        Expect.share(dutyShare, "dutyShare");
        double leftW2 = ratedW * ratedW - dutyShare * highW * highW;
        if (leftW2 < 0 || dutyShare == 1) {
            throw new IllegalArgumentException(
                    "highW: found %s for %s of the time, expected %s effective; lower either"
                            .formatted(highW, dutyShare, ratedW));
        }
        return Math.sqrt(leftW2 / (1 - dutyShare));
    }
}
