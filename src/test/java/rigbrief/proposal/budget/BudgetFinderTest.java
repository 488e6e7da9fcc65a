package rigbrief.proposal.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.solve.Answer;
import rigbrief.search.SmallWorld;

/** The potter's brief on the sample catalogue. */
class BudgetFinderTest {
    private static final BudgetLimits LIMITS = new BudgetLimits(8_000, 1_500);
    private static Catalogue catalogue;
    private static Brief brief;
    private static Budget budget;

    @BeforeAll
    static void solve() {
        catalogue = SmallWorld.sample();
        brief = SmallWorld.scenario("potter", catalogue);
        budget = find(() -> false, Progress.NONE);
    }

    private static Budget find(java.util.function.BooleanSupplier stop, Progress progress) {
        return new BudgetFinder(LIMITS, stop, progress)
                .find(brief, catalogue, brief.ceiling().minorUnits(), need -> true);
    }

    @Test
    void the_front_has_at_least_twenty_builds_and_rises() {
        assertThat(budget.front()).hasSizeGreaterThanOrEqualTo(20);
        for (int i = 1; i < budget.front().size(); i++) {
            FrontStep before = budget.front().get(i - 1);
            FrontStep after = budget.front().get(i);
            assertThat(after.totalMinor()).isGreaterThan(before.totalMinor());
            assertThat(after.points()).isGreaterThan(before.points());
            assertThat(after.changes()).isNotEmpty();
        }
        assertThat(budget.front()).extracting(FrontStep::build).doesNotHaveDuplicates();
        assertThat(budget.front().stream().filter(FrontStep::knee)).hasSize(1);
    }

    @Test
    void the_audit_of_every_point_agrees_with_it() {
        Auditor auditor = new Auditor(brief, catalogue);

        for (FrontStep step : budget.front()) {
            Audit audit = auditor.audit(step.build());
            assertThat(audit.fits()).isTrue();
            assertThat(audit.cost().totalMinor()).isEqualTo(step.totalMinor());
            assertThat(audit.points()).isEqualTo(step.points());
        }
    }

    @Test
    void one_goal_alone_never_costs_more_than_with_every_must() {
        for (GoalTotal goal : budget.goals()) {
            if (goal.alone().best().isPresent() && goal.together().best().isPresent()) {
                assertThat(goal.alone().totalMinor())
                        .as(goal.need().name())
                        .isLessThanOrEqualTo(goal.together().totalMinor());
            }
        }
    }

    @Test
    void a_softer_must_never_costs_more_and_letting_go_least() {
        for (NeedPrice price : budget.prices()) {
            assertThat(price.without().savedMinor())
                    .as(price.need().name())
                    .isGreaterThanOrEqualTo(price.softer().map(Variant::savedMinor).orElse(0L));
            assertThat(price.softer().map(Variant::savedMinor).orElse(0L)).isNotNegative();
            assertThat(points(price.without())).isNotNegative();
            assertThat(price.softer().map(BudgetFinderTest::points).orElse(0L))
                    .isNotNegative()
                    .isLessThanOrEqualTo(points(price.without()));
        }
    }

    private static long points(Variant variant) {
        return variant.gain().orElseThrow().points();
    }

    @Test
    void every_must_and_wish_is_among_the_goals() {
        assertThat(budget.goals())
                .extracting(goal -> goal.need().id() + " " + goal.need().kind())
                .contains(
                        "harbour-of-glass MUST",
                        "harbour-of-glass WISH",
                        "kiln-drafting MUST",
                        "kiln-drafting WISH",
                        "lighting MUST",
                        "colour WISH",
                        "noise MUST",
                        "noise WISH",
                        "memory MUST",
                        "storage MUST",
                        "wireless MUST");
    }

    @Test
    void more_ceiling_never_buys_less() {
        assertThat(budget.ceilingSteps()).hasSize(6);
        for (CeilingStep step : budget.ceilingSteps()) {
            assertThat(step.gained() * step.moreMinor()).isGreaterThan(-1e-9);
        }
    }

    @Test
    void work_that_is_called_off_at_once_says_that_it_is_partial() {
        Budget partial = find(() -> true, Progress.NONE);

        assertThat(partial.partial()).isTrue();
        assertThat(partial.musts().answer()).isNotEqualTo(Answer.NO);
    }

    @Test
    void progress_counts_up_to_what_it_said_there_would_be() {
        List<int[]> told = new ArrayList<>();

        find(() -> true, (done, of) -> told.add(new int[] {done, of}));

        assertThat(told).isNotEmpty();
        for (int i = 0; i < told.size(); i++) {
            assertThat(told.get(i)[0]).isEqualTo(i + 1);
        }
        assertThat(told.get(told.size() - 1)[0]).isEqualTo(told.get(told.size() - 1)[1]);
    }

    @Test
    void only_the_needs_that_are_wanted_are_priced() {
        Budget some =
                new BudgetFinder(new BudgetLimits(500, 500), () -> false, Progress.NONE)
                        .find(brief, catalogue, 0, need -> need.id().equals("noise"));

        assertThat(some.goals())
                .extracting(goal -> goal.need().kind())
                .containsExactly(Need.Kind.MUST, Need.Kind.WISH);
        assertThat(some.prices()).hasSize(1);
        assertThat(some.front()).isEmpty();
    }
}
