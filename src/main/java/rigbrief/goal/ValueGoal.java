package rigbrief.goal;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Slot;

/**
 * Utility of all other goals per unit of money.
 *
 * <p>Formula: u = U / (U + m), with U the mean of the other goals by the brief's weights, 0 to 1,
 * and m the total over the ceiling. Half when utility and money keep pace; rises with U, falls with
 * m.
 *
 * <p>Common practice: the curve keeps a ratio within 0..1.
 */
public final class ValueGoal implements Goal {
    private static final GoalInfo INFO =
            new GoalInfo(
                    "value",
                    "It gives much for the money",
                    "utility of the other goals U against the share of the ceiling spent m: U / (U + m)");
    private static final Set<Slot> READS = Collections.unmodifiableSet(EnumSet.allOf(Slot.class));

    @Override
    public GoalInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public int utility(Assessment it) {
        long points = 0;
        long weights = 0;
        for (Goal goal : Goals.OWN) {
            int weight = it.brief().wishes().weight(goal.info().id());
            if (weight > 0) {
                points += (long) weight * goal.utility(it);
                weights += weight;
            }
        }
        double others = weights == 0 ? 1 : points / (double) (weights * FULL);
        double money = (double) it.cost().totalMinor() / it.brief().ceiling().minorUnits();
        return Goal.tenThousandths(share(others, money));
    }

    /**
     * The utility for the others' mean and the share of the ceiling spent; rises with the first,
     * falls with the second.
     */
    public static double share(double others, double money) {
        return others <= 0 ? 0 : others / (others + money);
    }

    @Override
    public String because(Assessment it) {
        double money = (double) it.cost().totalMinor() / it.brief().ceiling().minorUnits();
        return String.format(Locale.ROOT, "%.0f %% of the ceiling spent", money * 100);
    }
}
