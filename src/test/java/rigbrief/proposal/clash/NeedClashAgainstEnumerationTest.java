package rigbrief.proposal.clash;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.solve.Answer;
import rigbrief.proposal.solve.Solving;
import rigbrief.quantity.Money;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Enumeration;
import rigbrief.search.SmallWorld;

/** Check: for every subset of the needs the oracle tries every build of a small catalogue. */
class NeedClashAgainstEnumerationTest {
    private static final int CASES = 200;
    private static final int MOST_NEEDS = 5;
    private static final long STEPS = 50_000_000;

    @Test
    void clashing_sets_and_corrections_are_the_exhaustive_ones_on_two_hundred_seeded_cases() {
        int clashes = 0;
        int sets = 0;
        for (int seed = 1; clashes < CASES; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SmallWorld.catalogue(random);
            Needs needs = few(tight(SmallWorld.brief(random, catalogue), random), catalogue);
            Map<BitSet, Boolean> tried = new HashMap<>();
            if (possible(needs, needs.all(), catalogue, tried)) {
                continue;
            }
            clashes++;

            ClashSets found =
                    ClashSets.of(
                            needs.musts().size(),
                            new NeedOracle(needs, new Solving(catalogue, STEPS, () -> false)),
                            1_000);

            sets += found.conflicts().size();
            assertThat(found.complete()).as("seed %d", seed).isTrue();
            assertThat(found.conflicts())
                    .as("clashes, seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(
                            ClashSetsTest.exhaustive(
                                    needs.musts().size(),
                                    set -> !possible(needs, set, catalogue, tried)));
            assertThat(found.corrections())
                    .as("corrections, seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(
                            ClashSetsTest.exhaustive(
                                    needs.musts().size(),
                                    set -> possible(needs, rest(needs, set), catalogue, tried)));
        }
        assertThat(sets).isGreaterThan(CASES);
    }

    @Test
    void every_way_out_meets_what_it_does_not_let_go() {
        int ways = 0;
        for (int seed = 1; seed <= 40; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SmallWorld.catalogue(random);
            Brief brief = tight(SmallWorld.brief(random, catalogue), random);
            Solving solving = new Solving(catalogue, STEPS, () -> false);
            if (solving.exists(brief, List.of()) != Answer.NO) {
                continue;
            }

            NeedClash clash = NeedClash.find(brief, catalogue, STEPS, () -> false);

            for (WayOut way : clash.waysOut()) {
                ways++;
                assertThat(solving.fits(way.build(), way.brief())).as("seed %d", seed).isTrue();
                for (Need need : clash.constraints()) {
                    boolean letGo =
                            way.changes().stream().anyMatch(c -> c.need().equals(need.phrase()));
                    if (!letGo) {
                        assertThat(need.asked().put().apply(way.brief()))
                                .as("seed %d keeps %s", seed, need.name())
                                .isEqualTo(way.brief());
                    }
                }
            }
        }
        assertThat(ways).isPositive();
    }

    /** Less money, so that clashes are common. */
    private static Brief tight(Brief brief, Random random) {
        long ceiling = brief.ceiling().minorUnits() * (30 + random.nextInt(60)) / 100;
        return new BriefDraft(brief)
                .ceiling(Money.ofMinor(ceiling, brief.currency()))
                .overrunBasisPoints(0)
                .toBrief();
    }

    /** A brief with a few of its needs, so that every subset can be tried. */
    private static Needs few(Brief brief, Catalogue catalogue) {
        Needs all = Needs.of(brief, catalogue);
        Brief left = brief;
        List<Need> kept = new ArrayList<>();
        for (Need need : all.musts()) {
            if (need.kind() == Need.Kind.TERM) {
                continue;
            }
            if (kept.size() < MOST_NEEDS) {
                kept.add(need);
            } else {
                left = need.dropped().apply(left);
            }
        }
        return new Needs(left, kept, List.of());
    }

    private static boolean possible(
            Needs needs, BitSet set, Catalogue catalogue, Map<BitSet, Boolean> tried) {
        return tried.computeIfAbsent(
                (BitSet) set.clone(),
                kept -> {
                    Brief brief = needs.keeping(kept);
                    long limit = CeilingRule.limitMinor(brief);
                    return !new Enumeration(brief, catalogue, limit, true).sound.isEmpty();
                });
    }

    private static BitSet rest(Needs needs, BitSet set) {
        BitSet rest = (BitSet) set.clone();
        rest.flip(0, needs.musts().size());
        return rest;
    }
}
