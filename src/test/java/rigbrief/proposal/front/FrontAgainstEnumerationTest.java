package rigbrief.proposal.front;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.search.Enumeration;
import rigbrief.search.SearchSpace;
import rigbrief.search.SmallWorld;
import rigbrief.search.Standing;

/**
 * Check: the oracle tries every build of small catalogues; it shares the rule and goal objects with
 * the search, nothing else.
 */
class FrontAgainstEnumerationTest {
    private static final int CASES = 200;
    private static final long STEPS = 100_000_000;

    @Test
    void the_front_is_the_exhaustive_front_point_for_point_on_two_hundred_seeded_cases() {
        int withBuilds = 0;
        for (int seed = 1; withBuilds < CASES; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SmallWorld.catalogue(random);
            Brief brief = SmallWorld.brief(random, catalogue);
            List<long[]> expected = exhaustive(new Enumeration(brief, catalogue).sound);
            SearchSpace space = SearchSpace.of(brief, catalogue);
            if (expected.isEmpty() || space.candidates().impossible()) {
                continue;
            }
            withBuilds++;

            Front front =
                    new SearchedFront(STEPS, () -> false)
                            .find(space, brief.ceiling().minorUnits(), List.of());

            assertThat(front.proven()).as("proven, seed %d", seed).isTrue();
            assertThat(totals(front)).as("seed %d", seed).isEqualTo(column(expected, 1));
            assertThat(points(front)).as("seed %d", seed).isEqualTo(column(expected, 0));
            auditAgrees(front, brief, catalogue);
        }
    }

    @Test
    void a_front_found_with_few_steps_claims_no_more_than_is_true() {
        int open = 0;
        for (int seed = 1; seed <= CASES; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SmallWorld.catalogue(random);
            Brief brief = SmallWorld.brief(random, catalogue);
            SearchSpace space = SearchSpace.of(brief, catalogue);
            if (space.candidates().impossible()) {
                continue;
            }
            List<long[]> all = exhaustive(new Enumeration(brief, catalogue).sound);

            Front front =
                    new SearchedFront(40, () -> false)
                            .find(space, brief.ceiling().minorUnits(), List.of());

            open += front.proven() ? 0 : 1;
            isMonotone(front);
            boundsHold(seed, front, all, brief.ceiling().minorUnits());
        }
        assertThat(open).isPositive();
    }

    private static void isMonotone(Front front) {
        for (int i = 1; i < front.standings().size(); i++) {
            Standing before = front.standings().get(i - 1);
            Standing after = front.standings().get(i);
            assertThat(after.totalMinor()).isGreaterThan(before.totalMinor());
            assertThat(after.points()).isGreaterThan(before.points());
        }
    }

    private static void boundsHold(int seed, Front front, List<long[]> all, long limitMinor) {
        for (long[] build : all) {
            long bound = -1;
            for (int i = 0; i < front.standings().size(); i++) {
                if (front.standings().get(i).totalMinor() <= build[1]) {
                    bound = front.standings().get(i).points() + front.gapPoints().get(i);
                }
            }
            if (bound >= 0) {
                assertThat(build[0]).as("seed %d", seed).isLessThanOrEqualTo(bound);
            } else {
                long cheapest =
                        front.standings().isEmpty()
                                ? limitMinor + 1
                                : front.standings().get(0).totalMinor();
                assertThat(build[1])
                        .as("seed %d", seed)
                        .isGreaterThanOrEqualTo(cheapest - front.leastGapMinor());
            }
        }
    }

    private static void auditAgrees(Front front, Brief brief, Catalogue catalogue) {
        Auditor auditor = new Auditor(brief, catalogue);
        for (Standing standing : front.standings()) {
            Audit audit = auditor.audit(standing.build());
            assertThat(audit.fits()).isTrue();
            assertThat(audit.points()).isEqualTo(standing.points());
            assertThat(audit.cost().totalMinor()).isEqualTo(standing.totalMinor());
        }
    }

    /** The points and totals that none is both cheaper and better than, cheapest first. */
    static List<long[]> exhaustive(List<long[]> sound) {
        List<long[]> sorted = new ArrayList<>(sound);
        sorted.sort(
                Comparator.<long[]>comparingLong(it -> it[1])
                        .thenComparing(Comparator.<long[]>comparingLong(it -> it[0]).reversed()));
        List<long[]> front = new ArrayList<>();
        for (long[] build : sorted) {
            if (front.isEmpty() || build[0] > front.get(front.size() - 1)[0]) {
                front.add(build);
            }
        }
        return front;
    }

    private static List<Long> totals(Front front) {
        return front.standings().stream().map(Standing::totalMinor).toList();
    }

    private static List<Long> points(Front front) {
        return front.standings().stream().map(Standing::points).toList();
    }

    private static List<Long> column(List<long[]> builds, int column) {
        return builds.stream().map(build -> build[column]).toList();
    }
}
