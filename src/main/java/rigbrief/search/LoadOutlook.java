package rigbrief.search;

import java.util.function.Predicate;
import rigbrief.assess.Foresight;
import rigbrief.brief.Brief;
import rigbrief.part.Graphics;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;
import rigbrief.rule.fit.SupplyConnectorsRule;
import rigbrief.rule.fit.SupplyLoadRule;
import rigbrief.rule.fit.SupplyPeakRule;

/** Whether a supply can carry what is decided and the least of what is still open. */
final class LoadOutlook {
    private final Problem problem;
    private final Brief brief;
    private final Foresight foresight;
    private final double[] leastW;

    LoadOutlook(Problem problem, Foresight foresight) {
        this.problem = problem;
        this.brief = problem.assessor().brief();
        this.foresight = foresight;
        this.leastW = leastW();
    }

    /** Whether a supply can feed a processor and a card, whatever else is in the machine. */
    boolean canFeed(Supply supply, Graphics card, Outlook.Pair pair) {
        double sustainedW =
                pair.sustainedW() + leastFurtherW(NOTHING_DECIDED) - foresight.countedW();
        return carries(supply, card, Math.max(pair.sustainedW(), sustainedW))
                && (card == null || SupplyConnectorsRule.feeds(supply, card));
    }

    /** Whether the supply that is decided carries what is decided and the least of what is open. */
    boolean carriesOn(Unfinished it) {
        return !it.has(Slot.SUPPLY)
                || carries(
                        (Supply) it.part(Slot.SUPPLY),
                        (Graphics) it.part(Slot.GRAPHICS),
                        it.assessment().sustainedW() + leastFurtherW(it::has));
    }

    /** The supplies that carry what is decided and the least of what is open. */
    Predicate<Supply> carrying(Unfinished it) {
        double sustainedW = it.assessment().sustainedW() + leastFurtherW(it::has);
        Graphics card = (Graphics) it.part(Slot.GRAPHICS);
        return supply -> carries(supply, card, sustainedW);
    }

    private boolean carries(Supply supply, Graphics card, double sustainedW) {
        boolean kept = problem.assessor().pricing().kept(Slot.SUPPLY, supply);
        double extraW = card == null ? 0 : card.boardPowerW() * (card.peakFactor() - 1);
        return (kept || supply.watts() >= SupplyLoadRule.plannedW(sustainedW, brief))
                && SupplyPeakRule.allows(supply, sustainedW + extraW);
    }

    private static final Predicate<Slot> NOTHING_DECIDED = slot -> false;

    private double leastFurtherW(Predicate<Slot> decided) {
        double sum = 0;
        for (Slot slot : FURTHER) {
            sum += decided.test(slot) ? 0 : leastW[slot.ordinal()];
        }
        return sum;
    }

    private static final Slot[] FURTHER = {
        Slot.MEMORY, Slot.DRIVE, Slot.SECOND_DRIVE, Slot.COOLER, Slot.CASE, Slot.FANS, Slot.WIRELESS
    };

    /** Whether the parts of a slot add to the load of processor, card and board. */
    static boolean drawsOfItsOwn(Slot slot) {
        for (Slot each : FURTHER) {
            if (each == slot) {
                return true;
            }
        }
        return false;
    }

    private double[] leastW() {
        double[] least = new double[Slot.values().length];
        for (Slot slot : FURTHER) {
            double watts = Double.MAX_VALUE;
            for (Candidate candidate : problem.candidates().of(slot)) {
                double own =
                        candidate.none()
                                ? 0
                                : foresight.loadW(
                                        Outlook.NOTHING.with(
                                                slot, candidate.partOrNull(), candidate.pieces()));
                watts = Math.min(watts, own);
            }
            least[slot.ordinal()] = watts;
        }
        return least;
    }
}
