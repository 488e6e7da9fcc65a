package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.world.Effort;

/**
 * Check: the oracle tries every build; it shares the rule and goal objects with the search, nothing
 * else.
 */
class SearchAgainstEnumerationTest {
    /** Cases that have a build at all; those without are compared too, and not counted. */
    private static final int CASES = Effort.cases(100, 500);

    private static final int CASES_OF_SIBLINGS = Effort.cases(10, 100);
    private static final long STEPS = 50_000_000;

    @Test
    void the_certifier_finds_what_trying_every_build_finds() {
        int withBuilds = 0;
        for (int seed = 1; withBuilds < CASES; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SmallWorld.catalogue(random);
            withBuilds += compare(seed, SmallWorld.brief(random, catalogue), catalogue);
        }
        assertThat(withBuilds).isEqualTo(CASES);
    }

    /** Parts beside others that could stand in for them, kept parts, and terms of every sort. */
    @Test
    void so_it_does_where_parts_stand_in_for_one_another() {
        int withBuilds = 0;
        for (int seed = 1; withBuilds < CASES_OF_SIBLINGS; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SiblingWorld.crossed(random, 1);
            withBuilds += compare(seed, RandomBriefs.brief(random, catalogue), catalogue);
        }
        assertThat(withBuilds).isEqualTo(CASES_OF_SIBLINGS);
    }

    private static int compare(int seed, Brief brief, Catalogue catalogue) {
        Enumeration all = new Enumeration(brief, catalogue);
        assertLean(seed, brief, catalogue, all);
        assertFull(seed, brief, catalogue, all);
        assertBalanced(seed, brief, catalogue, all);
        return all.sound.isEmpty() ? 0 : 1;
    }

    @Test
    void local_search_is_never_better_than_the_proven_best() {
        for (int seed = 1; seed <= 12; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SmallWorld.catalogue(random);
            Brief brief = SmallWorld.brief(random, catalogue);
            SearchSpace space = SearchSpace.of(brief, catalogue);
            if (space.candidates().impossible()) {
                continue;
            }
            Problem problem = space.within(brief.ceiling().minorUnits());

            Standing found =
                    LocalSearch.run(
                            problem,
                            Objective.mostUtility(),
                            Starter.start(problem),
                            1_500,
                            seed,
                            EnvironmentMode.FULL_ASSERT);
            Certificate proven = certify(brief, catalogue, Objective.mostUtility());

            if (found.sound()) {
                assertThat(proven.best()).as("seed %d", seed).isPresent();
                assertThat(found.points())
                        .as("seed %d", seed)
                        .isLessThanOrEqualTo(proven.best().orElseThrow().points());
            }
        }
    }

    private static void assertLean(int seed, Brief brief, Catalogue catalogue, Enumeration all) {
        Certificate certificate = certify(brief, catalogue, Objective.leastMoney());

        assertThat(certificate.complete()).as("seed %d", seed).isTrue();
        assertThat(certificate.best().map(Standing::totalMinor).orElse(-1L))
                .as("least total, seed %d", seed)
                .isEqualTo(all.leastMinor);
        assertThat(certificate.best().map(Standing::points).orElse(-1L))
                .as("points at the least total, seed %d", seed)
                .isEqualTo(all.pointsOfLeast);
    }

    private static void assertFull(int seed, Brief brief, Catalogue catalogue, Enumeration all) {
        Certificate certificate = certify(brief, catalogue, Objective.mostUtility());

        assertThat(certificate.complete()).as("seed %d", seed).isTrue();
        assertThat(certificate.best().map(Standing::points).orElse(-1L))
                .as("most points, seed %d", seed)
                .isEqualTo(all.mostPoints);
        assertThat(certificate.best().map(Standing::totalMinor).orElse(-1L))
                .as("total at the most points, seed %d", seed)
                .isEqualTo(all.minorOfMost);
    }

    private static void assertBalanced(
            int seed, Brief brief, Catalogue catalogue, Enumeration all) {
        long money = Math.max(1, all.minorOfMost - all.leastMinor);
        long points = Math.max(1, all.mostPoints - all.pointsOfLeast);
        Objective objective = Objective.weighted(money, points);
        Certificate certificate = certify(brief, catalogue, objective);

        Optional<Long> best =
                all.sound.stream().map(it -> objective.first(it[0], it[1])).max(Long::compare);
        assertThat(certificate.best().map(it -> objective.first(it.points(), it.totalMinor())))
                .as("balance, seed %d", seed)
                .isEqualTo(best);
    }

    private static Certificate certify(Brief brief, Catalogue catalogue, Objective objective) {
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            return new Certificate(Optional.empty(), 0, true, 0);
        }
        return new Certifier(
                        space.within(brief.ceiling().minorUnits()), objective, STEPS, () -> false)
                .run(Optional.empty());
    }
}
