package rigbrief.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import rigbrief.audit.Audit;
import rigbrief.audit.GoalScore;
import rigbrief.quantity.Contributions;

/**
 * A goal with what it contributes to the utility of a build.
 *
 * @param score the goal
 * @param contribution weight times utility over the sum of weights, to four decimals
 */
record GoalShare(GoalScore score, BigDecimal contribution) {
    private static final int DECIMALS = 4;
    private static final long ONE = 10_000;

    /**
     * All goals of a build, with contributions that add up to {@link #utility} exactly.
     *
     * <p>Where no goal has a weight there is nothing to list. See {@link Contributions}.
     */
    static List<GoalShare> of(Audit audit) {
        List<GoalScore> goals = audit.goals();
        if (goals.isEmpty()) {
            return List.of();
        }
        long weights = audit.mostPoints() / ONE;
        long[] points =
                goals.stream()
                        .mapToLong(goal -> (long) goal.weight() * goal.tenThousandths())
                        .toArray();
        long together = utility(audit).unscaledValue().longValueExact();
        long[] shares = Contributions.of(points, weights, together);
        List<GoalShare> all = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            all.add(new GoalShare(goals.get(i), BigDecimal.valueOf(shares[i], DECIMALS)));
        }
        return all;
    }

    /** The weighted utility of a build, to four decimals. */
    static BigDecimal utility(Audit audit) {
        if (audit.mostPoints() == 0) {
            return BigDecimal.ONE.setScale(DECIMALS);
        }
        return BigDecimal.valueOf(audit.points())
                .divide(BigDecimal.valueOf(audit.mostPoints()), DECIMALS, RoundingMode.HALF_UP);
    }

    /** The goal's own utility, to four decimals. */
    BigDecimal utility() {
        return BigDecimal.valueOf(score.tenThousandths(), DECIMALS);
    }
}
