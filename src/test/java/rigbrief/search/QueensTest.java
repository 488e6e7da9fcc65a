package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.PlainCandidates;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;

/**
 * Check: PAR-06, in how many ways n queens stand on a board of n by n without threatening each
 * other. A column is a slot, a row a part, and what two queens may not do a rule about two slots;
 * the certifier is asked for one more way until it proves that there is none.
 */
class QueensTest {
    private static final Brief.SizeNeed WEIGHED =
            new Brief.SizeNeed(
                    OptionalInt.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(Mass.g(1_000_000)));

    @ParameterizedTest
    @CsvSource({"1,1", "2,0", "3,0", "4,2", "5,10", "6,4", "7,40", "8,92"})
    void every_way_is_found_and_no_other(int queens, int ways) {
        List<Slot> columns = Classes.PLACES.subList(0, queens);
        CatalogueFixture catalogue = aCatalogue();
        Map<Slot, List<Part>> parts = new EnumMap<>(Slot.class);
        for (Slot slot : Classes.PLACES) {
            List<Part> rows = new ArrayList<>();
            for (int row = 0; row < (columns.contains(slot) ? queens : 1); row++) {
                String id = slot.word() + "-" + row;
                // What costs more weighs less, so that no part stands in for another.
                rows.add(Knapsack.fixture(slot).id(id).massG(1_000 - row).make());
                catalogue
                        .part(rows.get(row))
                        .offer(id, KESTREL, BigDecimal.valueOf(row, 2).toPlainString());
            }
            parts.put(slot, rows);
        }
        Assessor assessor = new Assessor(aBrief().size(WEIGHED).make(), catalogue.make());
        List<Rule> rules = new ArrayList<>();
        for (int a = 0; a < queens; a++) {
            for (int b = a + 1; b < queens; b++) {
                rules.add(new Apart(columns.get(a), columns.get(b), b - a));
            }
        }
        Set<List<Integer>> found = new HashSet<>();
        rules.add(new Another(columns, found));
        Certificate certificate;
        do {
            Problem problem =
                    new Problem(
                            assessor,
                            PlainCandidates.of(assessor, parts),
                            rules,
                            List.of(),
                            10_000_00,
                            new SharedTables());
            certificate =
                    new Certifier(problem, Objective.leastMoney(), 1_000_000, () -> false)
                            .untilFirst()
                            .run(Optional.empty());
            certificate
                    .best()
                    .ifPresent(
                            way ->
                                    assertThat(found.add(rows(way.build(), columns)))
                                            .as("found before")
                                            .isTrue());
        } while (certificate.best().isPresent());

        assertThat(certificate.complete()).isTrue();
        assertThat(found).hasSize(ways);
    }

    private static List<Integer> rows(rigbrief.build.Build build, List<Slot> columns) {
        return columns.stream().map(slot -> row(build.part(slot))).toList();
    }

    private static int row(Part part) {
        return Integer.parseInt(part.id().substring(part.id().lastIndexOf('-') + 1));
    }

    /** Two queens stand in different rows and on different diagonals. */
    private record Apart(Slot one, Slot other, int distance) implements Rule {
        @Override
        public RuleInfo info() {
            return new RuleInfo(
                    one.word() + "-" + other.word(),
                    "No threat",
                    Unit.CONDITION,
                    Source.brief("queens"));
        }

        @Override
        public Set<Slot> reads() {
            return EnumSet.of(one, other);
        }

        @Override
        public Finding check(Assessment it) {
            if (!it.build().has(one) || !it.build().has(other)) {
                return Finding.MET;
            }
            int apart = Math.abs(row(it.build().part(one)) - row(it.build().part(other)));
            return Finding.require(apart != 0 && apart != distance, () -> "a threat");
        }
    }

    /** It is none of the ways that are known. */
    private record Another(List<Slot> columns, Set<List<Integer>> known) implements Rule {
        @Override
        public RuleInfo info() {
            return new RuleInfo("another", "A new way", Unit.CONDITION, Source.brief("queens"));
        }

        @Override
        public Set<Slot> reads() {
            return EnumSet.copyOf(columns);
        }

        @Override
        public Finding check(Assessment it) {
            boolean whole = columns.stream().allMatch(it.build()::has);
            return Finding.require(
                    !whole || !known.contains(rows(it.build(), columns)), () -> "known");
        }
    }
}
