package rigbrief.proposal.clash;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;

/**
 * Finds a minimal set of constraints that can't hold together, by halving.
 *
 * <p>With k constraints in the set out of n it asks at most 2k log2(n/k) + 2k times. Of several
 * minimal sets it finds the one that keeps the most important constraints it can: those that come
 * first. Source: U. Junker, "QuickXplain: Preferred Explanations and Relaxations for
 * Over-Constrained Problems", AAAI 2004.
 */
public final class QuickXplain {
    private final Predicate<BitSet> inconsistent;

    /**
     * A finder.
     *
     * @param inconsistent whether it is known that a set of constraints can't hold together, the
     *     background included
     */
    public QuickXplain(Predicate<BitSet> inconsistent) {
        this.inconsistent = inconsistent;
    }

    /**
     * A minimal conflict within a set that is known to be inconsistent; empty when the background
     * is so by itself. Minimal as far as the predicate knows.
     *
     * @param constraints indices, the most important first
     */
    public BitSet conflict(List<Integer> constraints) {
        return constraints.isEmpty() ? new BitSet() : conflict(new BitSet(), true, constraints);
    }

    private BitSet conflict(BitSet background, boolean grown, List<Integer> constraints) {
        if (grown && inconsistent.test((BitSet) background.clone())) {
            return new BitSet();
        }
        if (constraints.size() == 1) {
            return set(constraints);
        }
        int half = constraints.size() / 2;
        List<Integer> first = constraints.subList(0, half);
        List<Integer> second = constraints.subList(half, constraints.size());
        BitSet ofSecond = conflict(union(background, set(first)), true, second);
        BitSet ofFirst = conflict(union(background, ofSecond), !ofSecond.isEmpty(), first);
        return union(ofFirst, ofSecond);
    }

    private static BitSet set(List<Integer> indices) {
        BitSet set = new BitSet();
        indices.forEach(set::set);
        return set;
    }

    private static BitSet union(BitSet one, BitSet other) {
        BitSet union = (BitSet) one.clone();
        union.or(other);
        return union;
    }

    /** The members of a set, the smallest first. */
    public static List<Integer> members(BitSet set) {
        List<Integer> members = new ArrayList<>(set.cardinality());
        for (int i = set.nextSetBit(0); i >= 0; i = set.nextSetBit(i + 1)) {
            members.add(i);
        }
        return members;
    }
}
