package rigbrief.rule.fit;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * The ladder of sizes in which supplies are usually sold.
 *
 * <p>Common practice: the sizes are those that price lists carry; planning picks the first
 * sufficient one, then goes up a number of sizes as a reserve.
 */
public final class SupplySizes {
    private static final int[] SIZES_W = {
        200, 250, 300, 350, 400, 450, 500, 550, 650, 750, 850, 1000, 1200, 1500
    };

    private SupplySizes() {}

    /**
     * The rating to plan with.
     *
     * @param neededW least rating in W that the load allows
     * @param sizesUp how many usual sizes further up, 0 or more
     * @return W; at the top of the ladder the largest size, above it the need itself
     */
    public static long planned(long neededW, int sizesUp) {
        for (int i = 0; i < SIZES_W.length; i++) {
            if (SIZES_W[i] >= neededW) {
                return SIZES_W[Math.min(i + sizesUp, SIZES_W.length - 1)];
            }
        }
        return neededW;
    }

    /** The sizes in W, separated by spaces. */
    public static String words() {
        return Arrays.stream(SIZES_W).mapToObj(Integer::toString).collect(Collectors.joining(" "));
    }
}
