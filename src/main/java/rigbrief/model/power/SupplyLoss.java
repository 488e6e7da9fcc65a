package rigbrief.model.power;

import java.util.OptionalDouble;
import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * A supply's losses as a share of its rating: a constant, a part that rises with load, a part that
 * rises with its square.
 *
 * <p>Formula: loss = a + b x + c x², x the load share; efficiency = x / (x + loss). The curve runs
 * through the three lowest points of an 80 PLUS row. It is an <em>estimate beyond the table</em>
 * where x lies below the lowest point, and differs from the straight line between points by more
 * than a percentage point: say which of the two gave a number.
 *
 * <p>Source: common practice for converters (idle, switching and conduction losses); the points are
 * the programme's minimums, so a good supply loses less.
 *
 * @param constant a, no unit
 * @param linear b, no unit
 * @param square c, no unit
 */
public record SupplyLoss(double constant, double linear, double square) {
    /** Load shares for which the curve is a fair estimate. */
    public static final Range LOAD_SHARE = new Range("load share", 0.02, 1, "");

    /** Refuses coefficients that are not finite. */
    public SupplyLoss {
        Expect.finite(constant, "constant");
        Expect.finite(linear, "linear");
        Expect.finite(square, "square");
    }

    /**
     * Gives the curve of a level under a mains column.
     *
     * @param level 80 PLUS level
     * @param column which test
     * @return the curve through the row's three lowest points
     * @throws IllegalArgumentException when the level is not offered in that column
     */
    public static SupplyLoss of(EfficiencyLevel level, MainsColumn column) {
        return level.rowFor(column).loss();
    }

    static SupplyLoss throughFirstThree(double[] loadShares, double[] efficiencies) {
        double lowest = lossAt(loadShares, efficiencies, 0);
        double middle = lossAt(loadShares, efficiencies, 1);
        double slope = (middle - lowest) / (loadShares[1] - loadShares[0]);
        double next =
                (lossAt(loadShares, efficiencies, 2) - middle) / (loadShares[2] - loadShares[1]);
        double square = (next - slope) / (loadShares[2] - loadShares[0]);
        double linear = slope - square * (loadShares[0] + loadShares[1]);
        double constant = lowest - loadShares[0] * (linear + square * loadShares[0]);
        return new SupplyLoss(constant, linear, square);
    }

    private static double lossAt(double[] loadShares, double[] efficiencies, int point) {
        return loadShares[point] * (1 / efficiencies[point] - 1);
    }

    /**
     * Gives the losses at a load.
     *
     * @param loadShare direct-current load / rating, 0 or more
     * @return share of the rating; 0 where the curve would dip below it, as no supply gains power
     */
    public double lossShare(double loadShare) {
        Expect.notNegative(loadShare, "loadShare");
        return Math.max(0, constant + loadShare * (linear + square * loadShare));
    }

    /**
     * Gives the efficiency by this curve.
     *
     * @param loadShare direct-current load / rating, above 0
     * @return share of the mains power that reaches the build
     */
    public double efficiency(double loadShare) {
        Expect.positive(loadShare, "loadShare");
        return loadShare / (loadShare + lossShare(loadShare));
    }

    /**
     * Gives the load share of best efficiency, the root of a / c.
     *
     * @return the share, or nothing for a curve without such a point
     */
    public OptionalDouble bestLoadShare() {
        return square > 0 && constant > 0
                ? OptionalDouble.of(Math.sqrt(constant / square))
                : OptionalDouble.empty();
    }
}
