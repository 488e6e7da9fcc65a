package rigbrief.proposal.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.brief.WorkloadNeed;
import rigbrief.catalogue.Catalogue;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.SmallWorld;

class NeedsTest {
    private static final Catalogue SAMPLE = SmallWorld.sample();

    private static Needs needs(String scenario) {
        return Needs.of(SmallWorld.scenario(scenario, SAMPLE), SAMPLE);
    }

    private static Need need(Needs needs, String id) {
        return needs.musts().stream().filter(it -> it.id().equals(id)).findFirst().orElseThrow();
    }

    /** Read off the scenario's own file. */
    @Test
    void the_potters_musts_and_wishes_are_those_of_the_brief() {
        Needs needs = needs("potter");

        assertThat(needs.musts())
                .extracting(Need::name)
                .containsExactly(
                        "ceiling EUR 2,450.00",
                        "Harbour of Glass, average 72 fps, 1 % low 48 fps",
                        "Kiln Drafting, within 90 s",
                        "lighting none",
                        "noise at most 38 dB(A)",
                        "memory at least 32 GB",
                        "storage at least 1000 GB",
                        "room for Harbour of Glass; Kiln Drafting; Glaze Archive",
                        "wireless Wi-Fi 6",
                        "Glaze Archive at all",
                        "open beside: Letters, meetings and forty open pages",
                        "display 3440x1440 at 100 Hz");
        assertThat(needs.wishes())
                .extracting(Need::name)
                .containsExactly(
                        "Harbour of Glass, average 100 fps",
                        "Kiln Drafting, within 50 s",
                        "colour white",
                        "noise at most 32 dB(A)");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "potter",
                "writer",
                "editor",
                "competitor",
                "living-room",
                "cad",
                "forty-desks",
                "keeper",
                "tight-600",
                "streamer",
                "school-workshop",
                "impossible"
            })
    void keeping_every_must_is_the_brief_itself_with_a_hard_ceiling(String scenario) {
        Needs needs = needs(scenario);

        assertThat(needs.keeping(needs.all())).isEqualTo(Stretch.none(needs.brief()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"potter", "writer", "keeper", "forty-desks", "impossible"})
    void a_must_that_is_put_back_as_it_was_asked_restores_the_brief(String scenario) {
        Needs needs = needs(scenario);

        for (Need need : needs.musts()) {
            Brief free = need.freed().apply(needs.keeping(needs.all()));
            assertThat(sorted(need.asked().put().apply(free)))
                    .as(need.name())
                    .isEqualTo(sorted(needs.keeping(needs.all())));
        }
    }

    /** The order of workloads and kept parts means nothing. */
    private static Brief sorted(Brief brief) {
        return new BriefDraft(brief)
                .workloads(
                        brief.workloads().stream()
                                .sorted(Comparator.comparing(WorkloadNeed::use))
                                .toList())
                .keep(brief.keep().stream().sorted(Comparator.comparing(Kept::slot)).toList())
                .toBrief();
    }

    @Test
    void nothing_kept_leaves_no_must_that_could_be_found_again() {
        Needs needs = needs("potter");

        Brief bare = needs.keeping(new BitSet());

        assertThat(Needs.of(bare, SAMPLE).musts())
                .extracting(Need::kind)
                .containsOnly(Need.Kind.CEILING);
    }

    @Test
    void without_a_ceiling_a_build_may_cost_a_thousand_times_as_much_and_utility_stays() {
        Brief brief = SmallWorld.scenario("potter", SAMPLE);

        Brief free = Stretch.boundless(brief);

        assertThat(free.ceiling()).isEqualTo(brief.ceiling());
        assertThat(CeilingRule.limitMinor(free)).isEqualTo(1_001 * brief.ceiling().minorUnits());
    }

    @Test
    void a_stretched_ceiling_allows_the_amount_and_hardly_more() {
        Brief brief = SmallWorld.scenario("potter", SAMPLE);

        long limit = CeilingRule.limitMinor(Stretch.to(brief, 300_001));

        assertThat(limit).isBetween(300_001L, 300_001L + brief.ceiling().minorUnits() / 10_000 + 1);
        assertThat(CeilingRule.limitMinor(Stretch.to(brief, 100)))
                .isEqualTo(brief.ceiling().minorUnits());
    }

    /** The steps that the ladders name: 34 to 36 dB, 60 to 75 frames. */
    @Test
    void steps_are_those_that_people_ask_for_next() {
        Needs needs = needs("potter");

        Need noise = need(needs, "noise");
        Need game = need(needs, "harbour-of-glass");
        Need memory = need(needs, "memory");

        assertThat(noise.softer().map(Level::words)).contains("40 dB(A)");
        assertThat(noise.harder().map(Level::words)).contains("36 dB(A)");
        assertThat(game.softer().map(Level::words)).contains("average 60 fps, 1 % low 40 fps");
        assertThat(game.harder().map(Level::words)).contains("average 75 fps, 1 % low 50 fps");
        assertThat(memory.softer().map(Level::words)).contains("24 GB");
        assertThat(memory.harder().map(Level::words)).contains("48 GB");
    }

    @Test
    void a_workload_that_is_let_go_takes_its_must_along_but_a_freed_one_stays() {
        Needs needs = needs("potter");
        Need game = need(needs, "harbour-of-glass");

        List<String> dropped = uses(game.dropped().apply(needs.brief()));
        List<String> freed = uses(game.freed().apply(needs.brief()));

        assertThat(dropped).doesNotContain("harbour-of-glass");
        assertThat(freed).contains("harbour-of-glass");
    }

    private static List<String> uses(Brief brief) {
        return brief.workloads().stream().map(it -> it.use()).toList();
    }
}
