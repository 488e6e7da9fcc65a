package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.part.Slot;
import rigbrief.search.Knapsack.Item;

/** Check: published instances whose optimum is known, solved and proven by the certifier. */
class PublishedKnapsackTest {
    private static final long STEPS = 20_000_000;

    /** Slots for items that are taken or not. */
    private static final List<Slot> PLACES =
            List.of(
                    Slot.GRAPHICS,
                    Slot.WIRELESS,
                    Slot.BRACE,
                    Slot.CABLES,
                    Slot.SYSTEM,
                    Slot.FANS,
                    Slot.PROCESSOR,
                    Slot.CASE,
                    Slot.SUPPLY,
                    Slot.BOARD,
                    Slot.MEMORY);

    private static Certificate best(Problem problem) {
        return new Certifier(problem, Objective.mostUtility(), STEPS, () -> false)
                .run(Optional.empty());
    }

    /**
     * Sets P02 to P06 of the KNAPSACK_01 collection (J. Burkardt) and the eight items of S.
     * Martello and P. Toth, Knapsack Problems, 1990; P01 after D. Kreher and D. Stinson.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "P01|165|23 31 29 44 53 38 63 85 89 82|92 57 49 68 60 43 67 84 87 72|309|165",
                "P02|26|12 7 11 8 9|24 13 23 15 16|51|26",
                "P03|190|56 59 80 64 75 17|50 50 64 46 50 5|150|190",
                "P04|50|31 10 20 19 4 3 6|70 20 39 37 7 5 10|107|50",
                "P05|104|25 35 45 5 25 3 2 2|350 400 450 20 70 8 5 5|900|104",
                "P06|170|41 50 49 59 55 57 60|442 525 511 593 546 564 617|1735|169",
                "MT8|102|2 20 20 30 40 30 60 10|15 100 90 60 40 15 10 1|280|102"
            })
    void a_published_knapsack_is_solved_to_its_optimum(
            String name, int capacity, String weights, String profits, int optimum, int used) {
        for (int order = 0; order < 3; order++) {
            List<Item> items = items(weights, profits);
            Collections.shuffle(items, new Random(order));
            Knapsack knapsack = new Knapsack();
            for (int i = 0; i < items.size(); i++) {
                knapsack.maybe(PLACES.get(i), items.get(i));
            }

            Certificate found = best(knapsack.within(capacity));

            assertThat(found.complete()).as(name).isTrue();
            assertThat(found.best().orElseThrow().points()).as(name).isEqualTo(optimum);
            assertThat(found.best().orElseThrow().totalMinor()).as(name).isEqualTo(used);
        }
    }

    private static List<Item> items(String weights, String profits) {
        String[] weight = weights.split(" ");
        String[] profit = profits.split(" ");
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < weight.length; i++) {
            items.add(new Item(Integer.parseInt(profit[i]), Integer.parseInt(weight[i])));
        }
        return items;
    }

    /** Problem 1 of C. Petersen, Management Science 13(9), 1967: 3800 with items 2, 3 and 6. */
    @Test
    void petersens_first_problem_with_ten_limits_is_solved_to_its_optimum() {
        int[] profits = {100, 600, 1200, 2400, 500, 2000};
        int[][] rows = {
            {8, 12, 13, 64, 22, 41},
            {8, 12, 13, 75, 22, 41},
            {3, 6, 4, 18, 6, 4},
            {5, 10, 8, 32, 6, 12},
            {5, 13, 8, 42, 6, 20},
            {5, 13, 8, 48, 6, 20},
            {0, 0, 0, 0, 8, 0},
            {3, 0, 4, 0, 8, 0},
            {3, 2, 4, 0, 8, 4},
            {3, 2, 4, 8, 8, 4}
        };
        Knapsack knapsack = new Knapsack();
        for (int i = 0; i < profits.length; i++) {
            int[] uses = new int[rows.length];
            for (int row = 0; row < rows.length; row++) {
                uses[row] = rows[row][i];
            }
            knapsack.maybe(PLACES.get(i), new Item(profits[i], 0, uses));
        }

        Certificate found = best(knapsack.limits(80, 96, 20, 36, 44, 48, 10, 18, 22, 24).within(0));

        Standing best = found.best().orElseThrow();
        assertThat(found.complete()).isTrue();
        assertThat(best.points()).isEqualTo(3800);
        List<Integer> taken = new ArrayList<>();
        for (int i = 0; i < profits.length; i++) {
            if (best.build().has(PLACES.get(i))) {
                taken.add(i + 1);
            }
        }
        assertThat(taken).containsExactly(2, 3, 6);
    }

    /**
     * Instance I01 of M. S. Khan, K. F. Li, E. G. Manning and M. M. Akbar, Studia Informatica
     * Universalis 2(1), 2002: five classes of five, five limits of 25, optimum 173 with items 3, 4,
     * 1, 2 and 3; two published heuristics stop at 151 and 167.
     */
    @Test
    void the_first_published_instance_of_one_item_per_class_under_five_limits_is_solved_to_173() {
        int[][][] classes = {
            {
                {7, 1, 3, 1, 1, 6},
                {17, 1, 4, 9, 9, 3},
                {25, 4, 3, 9, 8, 2},
                {35, 4, 5, 8, 0, 6},
                {36, 6, 8, 3, 0, 7}
            },
            {
                {9, 0, 0, 4, 4, 2},
                {10, 0, 0, 1, 8, 7},
                {10, 1, 1, 6, 0, 6},
                {39, 9, 1, 2, 2, 4},
                {44, 8, 7, 0, 8, 2}
            },
            {
                {15, 2, 0, 5, 5, 5},
                {19, 2, 3, 2, 6, 2},
                {20, 3, 1, 6, 4, 7},
                {44, 6, 7, 5, 6, 9},
                {50, 9, 5, 9, 2, 2}
            },
            {
                {5, 0, 1, 3, 8, 0},
                {25, 2, 2, 7, 0, 8},
                {32, 5, 5, 6, 1, 9},
                {37, 6, 3, 6, 9, 1},
                {37, 7, 9, 7, 2, 3}
            },
            {
                {24, 4, 0, 7, 0, 2},
                {30, 4, 8, 9, 0, 0},
                {32, 5, 2, 7, 2, 0},
                {43, 5, 5, 9, 5, 2},
                {44, 9, 2, 2, 2, 3}
            }
        };
        List<Slot> slots =
                List.of(Slot.PROCESSOR, Slot.GRAPHICS, Slot.BOARD, Slot.SUPPLY, Slot.CASE);
        Knapsack knapsack = new Knapsack();
        for (int c = 0; c < classes.length; c++) {
            List<Item> items = new ArrayList<>();
            for (int[] row : classes[c]) {
                items.add(new Item(row[0], 0, row[1], row[2], row[3], row[4], row[5]));
            }
            knapsack.oneOf(slots.get(c), items);
        }

        Certificate found = best(knapsack.limits(25, 25, 25, 25, 25).within(0));

        assertThat(found.complete()).isTrue();
        assertThat(found.best().orElseThrow().points()).isEqualTo(173);
        assertThat(Knapsack.taken(found.best().orElseThrow()))
                .containsEntry(Slot.PROCESSOR, "processor-item-3")
                .containsEntry(Slot.GRAPHICS, "graphics-item-4")
                .containsEntry(Slot.BOARD, "board-item-1")
                .containsEntry(Slot.SUPPLY, "supply-item-2")
                .containsEntry(Slot.CASE, "case-item-3");
    }

    private static Knapsack multipleChoice(List<Slot> slots) {
        return new Knapsack()
                .oneOf(slots.get(0), List.of(new Item(10, 3), new Item(14, 5), new Item(20, 9)))
                .oneOf(slots.get(1), List.of(new Item(8, 2), new Item(12, 4), new Item(15, 7)))
                .oneOf(slots.get(2), List.of(new Item(5, 1), new Item(9, 3), new Item(16, 6)));
    }

    /**
     * A multiple-choice knapsack of three classes, its optima computed by trying all 27 choices.
     */
    @ParameterizedTest
    @CsvSource({"6,23", "8,27", "10,31", "12,35", "15,42", "22,51"})
    void a_multiple_choice_knapsack_is_solved_to_its_optimum_in_every_order_of_classes(
            int capacity, int optimum) {
        List<Slot> slots = new ArrayList<>(List.of(Slot.PROCESSOR, Slot.SUPPLY, Slot.CASE));
        for (int order = 0; order < 6; order++) {
            Collections.shuffle(slots, new Random(order));

            Certificate found = best(multipleChoice(slots).within(capacity));

            assertThat(found.complete()).isTrue();
            assertThat(found.best().orElseThrow().points()).isEqualTo(optimum);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = 5)
    void a_capacity_under_the_lightest_choice_is_proven_impossible(int capacity) {
        Certificate found =
                best(
                        multipleChoice(List.of(Slot.PROCESSOR, Slot.SUPPLY, Slot.CASE))
                                .within(capacity));

        assertThat(found.complete()).isTrue();
        assertThat(found.best()).isEmpty();
    }
}
