package rigbrief.search;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * One slot's candidates as arrays, sorted for bounds.
 *
 * <p>A domain is a bit set over candidate indices, one {@code long[]} per slot.
 */
final class SlotTable {
    private final Slot slot;
    private final Candidate[] candidates;
    private final double[] gain;
    private final double[] openGain;
    private final int[][] byPrice;
    private final int[][][] byNet;
    private final double[] worth;
    private final boolean[] pricesAsked;
    private final boolean[][] netsAsked;

    /**
     * A table.
     *
     * @param gain points that a candidate adds by itself, by index
     * @param openGain the same less what it is known to lose while its slot is still open
     * @param sets number of supplier sets
     * @param worth points per minor unit at which net gains are bounded
     */
    SlotTable(
            Slot slot,
            List<Candidate> candidates,
            double[] gain,
            double[] openGain,
            int sets,
            double[] worth) {
        this.slot = slot;
        this.candidates = candidates.toArray(Candidate[]::new);
        this.gain = gain;
        this.openGain = openGain;
        this.worth = worth;
        this.byPrice = new int[sets][];
        this.byNet = new int[worth.length][sets][];
        this.pricesAsked = new boolean[sets];
        this.netsAsked = new boolean[worth.length][sets];
    }

    /** Indices by key, equals by index; without a box for each, which a large catalogue feels. */
    private int[] sorted(IntToDoubleFunction key) {
        double[] keys = IntStream.range(0, candidates.length).mapToDouble(key).toArray();
        double[] inOrder = keys.clone();
        Arrays.sort(inOrder);
        int[] taken = new int[keys.length];
        int[] sorted = new int[keys.length];
        for (int i = 0; i < keys.length; i++) {
            int first = firstNotBelow(inOrder, keys[i]);
            sorted[first + taken[first]++] = i;
        }
        return sorted;
    }

    private static int firstNotBelow(double[] inOrder, double key) {
        int low = 0;
        int high = inOrder.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (Double.compare(inOrder[middle], key) < 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    Slot slot() {
        return slot;
    }

    int size() {
        return candidates.length;
    }

    Candidate candidate(int index) {
        return candidates[index];
    }

    double gain(int index) {
        return gain[index];
    }

    double openGain(int index) {
        return openGain[index];
    }

    /** Some of the candidates. */
    long[] domain(List<Candidate> some) {
        long[] bits = new long[(candidates.length + 63) / 64];
        for (Candidate candidate : some) {
            bits[candidate.index() >> 6] |= 1L << candidate.index();
        }
        return bits;
    }

    /** Candidate indices, the cheapest in a supplier set first. */
    int[] byPrice(int set) {
        if (byPrice[set] == null) {
            byPrice[set] = sorted(i -> candidates[i].minorBySet()[set]);
        }
        return byPrice[set];
    }

    /** Candidate indices, most net gain at a worth in a supplier set first. */
    int[] byNet(int w, int set) {
        if (byNet[w][set] == null) {
            byNet[w][set] = sorted(i -> worth[w] * candidates[i].minorBySet()[set] - openGain[i]);
        }
        return byNet[w][set];
    }

    /** The least price within a supplier set, or {@code Long.MAX_VALUE} for an empty domain. */
    long leastMinor(long[] domain, int set) {
        if (!pricesAsked[set]) {
            pricesAsked[set] = true;
            return scanned(domain, set);
        }
        for (int i : byPrice(set)) {
            if (has(domain, i)) {
                return candidates[i].minorBySet()[set];
            }
        }
        return Long.MAX_VALUE;
    }

    /** The most gain less price at a worth, in points; minus infinity for an empty domain. */
    double mostNet(long[] domain, int set, int w) {
        if (!netsAsked[w][set]) {
            netsAsked[w][set] = true;
            return scanned(domain, set, w);
        }
        for (int i : byNet(w, set)) {
            if (has(domain, i)) {
                return openGain[i] - worth[w] * candidates[i].minorBySet()[set];
            }
        }
        return Double.NEGATIVE_INFINITY;
    }

    /**
     * The same with what is known to be lost by now, by index: no less than is lost while the slot
     * is open. Null for that.
     */
    double mostNet(long[] domain, int set, int w, double[] losses) {
        if (losses == null) {
            return mostNet(domain, set, w);
        }
        double most = Double.NEGATIVE_INFINITY;
        for (int i : byNet(w, set)) {
            if (has(domain, i)) {
                double price = worth[w] * candidates[i].minorBySet()[set];
                // Sorted by what is gained while the slot is open: none behind can be better.
                if (openGain[i] - price <= most) {
                    return most;
                }
                most = Math.max(most, gain[i] + losses[i] - price);
            }
        }
        return most;
    }

    // Most supplier sets are out of the running once they have been looked at: an order for each of
    // hundreds of them would be most of what a search in a large catalogue remembers.
    private long scanned(long[] domain, int set) {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < candidates.length; i++) {
            if (has(domain, i)) {
                least = Math.min(least, candidates[i].minorBySet()[set]);
            }
        }
        return least;
    }

    private double scanned(long[] domain, int set, int w) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < candidates.length; i++) {
            if (has(domain, i)) {
                double price = worth[w] * candidates[i].minorBySet()[set];
                most = Math.max(most, openGain[i] - price);
            }
        }
        return most;
    }

    static boolean has(long[] domain, int index) {
        return (domain[index >> 6] >> index & 1) == 1;
    }

    static boolean meet(long[] one, long[] other) {
        for (int k = 0; k < one.length; k++) {
            if ((one[k] & other[k]) != 0) {
                return true;
            }
        }
        return false;
    }

    static boolean empty(long[] domain) {
        for (long word : domain) {
            if (word != 0) {
                return false;
            }
        }
        return true;
    }
}
