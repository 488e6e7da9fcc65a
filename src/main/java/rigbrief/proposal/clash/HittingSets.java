package rigbrief.proposal.clash;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * All minimal sets that have a member in common with every one of some sets.
 *
 * <p>One set after the other is taken in, and what is not minimal is dropped at once. Source: C.
 * Berge, Hypergraphs, 1989 (from memory).
 */
public final class HittingSets {
    /** Fewest members first, then the smallest members. */
    static final Comparator<BitSet> ORDER =
            Comparator.comparingInt(BitSet::cardinality).thenComparing(HittingSets::byMembers);

    private HittingSets() {}

    private static int byMembers(BitSet one, BitSet other) {
        BitSet differing = (BitSet) one.clone();
        differing.xor(other);
        int first = differing.nextSetBit(0);
        if (first < 0) {
            return 0;
        }
        return one.get(first) ? -1 : 1;
    }

    /** The minimal hitting sets; the empty set alone when there is nothing to hit. */
    public static List<BitSet> minimal(List<BitSet> sets) {
        List<BitSet> hitting = new ArrayList<>();
        hitting.add(new BitSet());
        for (BitSet set : sets) {
            hitting = extended(hitting, set);
        }
        hitting.sort(ORDER);
        return hitting;
    }

    private static List<BitSet> extended(List<BitSet> hitting, BitSet set) {
        List<BitSet> kept = new ArrayList<>();
        List<BitSet> grown = new ArrayList<>();
        for (BitSet one : hitting) {
            if (one.intersects(set)) {
                kept.add(one);
            } else {
                grow(one, set, grown);
            }
        }
        grown.sort(ORDER);
        for (BitSet one : grown) {
            if (kept.stream().noneMatch(other -> within(other, one))) {
                kept.add(one);
            }
        }
        return kept;
    }

    private static void grow(BitSet one, BitSet set, List<BitSet> grown) {
        for (int member = set.nextSetBit(0); member >= 0; member = set.nextSetBit(member + 1)) {
            BitSet more = (BitSet) one.clone();
            more.set(member);
            grown.add(more);
        }
    }

    /** Whether every member of a set is one of another. */
    static boolean within(BitSet set, BitSet other) {
        BitSet left = (BitSet) set.clone();
        left.andNot(other);
        return left.isEmpty();
    }
}
