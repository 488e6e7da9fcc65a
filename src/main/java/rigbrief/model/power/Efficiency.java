package rigbrief.model.power;

import java.util.OptionalDouble;

/**
 * A supply's least efficiency by its 80 PLUS level.
 *
 * <p>Formula: straight lines between the load points of the level's row. Below the lowest point and
 * above the rating the table says nothing, and so does this model; {@link SupplyLoss} estimates
 * there.
 *
 * <p>Source: the 80 PLUS programme's certification table, in a trade-press reproduction. The
 * figures are minimums. A label without a column may have been earned in any: {@link #lowest} is
 * the safe reading.
 */
public final class Efficiency {
    private Efficiency() {}

    /**
     * Gives the certified least efficiency at a load.
     *
     * @param level 80 PLUS level
     * @param column which test
     * @param loadShare direct-current load / rating, 0 or more
     * @return share of the mains power that reaches the build, or nothing where the table is silent
     * @throws IllegalArgumentException when the level is not offered in that column
     */
    public static OptionalDouble at(EfficiencyLevel level, MainsColumn column, double loadShare) {
        return level.rowFor(column).at(loadShare);
    }

    /**
     * Gives the least efficiency over all columns in which a level is offered.
     *
     * @param level 80 PLUS level, column unknown
     * @param loadShare direct-current load / rating, 0 or more
     * @return the lowest of the columns, or nothing where any of them is silent
     */
    public static OptionalDouble lowest(EfficiencyLevel level, double loadShare) {
        double least = 1;
        for (MainsColumn column : MainsColumn.values()) {
            if (level.isOffered(column)) {
                OptionalDouble here = at(level, column, loadShare);
                if (here.isEmpty()) {
                    return here;
                }
                least = Math.min(least, here.getAsDouble());
            }
        }
        return OptionalDouble.of(least);
    }
}
