package rigbrief.search;

import java.util.Arrays;

/**
 * What open slots cost least and gain most together, by supplier set: over all that may fill the
 * first of them, and with each.
 *
 * <p>Mutable: filled anew whenever what it depends on is decided anew.
 */
abstract class Couple {
    final long[] least;
    final double[][] net;

    /**
     * Nothing yet.
     *
     * @param worths number of worths at which net gains are bounded
     * @param sets number of supplier sets
     */
    Couple(int worths, int sets) {
        least = new long[sets];
        net = new double[worths][sets];
    }

    /** Least price over all, by supplier set. */
    final long least(int set) {
        return least[set];
    }

    /** Most net gain over all, by worth and supplier set. */
    final double net(int w, int set) {
        return net[w][set];
    }

    /** Least price with one in the first slot, by supplier set. */
    abstract long leastWith(int first, int set);

    /** Most net gain with one in the first slot, by worth and supplier set. */
    abstract double netWith(int first, int w, int set);

    /** Begins anew, for some supplier sets. */
    final void clear(Bounder.AliveSets alive) {
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            least[s] = Long.MAX_VALUE;
            for (double[] bySet : net) {
                bySet[s] = Double.NEGATIVE_INFINITY;
            }
        }
    }

    /** Counts what is known with one in the first slot. */
    final void count(Bounder.AliveSets alive, int first) {
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            least[s] = Math.min(least[s], leastWith(first, s));
            for (int w = 0; w < net.length; w++) {
                net[w][s] = Math.max(net[w][s], netWith(first, w, s));
            }
        }
    }

    /** Empties figures by supplier set. */
    static void clear(long[] price, double[][] gain) {
        Arrays.fill(price, Long.MAX_VALUE);
        for (double[] bySet : gain) {
            Arrays.fill(bySet, Double.NEGATIVE_INFINITY);
        }
    }
}
