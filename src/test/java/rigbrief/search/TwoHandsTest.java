package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;

/** Two hands find what one finds, and what they find never hangs on who is quicker. */
class TwoHandsTest {
    private static final long ENOUGH = 60_000;

    private static Catalogue catalogue;

    @BeforeAll
    static void read() throws Exception {
        catalogue = CatalogueReader.read(Path.of("catalog-sample"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tight-600", "cad", "living-room", "forty-desks", "streamer"})
    void two_hands_prove_what_one_proves(String scenario) throws Exception {
        Spaces it = new Spaces(scenario);
        for (Objective objective : it.objectives()) {
            Certificate one =
                    new Certifier(it.problem, objective, ENOUGH, () -> false)
                            .run(Optional.of(it.least));
            Certificate two = it.twoHands(objective, ENOUGH);

            assertThat(one.complete()).isTrue();
            assertThat(two.complete()).isTrue();
            assertThat(two.best().orElseThrow().choices())
                    .isEqualTo(one.best().orElseThrow().choices());
        }
    }

    @Test
    void what_is_cut_short_is_the_same_every_time_and_its_bound_holds() throws Exception {
        Spaces it = new Spaces("living-room");
        for (Objective objective : it.objectives()) {
            double best =
                    new Certifier(it.problem, objective, ENOUGH, () -> false)
                            .run(Optional.of(it.least))
                            .bound();
            for (long steps : new long[] {20, 200, 1_000}) {
                Certificate cut = new Spaces("living-room").twoHands(objective, steps);
                Certificate again = new Spaces("living-room").twoHands(objective, steps);

                assertThat(cut.bound()).isGreaterThanOrEqualTo(best - 1e-6);
                assertThat(again.bound()).isEqualTo(cut.bound());
                assertThat(again.steps()).isEqualTo(cut.steps());
                assertThat(again.best().orElseThrow().build())
                        .isEqualTo(cut.best().orElseThrow().build());
            }
        }
    }

    @Test
    void both_together_take_no_more_steps_than_allowed() throws Exception {
        Spaces it = new Spaces("living-room");
        Objective balance = it.objectives().get(1);

        assertThat(it.twoHands(balance, 1_000).complete()).isFalse();
        // Each counts the step that was one too many.
        assertThat(it.twoHands(balance, 1_000).steps()).isBetween(900L, 1_002L);
    }

    /** A brief in two spaces over the same candidates. */
    private static final class Spaces {
        private final Problem problem;
        private final Problem aside;
        private final Standing least;
        private final Standing most;

        Spaces(String scenario) throws Exception {
            Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), catalogue);
            SearchSpace space = SearchSpace.of(brief, catalogue);
            SearchSpace other = SearchSpace.of(brief, catalogue);
            problem = space.within(brief.ceiling().minorUnits());
            aside =
                    new Problem(
                            other.assessor(),
                            space.candidates(),
                            problem.rules(),
                            problem.goals(),
                            problem.limitMinor(),
                            other.tables());
            TwoStage search = new TwoStage(1, 0, ENOUGH, () -> false);
            least = search.best(problem, Objective.leastMoney()).best().orElseThrow();
            most = search.best(problem, Objective.mostUtility()).best().orElseThrow();
        }

        List<Objective> objectives() {
            return List.of(
                    Objective.mostUtility(),
                    Objective.weighted(
                            most.totalMinor() - least.totalMinor(),
                            most.points() - least.points()));
        }

        Certificate twoHands(Objective objective, long steps) {
            return new TwoHands(problem, aside, objective, steps, () -> false)
                    .run(Optional.of(least));
        }
    }
}
