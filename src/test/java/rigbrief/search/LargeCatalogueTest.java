package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Graphics;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.world.CatalogueGenerator;

/** What is done only where there are many parts: coarse starts, groups of cards, cut searches. */
class LargeCatalogueTest {
    private static final int PARTS = 2_000;
    private static final Objective[] OBJECTIVES = {
        Objective.leastMoney(), Objective.mostUtility(), Objective.weighted(10_000, 20_000)
    };

    @TempDir static Path folder;
    private static Catalogue catalogue;
    private static Brief brief;
    private static Problem problem;

    @BeforeAll
    static void generate() throws Exception {
        new CatalogueGenerator(Path.of("catalog-sample")).write(folder, PARTS, 7, List.of());
        catalogue = CatalogueReader.read(folder);
        brief = BriefReader.read(Path.of("scenarios", "tight-600.yaml"), catalogue);
        problem = SearchSpace.of(brief, catalogue).within(brief.ceiling().minorUnits());
    }

    @Test
    void a_coarse_start_is_a_build_and_none_better_than_the_best_that_is_proven() {
        for (Objective objective : OBJECTIVES) {
            Standing coarse =
                    new CoarseSearch(problem, objective, 5_000, () -> false).improve(null);
            Certificate proven =
                    new Certifier(problem, objective, 60_000, () -> false).run(Optional.empty());

            assertThat(new Auditor(brief, catalogue).audit(coarse.build()).fits()).isTrue();
            assertThat(proven.complete()).isTrue();
            assertThat(first(objective, coarse)).isLessThanOrEqualTo(first(objective, proven));
        }
    }

    /**
     * The bound of a search that is cut short has to hold for the best that a longer one proves.
     */
    @Test
    void a_search_that_is_cut_short_has_an_answer_and_a_true_bound() {
        for (Objective objective : OBJECTIVES) {
            long best =
                    first(
                            objective,
                            new Certifier(problem, objective, 60_000, () -> false)
                                    .run(Optional.empty()));
            for (int steps : new int[] {300, 1_500}) {
                Certificate cut = new TwoStage(1, 0, steps, () -> false).best(problem, objective);

                assertThat(cut.best()).as("%s after %d steps", objective, steps).isPresent();
                assertThat(first(objective, cut)).isLessThanOrEqualTo(best);
                assertThat(cut.bound()).isGreaterThanOrEqualTo(best - 1e-6);
                assertThat(!cut.complete() || first(objective, cut) == best).isTrue();
            }
        }
    }

    private static long first(Objective objective, Certificate certificate) {
        return first(objective, certificate.best().orElseThrow());
    }

    private static long first(Objective objective, Standing standing) {
        return objective.first(standing.points(), standing.totalMinor());
    }

    @Test
    void groups_of_cards_part_them_and_no_card_passes_its_groups() {
        int sets = problem.assessor().pricing().supplierSets().length;
        double[] worth = {0, 0.5};
        List<Candidate> cards = problem.candidates().of(Slot.GRAPHICS);
        SlotTable table =
                new SlotTable(
                        Slot.GRAPHICS,
                        cards,
                        new double[cards.size()],
                        IntStream.range(0, cards.size()).mapToDouble(i -> i % 7).toArray(),
                        sets,
                        worth);

        CardGroup all = CardGroup.of(table, table.domain(cards), worth, sets);

        assertThat(leaves(all)).containsExactlyInAnyOrderElementsOf(cards);
        for (Candidate card : cards) {
            for (CardGroup group : all.towards(card)) {
                for (int s = 0; s < sets; s++) {
                    long price = card.minorBySet()[s];
                    assertThat(group.minor()[s]).isLessThanOrEqualTo(price);
                    for (int w = 0; w < worth.length; w++) {
                        assertThat(group.net()[w][s])
                                .isGreaterThanOrEqualTo(card.index() % 7 - worth[w] * price);
                    }
                }
                if (card.none()) {
                    assertThat(group.none()).isTrue();
                } else {
                    Graphics part = (Graphics) card.partOrNull();
                    assertThat(group.ideal().tflops()).isGreaterThanOrEqualTo(part.tflops());
                    assertThat(group.ideal().bandwidthGbs())
                            .isGreaterThanOrEqualTo(part.bandwidthGbs());
                    assertThat(group.ideal().rayRate()).isGreaterThanOrEqualTo(part.rayRate());
                    assertThat(group.ideal().vramGb()).isGreaterThanOrEqualTo(part.vramGb());
                    assertThat(group.ideal().upscales() || part.upscaling().isEmpty()).isTrue();
                }
            }
        }
    }

    private static List<Candidate> leaves(CardGroup group) {
        if (group.size() == 1) {
            return List.of(group.single());
        }
        List<Candidate> leaves = new ArrayList<>();
        Arrays.stream(group.halves()).forEach(half -> leaves.addAll(leaves(half)));
        return leaves;
    }

    @Test
    void a_smaller_space_gives_back_the_builds_of_the_whole_one() {
        Subspace undominated = problem.tables().undominated(problem);
        Standing known =
                new Certifier(problem, Objective.leastMoney(), 60_000, () -> false)
                        .run(Optional.empty())
                        .best()
                        .orElseThrow();

        assertThat(undominated.of(problem).candidates().count())
                .isLessThan(problem.candidates().count());
        assertThat(undominated.holds(known)).isTrue();
        assertThat(undominated.original(undominated.here(known))).isEqualTo(known);
        assertThat(undominated.here(known).choices())
                .allSatisfy(
                        choice ->
                                assertThat(undominated.of(problem).candidates().of(choice.slot()))
                                        .contains(choice));
    }
}
