package rigbrief.presolve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.rule.Rules;
import rigbrief.search.RandomBriefs;
import rigbrief.search.RandomBuilds;
import rigbrief.search.SiblingWorld;
import rigbrief.world.Effort;

/**
 * What {@link TraitReader} declares about columns is true, and what {@link Dominance} drops is not
 * missed.
 *
 * <p>Check: rules and goals alone, asked of builds with one part and with the other; they know
 * nothing of the declarations.
 */
class MonotonicityTest {
    private static final int BUILDS = Effort.cases(60, 1_000);
    private static final int WORLDS = Effort.cases(20, 250);
    private static final int FEW_WORLDS = 5;
    private static final int BUILDS_PER_WORLD = 4;
    private static ColumnTrial trial;

    @BeforeAll
    static void tryColumns() {
        trial = ColumnTrial.of(1, BUILDS);
    }

    @Test
    void a_better_column_never_breaks_a_rule_and_never_lowers_a_goal() {
        assertThat(trial.wrong()).isEmpty();
    }

    /** Directions that some random build depends on; the rest are tried, but bind too seldom. */
    @Test
    void a_direction_turned_round_would_be_noticed() {
        assertThat(trial.noticedTurnedRound())
                .contains(
                        "board.processor-power-w",
                        "case.cooler-height-mm",
                        "case.damping-db",
                        "case.graphics-length-mm",
                        "case.impedance",
                        "case.supply-length-mm",
                        "cooler.max-dba",
                        "cooler.resistance-kw",
                        "drive.capacity-gb",
                        "drive.dba",
                        "fan.max-dba",
                        "memory.height-mm",
                        "supply.connectors",
                        "supply.dba-20",
                        "supply.length-mm",
                        "supply.watts");
    }

    @Test
    void what_is_dropped_for_money_and_utility_is_not_missed() {
        assertThat(missed(WORLDS, false, false)).isEmpty();
    }

    @Test
    void what_is_dropped_for_money_alone_is_not_missed() {
        assertThat(missed(WORLDS, true, false)).isEmpty();
    }

    @Test
    void a_candidate_too_many_dropped_would_be_noticed() {
        assertThat(missed(FEW_WORLDS, false, true)).isNotEmpty();
        assertThat(missed(FEW_WORLDS, true, true)).isNotEmpty();
    }

    /**
     * Builds that lose a dropped candidate and find none in its place that keeps every rule and is
     * as good.
     */
    private static List<String> missed(int wanted, boolean moneyOnly, boolean oneTooMany) {
        List<String> missed = new ArrayList<>();
        for (int seed = 1, worlds = 0; worlds < wanted; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SiblingWorld.crossed(random, 4);
            Brief brief = RandomBriefs.brief(random, catalogue);
            Assessor assessor = new Assessor(brief, catalogue);
            Candidates candidates = new CandidateFinder(assessor, Rules.ALL).find();
            if (candidates.impossible()) {
                continue;
            }
            Map<Slot, List<Candidate>> left =
                    new EnumMap<>(Dominance.undominated(assessor, candidates, moneyOnly));
            if (oneTooMany) {
                left.replaceAll(
                        (slot, list) -> list.size() > 2 ? list.subList(0, list.size() - 1) : list);
            }
            RandomBuilds builds = new RandomBuilds(assessor, candidates, random);
            boolean any = false;
            for (int i = 0; i < BUILDS_PER_WORLD; i++) {
                Optional<Map<Slot, Candidate>> build = builds.next();
                if (build.isEmpty()) {
                    break;
                }
                any = true;
                missed.addAll(
                        missed(seed, new Substitution(assessor), build.get(), left, moneyOnly));
            }
            worlds += any ? 1 : 0;
        }
        return missed;
    }

    private static List<String> missed(
            int seed,
            Substitution substitution,
            Map<Slot, Candidate> build,
            Map<Slot, List<Candidate>> left,
            boolean moneyOnly) {
        Substitution.Worth own = substitution.worth(Substitution.build(build)).orElseThrow();
        List<String> missed = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            Candidate dropped = build.get(slot);
            boolean replaced =
                    left.get(slot).contains(dropped)
                            || left.get(slot).stream()
                                    .flatMap(other -> substitution.with(build, other).stream())
                                    .anyMatch(other -> asGood(other, own, moneyOnly));
            if (!replaced) {
                missed.add("seed %d: %s".formatted(seed, dropped));
            }
        }
        return missed;
    }

    private static boolean asGood(
            Substitution.Worth one, Substitution.Worth other, boolean moneyOnly) {
        boolean cheaper = one.totalMinor() < other.totalMinor();
        return one.totalMinor() <= other.totalMinor()
                && (one.points() >= other.points() || moneyOnly && cheaper);
    }
}
