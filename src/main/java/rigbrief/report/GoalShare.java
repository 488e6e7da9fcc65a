package rigbrief.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rigbrief.audit.Audit;
import rigbrief.audit.GoalScore;

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
     * <p>Each is rounded down; what is then missing goes to the largest remainders, so that none is
     * off by more than one in the last decimal. Where no goal has a weight there is nothing to
     * list.
     */
    static List<GoalShare> of(Audit audit) {
        List<GoalScore> goals = audit.goals();
        if (goals.isEmpty()) {
            return List.of();
        }
        long weights = audit.mostPoints() / ONE;
        long[] shares = new long[goals.size()];
        long[] remainders = new long[goals.size()];
        long missing = utility(audit).unscaledValue().longValueExact();
        List<Integer> byRemainder = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            long points = (long) goals.get(i).weight() * goals.get(i).tenThousandths();
            shares[i] = points / weights;
            remainders[i] = points % weights;
            missing -= shares[i];
            byRemainder.add(i);
        }
        byRemainder.sort(Comparator.comparingLong(i -> -remainders[i]));
        for (int i = 0; i < missing; i++) {
            shares[byRemainder.get(i)]++;
        }
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
