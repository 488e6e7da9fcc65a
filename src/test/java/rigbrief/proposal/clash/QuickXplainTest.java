package rigbrief.proposal.clash;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class QuickXplainTest {
    /**
     * Check: the example of U. Junker, "QuickXplain: Preferred Explanations and Relaxations for
     * Over-Constrained Problems", AAAI 2004: options that cost 500, 500, 800, 500 and 2600, and a
     * budget of 3000 (XPL-01, XPL-04).
     */
    static final int[] COSTS = {500, 500, 800, 500, 2600};

    static final int BUDGET = 3000;

    static boolean overBudget(BitSet options) {
        return options.stream().map(i -> COSTS[i]).sum() > BUDGET;
    }

    @Test
    void the_papers_running_totals_fail_at_the_fifth_option() {
        BitSet taken = new BitSet();
        int[] totals = new int[COSTS.length];

        for (int i = 0; i < COSTS.length; i++) {
            taken.set(i);
            totals[i] = taken.stream().map(j -> COSTS[j]).sum();
        }

        assertThat(totals).containsExactly(500, 1000, 1800, 2300, 4900);
        assertThat(overBudget(taken)).isTrue();
    }

    @Test
    void with_the_first_option_most_important_the_conflict_is_the_first_and_the_fifth() {
        assertThat(conflict(List.of(0, 1, 2, 3, 4))).containsExactly(0, 4);
    }

    @Test
    void with_the_order_reversed_it_is_the_fourth_and_the_fifth() {
        assertThat(conflict(List.of(4, 3, 2, 1, 0))).containsExactly(3, 4);
    }

    @Test
    void a_background_that_fails_by_itself_needs_no_constraint() {
        BitSet conflict = new QuickXplain(set -> true).conflict(List.of(0, 1, 2));

        assertThat(conflict.isEmpty()).isTrue();
    }

    /**
     * Check: at most 2k log2(n/k) + 2k questions for k of n constraints (the paper, from memory).
     */
    @Test
    void two_of_sixty_four_constraints_are_found_with_few_questions() {
        AtomicInteger asked = new AtomicInteger();
        QuickXplain finder =
                new QuickXplain(
                        set -> {
                            asked.incrementAndGet();
                            return set.get(17) && set.get(42);
                        });
        BitSet all = new BitSet();
        all.set(0, 64);

        BitSet conflict = finder.conflict(QuickXplain.members(all));

        assertThat(QuickXplain.members(conflict)).containsExactly(17, 42);
        assertThat(asked.get()).isLessThanOrEqualTo(2 * 2 * 5 + 2 * 2);
    }

    private static List<Integer> conflict(List<Integer> order) {
        return QuickXplain.members(new QuickXplain(QuickXplainTest::overBudget).conflict(order));
    }
}
