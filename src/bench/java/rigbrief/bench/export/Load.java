package rigbrief.bench.export;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.brief.Kept;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;
import rigbrief.rule.fit.SupplyLoadRule;

/**
 * The supply's rule as one sum: watts of all parts, at most what the supply may carry. Rounded so
 * that it never refuses what the rule allows; the rule itself is asked in the end.
 *
 * @param milliwatts by slot, what each candidate adds; negative for a supply, which carries
 * @param fixed load of no part at all, in mW
 */
public record Load(List<long[]> milliwatts, long fixed) {
    private static final double MOST_W = 10_000;

    /** The sum for an instance; empty where the client's own supply goes by other terms. */
    static Optional<Load> of(Instance instance) {
        for (Kept kept : instance.problem().assessor().brief().keep()) {
            if (kept.slot() == Slot.SUPPLY) {
                return Optional.empty();
            }
        }
        int[] choice = new int[Slot.values().length];
        Set<Slot> alone = EnumSet.of(Slot.PROCESSOR);
        double first = instance.judge().assess(choice, alone).sustainedW();
        List<long[]> all = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            List<Candidate> domain = instance.domain(slot);
            long[] of = new long[domain.size()];
            for (int c = 0; c < of.length; c++) {
                if (slot == Slot.SUPPLY) {
                    of[c] =
                            -milliwatts(carriesW(instance, (Supply) domain.get(c).partOrNull()))
                                    - 1;
                } else {
                    choice[slot.ordinal()] = c;
                    double with =
                            instance.judge()
                                    .assess(choice, EnumSet.of(Slot.PROCESSOR, slot))
                                    .sustainedW();
                    of[c] = milliwatts(with - first);
                }
            }
            choice[slot.ordinal()] = 0;
            all.add(of);
        }
        return Optional.of(new Load(all, milliwatts(first)));
    }

    private static long milliwatts(double watts) {
        return (long) Math.floor(watts * 1000);
    }

    /** The greatest sustained load in W for which this supply is planned. */
    private static double carriesW(Instance instance, Supply supply) {
        double low = 0;
        double high = MOST_W;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean carries =
                    SupplyLoadRule.plannedW(middle, instance.problem().assessor().brief())
                            <= supply.watts();
            low = carries ? middle : low;
            high = carries ? high : middle;
        }
        return high;
    }
}
