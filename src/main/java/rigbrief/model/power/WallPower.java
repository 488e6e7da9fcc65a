package rigbrief.model.power;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * What the mains meter shows for a direct-current load.
 *
 * <p>Formula: mains = load / efficiency between the points of the 80 PLUS row; below the lowest
 * point mains = load + rating x {@link SupplyLoss}, an estimate beyond the table that meets the row
 * at its lowest point; above the rating the efficiency at full load.
 *
 * <p>Source: the 80 PLUS table for the points; the estimate below them, and above the rating, is
 * common practice. Not for sleep or off, where a small converter of its own runs.
 */
public final class WallPower {
    /** Load shares for which the table speaks at every level. */
    public static final Range CERTIFIED_LOAD_SHARE = new Range("supply load share", 0.2, 1, "");

    private WallPower() {}

    /**
     * Gives the power drawn from the mains.
     *
     * @param dcW what the build draws from the supply, W
     * @param ratedW the supply's rating, W
     * @param level its 80 PLUS level
     * @param column the test that fits the mains
     * @return W; never falls as {@code dcW} rises
     * @throws IllegalArgumentException for a negative load, a rating not above 0, or a level that
     *     is not offered in the column
     */
    public static double acW(double dcW, double ratedW, EfficiencyLevel level, MainsColumn column) {
        Expect.notNegative(dcW, "dcW");
        Expect.positive(ratedW, "ratedW");
        EfficiencyRow row = level.rowFor(column);
        double loadShare = dcW / ratedW;
        return loadShare < row.lowestShare()
                ? dcW + ratedW * row.loss().lossShare(loadShare)
                : dcW / row.between(loadShare);
    }

    /** One more watt of load takes at least so many watts more from the mains, at any level. */
    public static final double LEAST_SLOPE = 0.93;

    /**
     * Gives the heat the supply itself makes.
     *
     * @param dcW as for {@link #acW}
     * @param ratedW as for {@link #acW}
     * @param level as for {@link #acW}
     * @param column as for {@link #acW}
     * @return W; mains power less load
     */
    public static double heatW(
            double dcW, double ratedW, EfficiencyLevel level, MainsColumn column) {
        return acW(dcW, ratedW, level, column) - dcW;
    }

    /**
     * Tells whether a load lies below the row's lowest point, so that its mains power is estimated.
     *
     * @param dcW load, W
     * @param ratedW rating, W
     * @param level 80 PLUS level
     * @param column which test
     * @return true for an estimate beyond the table
     */
    public static boolean isEstimated(
            double dcW, double ratedW, EfficiencyLevel level, MainsColumn column) {
        Expect.notNegative(dcW, "dcW");
        Expect.positive(ratedW, "ratedW");
        return level.rowFor(column).at(dcW / ratedW).isEmpty();
    }
}
