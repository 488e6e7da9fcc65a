package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;
import rigbrief.world.CatalogueGenerator;

/**
 * What rules say they ask of parts is all they ask, each by itself; and a table that asks like
 * parts only once lets nothing through that a rule forbids.
 */
class LikePartsTest {
    private static final int SLOTS = Slot.values().length;
    private static final int PARTS = 2_000;
    private static final int ROWS = 40;
    private static final int COMBINATIONS = 300;

    @ParameterizedTest
    @ValueSource(
            strings = {"potter", "keeper", "streamer", "living-room", "tight-600", "forty-desks"})
    void rules_tell_like_parts_of_the_sample_the_same(String scenario) throws Exception {
        check(problem(scenario, CatalogueReader.read(Path.of("catalog-sample"))), PARTS);
    }

    /** What a search remembers of rules about more slots rests on the same. */
    @ParameterizedTest
    @ValueSource(strings = {"potter", "editor", "streamer", "forty-desks"})
    void rules_about_more_slots_tell_like_parts_the_same(String scenario) throws Exception {
        Problem problem = problem(scenario, CatalogueReader.read(Path.of("catalog-sample")));
        Random random = new Random(2);
        int compared = 0;
        for (Rule rule : problem.rules()) {
            if (rule.reads().size() > 2 && rule.reads().size() <= Refusals.MOST_SLOTS) {
                for (int i = 0; i < COMBINATIONS; i++) {
                    List<Candidate> some = new ArrayList<>();
                    for (Slot slot : rule.reads()) {
                        List<Candidate> all = problem.candidates().of(slot);
                        some.add(all.get(random.nextInt(all.size())));
                    }
                    compared += compareLike(problem, rule, some);
                }
            }
        }
        assertThat(compared).isGreaterThan(COMBINATIONS);
    }

    /** Puts other parts that the rule can't tell apart in the place of each; counts them. */
    private static int compareLike(Problem problem, Rule rule, List<Candidate> some) {
        boolean forbidden = forbids(problem, rule, some);
        int compared = 0;
        for (int at = 0; at < some.size(); at++) {
            Candidate one = some.get(at);
            Object asked = asked(problem, rule, one);
            for (Candidate other : problem.candidates().of(one.slot())) {
                if (other != one && asked(problem, rule, other).equals(asked)) {
                    List<Candidate> others = new ArrayList<>(some);
                    others.set(at, other);
                    assertThat(forbids(problem, rule, others))
                            .as("%s: %s for %s in %s", rule.info().id(), other, one, some)
                            .isEqualTo(forbidden);
                    compared++;
                }
            }
        }
        return compared;
    }

    @Test
    void so_are_parts_of_a_generated_catalogue(@TempDir Path folder) throws Exception {
        new CatalogueGenerator(Path.of("catalog-sample")).write(folder, PARTS, 3, List.of());
        Catalogue catalogue = CatalogueReader.read(folder);
        for (String scenario : List.of("potter", "tight-600", "competitor")) {
            check(problem(scenario, catalogue), ROWS);
        }
    }

    private static Problem problem(String scenario, Catalogue catalogue) throws Exception {
        Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), catalogue);
        return SearchSpace.of(brief, catalogue).within(brief.ceiling().minorUnits());
    }

    private static void check(Problem problem, int rows) {
        PairTable table = problem.tables().pairs(problem);
        int rules = 0;
        for (Rule rule : problem.rules()) {
            if (rule.reads().size() == 2) {
                List<Slot> slots = List.copyOf(rule.reads());
                Map<List<Object>, Boolean> told = new HashMap<>();
                for (Candidate one : some(problem, slots.get(0), rows)) {
                    long[] row = table.row(one, slots.get(1));
                    for (Candidate other : problem.candidates().of(slots.get(1))) {
                        boolean forbidden = forbids(problem, rule, List.of(one, other));
                        assertThat(forbidden && SlotTable.has(row, other.index()))
                                .as("%s: %s with %s", rule.info().id(), one, other)
                                .isFalse();
                        List<Object> asked =
                                List.of(asked(problem, rule, one), asked(problem, rule, other));
                        assertThat(told.computeIfAbsent(asked, any -> forbidden))
                                .as("%s: %s with %s", rule.info().id(), one, other)
                                .isEqualTo(forbidden);
                    }
                }
                rules++;
            }
        }
        assertThat(rules).isGreaterThan(8);
    }

    private static List<Candidate> some(Problem problem, Slot slot, int most) {
        List<Candidate> some = new ArrayList<>(problem.candidates().of(slot));
        Collections.shuffle(some, new Random(1));
        return some.subList(0, Math.min(most, some.size()));
    }

    private static List<Object> asked(Problem problem, Rule rule, Candidate candidate) {
        return candidate.none()
                ? List.of()
                : List.of(
                        candidate.pieces(),
                        problem.assessor().pricing().kept(candidate.slot(), candidate.partOrNull()),
                        rule.asks(candidate.slot(), candidate.partOrNull()));
    }

    private static boolean forbids(Problem problem, Rule rule, List<Candidate> some) {
        Part[] parts = new Part[SLOTS];
        int[] pieces = new int[SLOTS];
        for (Candidate each : some) {
            parts[each.slot().ordinal()] = each.partOrNull();
            pieces[each.slot().ordinal()] = each.pieces();
        }
        return rule.forbids(rule.check(problem.assessor().assess(Build.of(parts, pieces))));
    }
}
