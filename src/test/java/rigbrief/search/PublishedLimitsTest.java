package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Scanner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.search.Classes.Best;
import rigbrief.search.Classes.Item;

/**
 * Check: the larger published knapsack instances, solved to their optimum and proven by the
 * certifier with money as the carrier of a linear programme's bound (see {@link Classes}).
 */
class PublishedLimitsTest {
    private static final long STEPS = 4_000_000;

    /**
     * Sets P07 and P08 of the KNAPSACK_01 collection (J. Burkardt, after D. Kreher and D. Stinson)
     * and the 50 items, some of no weight, of the knapsack page of the OR-Tools documentation.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "P07|750|70 73 77 80 82 87 90 94 98 106 110 113 115 118 120|135 139 149 150 156 163"
                        + " 173 184 192 201 210 214 221 229 240|1458",
                "P08|6404180|382745 799601 909247 729069 467902 44328 34610 698150 823460 903959"
                        + " 853665 551830 610856 670702 488960 951111 323046 446298 931161 31385"
                        + " 496951 264724 224916 169684|825594 1677009 1676628 1523970 943972 97426"
                        + " 69666 1296457 1679693 1902996 1844992 1049289 1252836 1319836 953277"
                        + " 2067538 675367 853655 1826027 65731 901489 577243 466257 369261|13549094",
                "fifty|850|7 0 30 22 80 94 11 81 70 64 59 18 0 36 3 8 15 42 9 0 42 47 52 32 26 48"
                        + " 55 6 29 84 2 4 18 56 7 29 93 44 71 3 86 66 31 65 0 79 20 65 52 13|360"
                        + " 83 59 130 431 67 230 52 93 125 670 892 600 38 48 147 78 256 63 17 120"
                        + " 164 432 35 92 110 22 42 50 323 514 28 87 73 78 15 26 78 210 36 85 189"
                        + " 274 43 33 10 19 389 276 312|7534"
            })
    void a_published_knapsack_of_many_items_is_solved_to_its_optimum(
            String name, long capacity, String weights, String profits, long optimum) {
        for (int order = 0; order < 2; order++) {
            List<List<Item>> classes = new ArrayList<>();
            String[] weight = weights.split(" ");
            String[] profit = profits.split(" ");
            for (int i = 0; i < weight.length; i++) {
                classes.add(maybe(Long.parseLong(profit[i]), Long.parseLong(weight[i])));
            }
            Collections.shuffle(classes, new Random(order));

            Best best = new Classes(classes, capacity).solve(STEPS);

            assertThat(best.profit()).as(name).contains(optimum);
            assertThat(best.complete()).as(name).isTrue();
        }
    }

    /** Item by item: taken or not. */
    private static List<Item> maybe(long profit, long... uses) {
        return List.of(new Item(0, new long[uses.length]), new Item(profit, uses));
    }

    /**
     * Problems 2 to 7 of the file mknap1 of the OR-Library (C. Petersen, Management Science 13(9),
     * 1967), with their published optima and the values of their linear programmes.
     */
    @ParameterizedTest
    @CsvSource({
        "2,8706.1,9297.71",
        "3,4015,4127.89",
        "4,6120,6155.33",
        "5,12400,12462.10",
        "6,10618,10672.35",
        "7,16537,16612.82"
    })
    void petersens_problems_with_several_limits_are_solved_to_their_optimum(
            int number, double optimum, double relaxed) throws IOException {
        Best best = petersen(number).solve(STEPS);

        assertThat(best.bound() / TENTHS).isCloseTo(relaxed, within(0.01));
        assertThat(best.profit()).contains(Math.round(optimum * TENTHS));
        assertThat(best.complete()).isTrue();
    }

    /** Profits of the second problem have a decimal. */
    private static final int TENTHS = 10;

    private static Classes petersen(int number) throws IOException {
        try (InputStream in =
                        PublishedLimitsTest.class.getResourceAsStream("/published/mknap1.txt");
                Scanner file = new Scanner(in, StandardCharsets.US_ASCII)) {
            while (true) {
                int found = file.nextInt();
                int items = file.nextInt();
                int limits = file.nextInt();
                file.next();
                long[] profits = new long[items];
                for (int i = 0; i < items; i++) {
                    profits[i] = Math.round(Double.parseDouble(file.next()) * TENTHS);
                }
                long[][] uses = new long[items][limits];
                for (int limit = 0; limit < limits; limit++) {
                    for (int i = 0; i < items; i++) {
                        uses[i][limit] = file.nextLong();
                    }
                }
                long[] most = new long[limits];
                for (int limit = 0; limit < limits; limit++) {
                    most[limit] = file.nextLong();
                }
                if (found == number) {
                    List<List<Item>> classes = new ArrayList<>();
                    for (int i = 0; i < items; i++) {
                        classes.add(maybe(profits[i], uses[i]));
                    }
                    return new Classes(classes, most);
                }
            }
        }
    }

    /** The dressing itself: what no choice keeps has no answer, and that is proven. */
    @Test
    void a_limit_that_nothing_keeps_is_proven_to_have_no_answer() {
        Best best =
                new Classes(
                                List.of(
                                        List.of(new Item(5, 3, 0), new Item(4, 0, 3)),
                                        List.of(new Item(1, 0, 0))),
                                2,
                                2)
                        .solve(STEPS);

        assertThat(best.profit()).isEmpty();
        assertThat(best.complete()).isTrue();
    }
}
