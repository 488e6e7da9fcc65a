package rigbrief.goal;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.assess.Cost;
import rigbrief.part.Slot;
import rigbrief.wording.Counted;

/**
 * How simple the order is.
 *
 * <p>Formula: mean of three: 1 - (suppliers - 1) / 3, 1 - longest lead / 21 days, 1 - parts with a
 * single offer / 5; each clipped to 0..1. A machine of which nothing is bought counts full.
 *
 * <p>Common practice: four parcels are a nuisance, three weeks are long, five parts without a
 * second source are a risk.
 */
public final class SimpleOrderGoal implements Goal {
    private static final GoalInfo INFO =
            new GoalInfo(
                    "simple-order",
                    "It is simple to order",
                    "thirds: few suppliers (1 full, 4 none), short lead (21 days none), few parts with a single offer (5 none)");
    private static final Set<Slot> READS = Collections.unmodifiableSet(EnumSet.allOf(Slot.class));

    @Override
    public GoalInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    private static final double SUPPLIERS = 3;
    private static final double LEAD_DAYS = 21;
    private static final double SINGLE_OFFERS = 5;

    @Override
    public int utility(Assessment it) {
        Cost cost = it.cost();
        double sum =
                clip(1 - (cost.suppliers() - 1) / SUPPLIERS)
                        + clip(1 - cost.longestLeadDays() / LEAD_DAYS)
                        + clip(1 - cost.singleOffers() / SINGLE_OFFERS);
        return Goal.tenThousandths(sum / 3);
    }

    @Override
    public String because(Assessment it) {
        Cost cost = it.cost();
        return "%s, all there in %s, %s with a single offer"
                .formatted(
                        Counted.of(cost.suppliers(), "supplier"),
                        Counted.of(cost.longestLeadDays(), "day"),
                        Counted.of(cost.singleOffers(), "part"));
    }

    private static double clip(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
