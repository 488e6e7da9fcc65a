package rigbrief.model.power;

import java.util.OptionalInt;
import rigbrief.model.Expect;

/**
 * The rating to look for when a load is known.
 *
 * <p>Formula: least rating = sustained load / planned share, then the next size on sale, then one
 * size up as a reserve.
 *
 * <p>Common practice: at most 80 % of the rating in sustained use, and one size up; the sizes are
 * those in which supplies are usually sold. The share is a parameter.
 */
public final class SupplySize {
    /** The planned share of the rating where nothing else is said. */
    public static final double PLANNED_SHARE = 0.8;

    private static final int[] SIZES_W = {
        300, 350, 400, 450, 500, 550, 650, 750, 850, 1000, 1200, 1300, 1600
    };
    private static final long MILLIWATTS = 1_000;

    private SupplySize() {}

    /**
     * Gives the least size that keeps a load within the planned share.
     *
     * @param sustainedW sustained direct-current load, W
     * @param plannedShare share of the rating to plan with, above 0 to 1
     * @return W, or nothing above the largest size
     * @throws IllegalArgumentException for a negative load or a share outside 0 to 1
     */
    public static OptionalInt leastW(double sustainedW, double plannedShare) {
        Expect.notNegative(sustainedW, "sustainedW");
        Expect.positive(Expect.share(plannedShare, "plannedShare"), "plannedShare");
        long neededMw = Math.round(sustainedW / plannedShare * MILLIWATTS);
        for (int sizeW : SIZES_W) {
            if (sizeW * MILLIWATTS >= neededMw) {
                return OptionalInt.of(sizeW);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * Gives the next larger size.
     *
     * @param ratedW a rating, W
     * @return W, or nothing when there is none larger
     */
    public static OptionalInt nextUpW(int ratedW) {
        for (int sizeW : SIZES_W) {
            if (sizeW > ratedW) {
                return OptionalInt.of(sizeW);
            }
        }
        return OptionalInt.empty();
    }
}
