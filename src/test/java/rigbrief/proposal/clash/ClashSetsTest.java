package rigbrief.proposal.clash;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import rigbrief.proposal.solve.Answer;

/** Published examples, and every set of constraints tried on seeded cases. */
class ClashSetsTest {
    private static final int CASES = 200;

    /** Check: XPL-02 and XPL-03, computed from Junker's example by trying all sets. */
    @Test
    void all_conflicts_and_corrections_of_junkers_example() {
        ClashSets found = clashes(5, QuickXplainTest::overBudget);

        assertThat(members(found.conflicts()))
                .containsExactlyInAnyOrder(
                        List.of(0, 4), List.of(1, 4), List.of(2, 4), List.of(3, 4));
        assertThat(members(found.corrections()))
                .containsExactlyInAnyOrder(List.of(4), List.of(0, 1, 2, 3));
        assertThat(found.complete()).isTrue();
    }

    /**
     * Check: XPL-05 and XPL-06. B. O'Sullivan, A. Papadopoulos, B. Faltings and P. Pu,
     * "Representative explanations for over-constrained problems", AAAI 2007: c1 a budget of 3000;
     * c2, c3 and c4 cost 500 each, c5 costs 2600; c2 and c3 exclude each other.
     */
    private static boolean osullivan(BitSet set) {
        int cost = 0;
        for (int i = 1; i <= 3; i++) {
            cost += set.get(i) ? 500 : 0;
        }
        cost += set.get(4) ? 2600 : 0;
        return set.get(1) && set.get(2) || set.get(0) && cost > 3000;
    }

    @Test
    void all_conflicts_and_corrections_of_osullivans_example() {
        ClashSets found = clashes(5, ClashSetsTest::osullivan);

        assertThat(members(found.conflicts()))
                .containsExactlyInAnyOrder(
                        List.of(1, 2), List.of(0, 1, 4), List.of(0, 2, 4), List.of(0, 3, 4));
        assertThat(members(found.corrections()))
                .containsExactlyInAnyOrder(
                        List.of(0, 1),
                        List.of(0, 2),
                        List.of(1, 4),
                        List.of(2, 4),
                        List.of(1, 2, 3));
    }

    /** Check: XPL-07, the duality of conflicts and corrections. */
    @Test
    void corrections_are_the_minimal_hitting_sets_of_the_conflicts_and_the_other_way_round() {
        for (ClashSets found :
                List.of(
                        clashes(5, QuickXplainTest::overBudget),
                        clashes(5, ClashSetsTest::osullivan))) {
            assertThat(HittingSets.minimal(found.conflicts())).isEqualTo(found.corrections());
            assertThat(HittingSets.minimal(found.corrections())).isEqualTo(found.conflicts());
        }
    }

    @Test
    void trying_every_set_finds_the_same_conflicts_and_corrections_on_two_hundred_seeded_cases() {
        for (int seed = 1; seed <= CASES; seed++) {
            Random random = new Random(seed);
            int constraints = 2 + random.nextInt(7);
            List<BitSet> seeds = new ArrayList<>();
            for (int i = random.nextInt(5); i >= 0; i--) {
                BitSet set = new BitSet();
                for (int j = 0; j < 1 + random.nextInt(3); j++) {
                    set.set(random.nextInt(constraints));
                }
                seeds.add(set);
            }
            Predicate<BitSet> clash =
                    set -> seeds.stream().anyMatch(one -> HittingSets.within(one, set));

            ClashSets found = clashes(constraints, clash);

            assertThat(found.complete()).isTrue();
            assertThat(found.conflicts())
                    .as("conflicts, seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(exhaustive(constraints, clash));
            assertThat(found.corrections())
                    .as("corrections, seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(
                            exhaustive(constraints, set -> !clash.test(rest(constraints, set))));
        }
    }

    @Test
    void constraints_that_hold_together_have_no_conflict_and_nothing_to_correct() {
        ClashSets found = clashes(4, set -> false);

        assertThat(found.conflicts()).isEmpty();
        assertThat(members(found.corrections())).containsExactly(List.of());
    }

    @Test
    void what_can_t_be_decided_is_never_called_complete() {
        ClashSets found =
                ClashSets.of(3, set -> set.cardinality() == 3 ? Answer.NO : Answer.NOT_KNOWN, 10);

        assertThat(found.complete()).isFalse();
    }

    @Test
    void no_more_conflicts_are_told_than_asked_for() {
        ClashSets found =
                ClashSets.of(5, set -> QuickXplainTest.overBudget(set) ? Answer.NO : Answer.YES, 2);

        assertThat(found.conflicts()).hasSize(2);
        assertThat(found.complete()).isFalse();
    }

    /** Every minimal set with a property that more members keep. */
    static List<BitSet> exhaustive(int constraints, Predicate<BitSet> property) {
        List<BitSet> minimal = new ArrayList<>();
        for (long bits = 0; bits < 1L << constraints; bits++) {
            BitSet set = BitSet.valueOf(new long[] {bits});
            boolean smallest = property.test(set);
            for (int i = set.nextSetBit(0); smallest && i >= 0; i = set.nextSetBit(i + 1)) {
                BitSet less = (BitSet) set.clone();
                less.clear(i);
                smallest = !property.test(less);
            }
            if (smallest) {
                minimal.add(set);
            }
        }
        return minimal;
    }

    private static BitSet rest(int constraints, BitSet set) {
        BitSet rest = (BitSet) set.clone();
        rest.flip(0, constraints);
        return rest;
    }

    private static ClashSets clashes(int constraints, Predicate<BitSet> clash) {
        return ClashSets.of(constraints, set -> clash.test(set) ? Answer.NO : Answer.YES, 1_000);
    }

    private static List<List<Integer>> members(List<BitSet> sets) {
        return sets.stream().map(QuickXplain::members).toList();
    }
}
