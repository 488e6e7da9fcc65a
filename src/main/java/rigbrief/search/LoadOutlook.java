package rigbrief.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import rigbrief.assess.Foresight;
import rigbrief.brief.Brief;
import rigbrief.part.Graphics;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;
import rigbrief.rule.fit.SupplyConnectorsRule;
import rigbrief.rule.fit.SupplyLoadRule;
import rigbrief.rule.fit.SupplyPeakRule;

/** Whether a supply can carry what is decided and the least of what is still open. */
final class LoadOutlook {
    private final Problem problem;
    private final Brief brief;
    private final Foresight foresight;
    private final double[] leastW;
    private final List<Supply> supplies = new ArrayList<>();
    private final int[] likeLoad;
    private final int[] likePlugs;

    LoadOutlook(Problem problem, Foresight foresight) {
        this.problem = problem;
        this.brief = problem.assessor().brief();
        this.foresight = foresight;
        this.leastW = leastW();
        Map<List<Object>, Integer> loads = new HashMap<>();
        Map<Object, Integer> plugs = new HashMap<>();
        List<Candidate> candidates = problem.candidates().of(Slot.SUPPLY);
        this.likeLoad = new int[candidates.size()];
        this.likePlugs = new int[candidates.size()];
        for (Candidate candidate : candidates) {
            Supply supply = (Supply) candidate.partOrNull();
            int i = candidate.index();
            supplies.add(supply);
            List<Object> load =
                    List.of(
                            supply.watts(),
                            supply.guide(),
                            supply.plugs(),
                            problem.assessor().pricing().kept(Slot.SUPPLY, supply));
            likeLoad[i] = loads.computeIfAbsent(load, any -> i);
            likePlugs[i] = plugs.computeIfAbsent(supply.plugs(), any -> i);
        }
    }

    /**
     * The supplies, by index, that can feed a processor and a card, whatever else is in the
     * machine.
     */
    IntPredicate feeding(Graphics card, Outlook.Pair pair) {
        double furtherW = leastFurtherW(NOTHING_DECIDED) - foresight.countedW();
        IntPredicate carrying = carrying(card, pair.sustainedW() + Math.max(0, furtherW));
        IntPredicate plugged =
                once(
                        likePlugs,
                        i -> card == null || SupplyConnectorsRule.feeds(supplies.get(i), card));
        return i -> carrying.test(i) && plugged.test(i);
    }

    /**
     * Whether a rule, asked of a processor, a card and a supply alone, refuses no bought supply but
     * those that {@link #feeding} refuses too; of the client's own it is asked again once more is
     * decided.
     */
    static boolean foresees(Rule rule) {
        return rule instanceof SupplyLoadRule || rule instanceof SupplyPeakRule;
    }

    /** Asks of like supplies only once. */
    private static IntPredicate once(int[] like, IntPredicate test) {
        Boolean[] known = new Boolean[like.length];
        return i -> {
            int first = like[i];
            if (known[first] == null) {
                known[first] = test.test(first);
            }
            return known[first];
        };
    }

    /** Whether the supply that is decided carries what is decided and the least of what is open. */
    boolean carriesOn(Unfinished it) {
        return !it.has(Slot.SUPPLY)
                || carries(
                        (Supply) it.part(Slot.SUPPLY),
                        (Graphics) it.part(Slot.GRAPHICS),
                        it.assessment().sustainedW() + leastFurtherW(it::has));
    }

    /** The supplies, by index, that carry what is decided and the least of what is open. */
    IntPredicate carrying(Unfinished it) {
        return carrying(
                (Graphics) it.part(Slot.GRAPHICS),
                it.assessment().sustainedW() + leastFurtherW(it::has));
    }

    private IntPredicate carrying(Graphics card, double sustainedW) {
        return once(likeLoad, i -> carries(supplies.get(i), card, sustainedW));
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
