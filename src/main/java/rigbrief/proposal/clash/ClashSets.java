package rigbrief.proposal.clash;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.Function;
import rigbrief.proposal.solve.Answer;

/**
 * All minimal sets of constraints that can't hold together, and all minimal sets of which the
 * giving up makes the rest possible.
 *
 * <p>Each is a minimal hitting set of the other kind. What hits all conflicts known so far is given
 * up: if the rest is possible, it is a minimal correction; if not, the rest holds another conflict.
 * Once every minimal hitting set of the conflicts is a correction, the corrections are complete,
 * and their minimal hitting sets are all the conflicts. Sources: R. Reiter, "A theory of diagnosis
 * from first principles", Artificial Intelligence 32(1), 1987; M. H. Liffiton, A. Previti, A. Malik
 * and J. Marques-Silva, "Fast, flexible MUS enumeration", Constraints 21(2), 2016 (both from
 * memory).
 *
 * @param conflicts minimal conflicts, fewest members first
 * @param corrections minimal corrections, fewest members first
 * @param complete whether these are all
 */
public record ClashSets(List<BitSet> conflicts, List<BitSet> corrections, boolean complete) {
    public ClashSets {
        conflicts = List.copyOf(conflicts);
        corrections = List.copyOf(corrections);
    }

    /**
     * The clashes among constraints.
     *
     * @param constraints how many there are; the first are the most important
     * @param possible whether a set of constraints can hold together
     * @param most stop after so many conflicts
     */
    public static ClashSets of(int constraints, Function<BitSet, Answer> possible, int most) {
        return new Enumeration(constraints, possible, most).run();
    }

    private static final class Enumeration {
        private final BitSet all = new BitSet();
        private final Function<BitSet, Answer> possible;
        private final int most;
        private final List<BitSet> conflicts = new ArrayList<>();
        private final List<BitSet> corrections = new ArrayList<>();
        private final List<BitSet> notKnown = new ArrayList<>();

        Enumeration(int constraints, Function<BitSet, Answer> possible, int most) {
            this.all.set(0, constraints);
            this.possible = possible;
            this.most = most;
        }

        ClashSets run() {
            boolean more = true;
            while (more && conflicts.size() <= most) {
                more = next();
            }
            boolean complete = !more && notKnown.isEmpty();
            List<BitSet> found = complete ? fromCorrections() : sorted(conflicts);
            return new ClashSets(
                    found.subList(0, Math.min(most, found.size())),
                    sorted(corrections),
                    complete && found.size() <= most);
        }

        private List<BitSet> fromCorrections() {
            return corrections.size() == 1 && corrections.get(0).isEmpty()
                    ? List.of()
                    : HittingSets.minimal(corrections);
        }

        /** Looks at one more hitting set; false when there is none left. */
        private boolean next() {
            for (BitSet candidate : HittingSets.minimal(conflicts)) {
                if (!corrections.contains(candidate) && !notKnown.contains(candidate)) {
                    look(candidate);
                    return conflicts.stream().noneMatch(BitSet::isEmpty);
                }
            }
            return false;
        }

        private void look(BitSet givenUp) {
            BitSet rest = (BitSet) all.clone();
            rest.andNot(givenUp);
            switch (possible.apply(rest)) {
                case YES -> corrections.add(givenUp);
                case NOT_KNOWN -> notKnown.add(givenUp);
                case NO ->
                        conflicts.add(
                                new QuickXplain(set -> possible.apply(set) == Answer.NO)
                                        .conflict(QuickXplain.members(rest)));
            }
        }

        private static List<BitSet> sorted(List<BitSet> sets) {
            return sets.stream().sorted(HittingSets.ORDER).toList();
        }
    }
}
