package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BuildFixture.aBuild;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Cost;
import rigbrief.audit.Audit;
import rigbrief.audit.GoalScore;

class GoalShareTest {
    private static final Cost FREE = new Cost(0, 0, 0, 0, 0, List.of(), 0, 0, 0, List.of());

    /** Hand calculation: (3 x 0.7100 + 1 x 0.2500) / 4 = 0.5950; shares 0.5325 and 0.0625. */
    @Test
    void a_contribution_is_weight_times_utility_over_the_sum_of_weights() {
        var audit = audit(List.of(goal(3, 7_100), goal(1, 2_500)));

        assertThat(GoalShare.utility(audit)).isEqualTo(new BigDecimal("0.5950"));
        assertThat(GoalShare.of(audit))
                .extracting(GoalShare::contribution)
                .containsExactly(new BigDecimal("0.5325"), new BigDecimal("0.0625"));
    }

    /** Hand calculation: three goals of 1/3 of 0.0001 each make 0.0001, which one of them gets. */
    @Test
    void what_rounding_leaves_over_goes_to_the_largest_remainder() {
        var audit = audit(List.of(goal(1, 1), goal(1, 1), goal(1, 1)));

        assertThat(GoalShare.of(audit))
                .extracting(share -> share.contribution().unscaledValue().intValue())
                .containsExactly(1, 0, 0);
    }

    @Test
    void without_goals_the_utility_is_full() {
        assertThat(GoalShare.utility(audit(List.of()))).isEqualByComparingTo(BigDecimal.ONE);
        assertThat(GoalShare.of(audit(List.of()))).isEmpty();
    }

    @Property
    void contributions_add_up_to_the_utility_and_none_is_off_by_more_than_the_last_decimal(
            @ForAll @Size(min = 1, max = 8) List<@IntRange(max = 10_000) Integer> utilities,
            @ForAll @Size(8) List<@IntRange(min = 1, max = 5) Integer> weights) {
        List<GoalScore> goals = new ArrayList<>();
        int sum = 0;
        for (int i = 0; i < utilities.size(); i++) {
            goals.add(goal(weights.get(i), utilities.get(i)));
            sum += weights.get(i);
        }
        var audit = audit(goals);

        var shares = GoalShare.of(audit);

        BigDecimal added = BigDecimal.ZERO;
        for (GoalShare share : shares) {
            added = added.add(share.contribution());
            double exact = share.score().weight() * share.score().tenThousandths() / 10_000.0 / sum;
            assertThat(Math.abs(share.contribution().doubleValue() - exact)).isLessThan(0.0001001);
        }
        assertThat(added).isEqualByComparingTo(GoalShare.utility(audit));
    }

    private static GoalScore goal(int weight, int tenThousandths) {
        return new GoalScore("quiet", "It is quiet", weight, tenThousandths, "because");
    }

    private static Audit audit(List<GoalScore> goals) {
        long points = 0;
        long most = 0;
        for (GoalScore goal : goals) {
            points += (long) goal.weight() * goal.tenThousandths();
            most += goal.weight() * 10_000L;
        }
        return new Audit(
                aBuild().make(),
                List.of(),
                List.of(),
                goals,
                points,
                most,
                List.of(),
                FREE,
                Optional.empty());
    }
}
