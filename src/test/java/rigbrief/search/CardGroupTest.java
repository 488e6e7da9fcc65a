package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Graphics;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/** No card of a group makes a pair better than what the group is bounded by. */
class CardGroupTest {
    private static final int PROCESSORS = 12;
    private static final double CLOSE = 1e-9;

    @ParameterizedTest
    @ValueSource(strings = {"potter", "writer", "living-room", "editor", "keeper"})
    void a_group_bounds_each_of_its_cards(String scenario) throws Exception {
        Catalogue catalogue = CatalogueReader.read(Path.of("catalog-sample"));
        Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), catalogue);
        Problem problem = SearchSpace.of(brief, catalogue).within(brief.ceiling().minorUnits());
        Outlook outlook = problem.tables().outlook(problem);
        List<Candidate> cards = problem.candidates().of(Slot.GRAPHICS);
        double[] gain = new double[cards.size()];
        SlotTable table = new SlotTable(Slot.GRAPHICS, cards, gain, gain, 1, new double[] {0});
        CardGroup all = CardGroup.of(table, table.domain(cards), new double[] {0}, 1);
        List<Candidate> processors = problem.candidates().of(Slot.PROCESSOR);
        Random random = new Random(1);
        int compared = 0;
        for (int i = 0; i < PROCESSORS; i++) {
            Processor processor =
                    (Processor) processors.get(random.nextInt(processors.size())).partOrNull();
            for (Candidate card : cards) {
                Outlook.Pair own = outlook.pair(processor, (Graphics) card.partOrNull());
                for (CardGroup group : all.towards(card)) {
                    Outlook.Pair bound = outlook.pair(processor, group);
                    if (own.hopeless()) {
                        continue;
                    }
                    assertThat(bound.workloadsShare())
                            .isGreaterThanOrEqualTo(own.workloadsShare() - CLOSE);
                    assertThat(bound.sustainedW()).isLessThanOrEqualTo(own.sustainedW() + CLOSE);
                    assertThat(bound.bounds().loadW())
                            .isLessThanOrEqualTo(own.bounds().loadW() + CLOSE);
                    assertThat(bound.bounds().idleW())
                            .isLessThanOrEqualTo(own.bounds().idleW() + CLOSE);
                    assertThat(bound.bounds().kwhPerYear())
                            .isLessThanOrEqualTo(own.bounds().kwhPerYear() + CLOSE);
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(100);
    }
}
