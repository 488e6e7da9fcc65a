package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rigbrief.build.Build;

class ArchiveTest {
    private static Standing point(long totalMinor, long points) {
        return new Standing(List.of(), Build.empty(), 0, points, totalMinor);
    }

    /**
     * Check: PAR-01 and PAR-02 in their two figures of cost and performance: of A 900/60, B
     * 1000/75, C 1000/70, D 1200/90, E 1250/90, F 1500/95 and G 1600/94 the points A, B, D and F
     * are not dominated.
     */
    @Test
    void the_published_points_leave_their_published_front_in_every_order() {
        List<Standing> points =
                new ArrayList<>(
                        List.of(
                                point(900, 60),
                                point(1000, 75),
                                point(1000, 70),
                                point(1200, 90),
                                point(1250, 90),
                                point(1500, 95),
                                point(1600, 94)));
        for (int seed = 0; seed < 50; seed++) {
            Collections.shuffle(points, new Random(seed));
            Archive archive = new Archive();

            archive.addAll(points);

            assertThat(archive.standings())
                    .extracting(Standing::totalMinor)
                    .containsExactly(900L, 1000L, 1200L, 1500L);
            assertThat(archive.standings())
                    .extracting(Standing::points)
                    .containsExactly(60L, 75L, 90L, 95L);
        }
    }

    @Test
    void a_broken_build_is_never_taken_in() {
        Archive archive = new Archive();

        boolean taken = archive.add(new Standing(List.of(), Build.empty(), 1, 99, 10));

        assertThat(taken).isFalse();
        assertThat(archive.standings()).isEmpty();
    }

    @Test
    void what_random_points_leave_is_what_comparing_all_with_all_leaves() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Standing> points = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                points.add(point(random.nextInt(30), random.nextInt(30)));
            }
            Archive archive = new Archive();

            archive.addAll(points);

            List<Long> left =
                    points.stream()
                            .filter(one -> points.stream().noneMatch(two -> beats(two, one)))
                            .map(Standing::totalMinor)
                            .distinct()
                            .sorted()
                            .toList();
            assertThat(archive.standings()).extracting(Standing::totalMinor).isEqualTo(left);
        }
    }

    private static boolean beats(Standing one, Standing other) {
        boolean noWorse = one.totalMinor() <= other.totalMinor() && one.points() >= other.points();
        return noWorse && (one.totalMinor() < other.totalMinor() || one.points() > other.points());
    }
}
