package rigbrief.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.clash.WayOut;
import rigbrief.search.SmallWorld;
import rigbrief.wording.Phrase;

/** The scenario that is impossible twice over, as its own file tells. */
class ClashFinderTest {
    private static final String TITLE = "Tallow and Thorn, average 75 fps, 1 % low 45 fps";
    private static Catalogue catalogue;
    private static Brief brief;
    private static Clash clash;

    @BeforeAll
    static void find() {
        catalogue = SmallWorld.sample();
        brief = SmallWorld.scenario("impossible", catalogue);
        clash = new ClashFinder(catalogue, 60_000, () -> false).find(brief);
    }

    @Test
    void the_title_clashes_with_the_ceiling_and_with_the_size() {
        assertThat(named(clash.sets()))
                .containsExactlyInAnyOrder(
                        List.of("ceiling EUR 1,100.00", TITLE),
                        List.of(TITLE, "size at most 10 l"));
        assertThat(clash.minimal()).isTrue();
        assertThat(clash.allSets()).isTrue();
    }

    private static List<List<String>> named(List<List<Phrase>> sets) {
        return sets.stream().map(set -> set.stream().map(Phrase::toString).toList()).toList();
    }

    /** The only case of ten litres has one opening and no room for such a card. */
    @Test
    void the_rules_of_fit_behind_it_are_named_with_the_nearest_miss() {
        assertThat(clash.explanation())
                .anySatisfy(
                        line ->
                                assertThat(line.toString())
                                        .contains("Rule card-length")
                                        .contains("case takes 180 mm"))
                .anySatisfy(line -> assertThat(line.toString()).contains("Rule card-slots"));
    }

    @Test
    void the_ways_out_are_the_title_alone_or_ceiling_and_size_together() {
        assertThat(clash.waysOut())
                .extracting(
                        way -> way.changes().stream().map(each -> each.need().toString()).toList())
                .containsExactly(
                        List.of(TITLE), List.of("ceiling EUR 1,100.00", "size at most 10 l"));
    }

    @Test
    void every_way_out_is_a_real_build_that_its_brief_accepts() {
        for (WayOut way : clash.waysOut()) {
            var audit = new rigbrief.audit.Auditor(way.brief(), catalogue).audit(way.build());
            assertThat(audit.fits()).isTrue();
            assertThat(audit.cost().totalMinor()).isEqualTo(way.totalMinor());
        }
    }
}
