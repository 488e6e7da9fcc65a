package rigbrief.proposal.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.need.Level;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.need.Stretch;
import rigbrief.proposal.solve.Most;
import rigbrief.proposal.solve.Solving;
import rigbrief.search.Enumeration;
import rigbrief.search.SearchSpace;
import rigbrief.search.SmallWorld;

/**
 * Check: the oracle tries every build under the changed brief and assesses it under the brief as it
 * stands; it shares the rule and goal objects, nothing else.
 */
class UtilitiesAgainstEnumerationTest {
    private static final int CASES = 120;
    private static final long STEPS = 50_000_000;

    /** Gaps of up to 0.002 of full utility are told and not searched. */
    private static final long NEXT_TO_NOTHING = 500;

    @Test
    void most_utility_of_changed_briefs_is_the_exhaustive_one_on_120_seeded_cases() {
        int compared = 0;
        int changed = 0;
        int proven = 0;
        for (int seed = 1; compared < CASES; seed++) {
            World world = world(seed, STEPS);
            for (Asked asked : world.some(4)) {
                Most most = asked.most();

                Enumeration all = world.every(asked.under());

                String as = "seed %d, %s".formatted(seed, asked.words());
                assertThat(most.none()).as(as).isEqualTo(all.sound.isEmpty());
                long points = most.best().map(it -> it.points()).orElse(-1L);
                if (most.proven()) {
                    assertThat(points).as(as).isEqualTo(all.mostPoints);
                } else {
                    assertThat(all.mostPoints).as(as).isBetween(points, most.boundPoints());
                    assertThat(most.boundPoints() - points)
                            .as(as)
                            .isLessThanOrEqualTo(world.mostPoints() / NEXT_TO_NOTHING);
                }
                compared++;
                proven += most.proven() ? 1 : 0;
                changed += all.mostPoints == world.base().boundPoints() ? 0 : 1;
            }
        }
        assertThat(changed).as("that differ from the brief as it stands").isGreaterThan(20);
        assertThat(proven).as("with no gap at all").isGreaterThan(CASES * 9 / 10);
    }

    @Test
    void what_few_steps_leave_open_is_told() {
        int open = 0;
        for (int seed = 1; seed <= CASES / 4; seed++) {
            World world = world(seed, 4);
            for (Asked asked : world.some(2)) {
                Most most = asked.most();

                Enumeration all = world.every(asked.under());

                String as = "seed %d, %s".formatted(seed, asked.words());
                open += most.proven() ? 0 : 1;
                assertThat(most.none() && !all.sound.isEmpty()).as(as).isFalse();
                assertThat(most.best().map(it -> it.points()).orElse(-1L))
                        .as(as)
                        .isLessThanOrEqualTo(all.mostPoints);
                if (!most.none()) {
                    assertThat(all.mostPoints).as(as).isLessThanOrEqualTo(most.boundPoints());
                }
            }
        }
        assertThat(open).isPositive();
    }

    /** A changed brief and what was found for it. */
    private record Asked(String words, Brief under, Most most) {}

    private record World(
            Random random, Catalogue catalogue, Needs needs, Most base, Utilities utilities) {
        long mostPoints() {
            return SearchSpace.of(needs.brief(), catalogue).within(0).mostPoints();
        }

        /** The builds under a brief, valued by the brief as it stands. */
        Enumeration every(Brief under) {
            return new Enumeration(
                    under, needs.brief(), catalogue, under.ceiling().minorUnits(), false);
        }

        /** Some changes; with other terms of buying one build has two prices, so they stay. */
        List<Asked> some(int count) {
            List<Asked> all = new ArrayList<>();
            for (Need need : priced(needs)) {
                Utilities.Eased eased = utilities.eased(need);
                all.add(asked(need, "without", needs.without(need), eased.without()));
                Optional<Level> softer = need.softer();
                softer.ifPresent(
                        level ->
                                all.add(
                                        asked(
                                                need,
                                                level.words(),
                                                needs.at(level),
                                                eased.softer().get())));
                need.harder()
                        .ifPresent(
                                level ->
                                        all.add(
                                                asked(
                                                        need,
                                                        level.words(),
                                                        needs.at(level),
                                                        utilities.harder(need, level))));
            }
            java.util.Collections.shuffle(all, random);
            return all.subList(0, Math.min(count, all.size()));
        }

        private static Asked asked(Need need, String words, Brief under, Most most) {
            return new Asked(need.name() + ": " + words, under, most);
        }
    }

    private static List<Need> priced(Needs needs) {
        return needs.musts().stream()
                .filter(need -> need.kind() == Need.Kind.MUST)
                .filter(need -> needs.without(need).buying().equals(needs.brief().buying()))
                .toList();
    }

    private static World world(int seed, long steps) {
        Random random = new Random(seed);
        Catalogue catalogue = SmallWorld.catalogue(random);
        Needs needs = Needs.of(SmallWorld.brief(random, catalogue), catalogue);
        Solving solving = new Solving(catalogue, steps, () -> false);
        Most base =
                solving.most(
                        SearchSpace.of(Stretch.none(needs.brief()), catalogue),
                        List.of(),
                        Long.MAX_VALUE);
        return new World(
                random,
                catalogue,
                needs,
                base,
                new Utilities(needs, solving, base).among(priced(needs)));
    }
}
