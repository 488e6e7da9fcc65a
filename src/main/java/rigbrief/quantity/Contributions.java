package rigbrief.quantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What each goal contributes to a utility, in whole ten-thousandths that add up exactly.
 *
 * <p>Each is rounded down; what is then missing goes to the largest remainders, so that none is off
 * by more than one.
 */
public final class Contributions {
    private Contributions() {}

    /**
     * The contributions.
     *
     * @param points of each goal: weight times ten-thousandths
     * @param weights sum of the weights, above 0
     * @param together the whole utility in ten-thousandths
     * @return by goal, summing to the whole
     */
    public static long[] of(long[] points, long weights, long together) {
        long[] shares = new long[points.length];
        long missing = together;
        List<Integer> byRemainder = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            shares[i] = points[i] / weights;
            missing -= shares[i];
            byRemainder.add(i);
        }
        byRemainder.sort(Comparator.comparingLong(i -> -(points[i] % weights)));
        for (int i = 0; i < missing; i++) {
            shares[byRemainder.get(i)]++;
        }
        return shares;
    }
}
