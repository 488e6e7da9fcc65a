package rigbrief.proposal.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Enumeration;
import rigbrief.search.SmallWorld;

/** Check: the oracle tries every build; it shares the rule and goal objects, nothing else. */
class LeastAgainstEnumerationTest {
    private static final int CASES = 200;
    private static final long STEPS = 50_000_000;

    @Test
    void least_totals_are_the_exhaustive_minima_on_two_hundred_seeded_briefs() {
        int compared = 0;
        for (int seed = 1; compared < CASES; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SmallWorld.catalogue(random);
            Brief brief = SmallWorld.brief(random, catalogue);
            Needs needs = Needs.of(brief, catalogue);
            Solving solving = new Solving(catalogue, STEPS, () -> false);
            for (Brief asked : drawn(needs, random)) {
                compared++;
                long limit = CeilingRule.limitMinor(asked);

                Least least = solving.least(asked, List.of());

                Enumeration all = new Enumeration(asked, catalogue, limit, false);
                assertThat(least.proven()).as("seed %d", seed).isTrue();
                assertThat(least.best().map(it -> it.totalMinor()).orElse(-1L))
                        .as("seed %d", seed)
                        .isEqualTo(all.leastMinor);
                assertThat(least.answer()).isEqualTo(all.sound.isEmpty() ? Answer.NO : Answer.YES);
            }
        }
    }

    @Test
    void a_looser_need_never_costs_more_and_a_harder_one_never_less() {
        for (int seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SmallWorld.catalogue(random);
            Brief brief = SmallWorld.brief(random, catalogue);
            Needs needs = Needs.of(brief, catalogue);
            Solving solving = new Solving(catalogue, STEPS, () -> false);
            long asked = total(solving.least(needs.atAnyPrice(), List.of()));
            Need need = needs.musts().get(random.nextInt(needs.musts().size()));

            long without = without(solving, needs, need);

            assertThat(without).as("seed %d, %s", seed, need.name()).isLessThanOrEqualTo(asked);
            need.softer()
                    .ifPresent(
                            level ->
                                    assertThat(at(solving, needs, level.put().apply(brief)))
                                            .isLessThanOrEqualTo(asked));
            need.harder()
                    .ifPresent(
                            level ->
                                    assertThat(at(solving, needs, level.put().apply(brief)))
                                            .isGreaterThanOrEqualTo(asked));
        }
    }

    private static long without(Solving solving, Needs needs, Need need) {
        return at(solving, needs, needs.without(need));
    }

    private static long at(Solving solving, Needs needs, Brief brief) {
        return total(solving.least(rigbrief.proposal.need.Stretch.boundless(brief), List.of()));
    }

    private static long total(Least least) {
        return least.best().isPresent() ? least.totalMinor() : Long.MAX_VALUE;
    }

    /** The brief at any price, one need alone, and the brief without it. */
    private static List<Brief> drawn(Needs needs, Random random) {
        List<Need> all = new ArrayList<>(needs.musts());
        all.removeIf(need -> need.kind() == Need.Kind.TERM);
        all.addAll(needs.wishes());
        Need need = all.get(random.nextInt(all.size()));
        List<Brief> drawn = new ArrayList<>();
        drawn.add(needs.atAnyPrice());
        drawn.add(needs.alone(need));
        if (need.kind() == Need.Kind.MUST) {
            drawn.add(needs.without(need));
        }
        return drawn;
    }
}
