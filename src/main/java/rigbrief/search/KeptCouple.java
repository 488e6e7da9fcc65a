package rigbrief.search;

import java.util.Arrays;

/**
 * A couple that keeps the figures with each candidate for the first slot.
 *
 * <p>They are kept for those candidates and supplier sets only that are left when it is filled: for
 * all of them they would be most of what a search in a large catalogue remembers.
 */
abstract class KeptCouple extends Couple {
    private static final int NOT_KEPT = -1;

    private final int[] row;
    private final int[] column;
    private int columns;
    private long[] leastWith = {};
    private double[] netWith = {};

    /**
     * Nothing yet.
     *
     * @param firsts number of candidates for the first slot
     * @param worths number of worths at which net gains are bounded
     * @param sets number of supplier sets
     */
    KeptCouple(int firsts, int worths, int sets) {
        super(worths, sets);
        row = new int[firsts];
        column = new int[sets];
    }

    @Override
    final long leastWith(int first, int set) {
        return leastWith[row[first] * columns + column[set]];
    }

    @Override
    final double netWith(int first, int w, int set) {
        return netWith[(row[first] * net.length + w) * columns + column[set]];
    }

    /** Takes note of the least price with one in the first slot, for the k-th set alive. */
    final void leastWith(int first, int k, long minor) {
        leastWith[row[first] * columns + k] = minor;
    }

    /** Takes note of the most net gain with one in the first slot, for the k-th set alive. */
    final void netWith(int first, int w, int k, double gain) {
        netWith[(row[first] * net.length + w) * columns + k] = gain;
    }

    /** Begins anew, for some supplier sets and some candidates for the first slot. */
    final void clear(Bounder.AliveSets alive, long[] left) {
        clear(alive);
        Arrays.fill(column, NOT_KEPT);
        columns = alive.count();
        for (int k = 0; k < columns; k++) {
            column[alive.get(k)] = k;
        }
        int rows = 0;
        for (int first = 0; first < row.length; first++) {
            row[first] = SlotTable.has(left, first) ? rows++ : NOT_KEPT;
        }
        int cells = rows * columns;
        if (leastWith.length < cells) {
            leastWith = new long[cells];
            netWith = new double[cells * net.length];
        }
        Arrays.fill(leastWith, 0, cells, Long.MAX_VALUE);
        Arrays.fill(netWith, 0, cells * net.length, Double.NEGATIVE_INFINITY);
    }
}
