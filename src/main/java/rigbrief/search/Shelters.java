package rigbrief.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Cases with coolers: the quietest cooler for a case is not its cheapest.
 *
 * <p>Levels are costly, so a case is looked into only where its bound could pass what is found, and
 * a cooler likewise. Mutable: filled anew whenever what it depends on is decided anew.
 */
final class Shelters extends KeptCouple {
    /** Goes into a case, and out of it. */
    interface Door {
        CoolerContest.Inside into(int pcCase);
    }

    /** So many looks without a level take as long as a level. Measured. */
    private static final int QUICK = 16;

    private final SlotTable cases;
    private final SlotTable coolers;
    private final PairTable pairs;
    private final double[] worth;
    private final int[] inOrder;
    private final CoolerContest contest;
    private final boolean bestAlone;
    private long passedOver;
    private long tried;

    /**
     * Nothing yet.
     *
     * @param coolerOrder the order in which to try coolers
     * @param bestAlone whether figures over all cases are enough: those with each case are bounds
     *     then, so that a cooler is only tried where it could pass the best of all cases
     */
    Shelters(
            SlotTable cases,
            SlotTable coolers,
            PairTable pairs,
            double[] worth,
            int sets,
            CoolerContest contest,
            Comparator<Candidate> coolerOrder,
            boolean bestAlone) {
        super(cases.size(), worth.length, sets);
        this.cases = cases;
        this.coolers = coolers;
        this.pairs = pairs;
        this.worth = worth;
        this.inOrder =
                IntStream.range(0, coolers.size())
                        .boxed()
                        .sorted(Comparator.comparing(coolers::candidate, coolerOrder))
                        .mapToInt(Integer::intValue)
                        .toArray();
        this.contest = contest;
        this.bestAlone = bestAlone;
    }

    /**
     * Looks into the cases that could be best.
     *
     * @param alive supplier sets to look at
     * @param caseLeft cases that are left; those in which no cooler will do are taken out
     * @param coolerLeft coolers that are left
     * @param alone points of each case but for its sound
     * @param most points of each case with the sound of its best cooler
     * @param mostOf the most that each cooler gains by its sound, 0 or less
     * @param leastApart least price of cooler and fans apart, by set
     * @param netApart most net gain of cooler and fans apart, by worth and set
     * @return whether a case was taken out
     */
    boolean fill(
            Bounder.AliveSets alive,
            long[] caseLeft,
            long[] coolerLeft,
            double[] alone,
            double[] most,
            double[] mostOf,
            long[] leastApart,
            double[][] netApart,
            Door door) {
        clear(alive, caseLeft);
        contest.among(alive);
        Integer[] order =
                IntStream.range(0, cases.size())
                        .filter(c -> SlotTable.has(caseLeft, c))
                        .boxed()
                        .toArray(Integer[]::new);
        for (int c : order) {
            apart(alive, c, most[c], leastApart, netApart);
        }
        if (alive.count() > 0) {
            int s = alive.get(0);
            Arrays.sort(
                    order,
                    Comparator.<Integer>comparingDouble(c -> -netWith(c, 0, s))
                            .thenComparingLong(c -> leastWith(c, s)));
        }
        passedOver = 0;
        long before = contest.asked();
        boolean out = false;
        for (int c : order) {
            if (passes(alive, c)) {
                CoolerContest.Inside inside = door.into(c);
                double sound = most[c] - alone[c];
                if (bestAlone) {
                    // One look at the strong and quiet coolers, or none of the others is worth one.
                    sound = Math.min(sound, inside.mostOfAll());
                    if (sound == Double.NEGATIVE_INFINITY) {
                        continue;
                    }
                    apart(alive, c, alone[c] + sound, leastApart, netApart);
                    if (!passes(alive, c)) {
                        continue;
                    }
                }
                if (!look(alive, c, coolerLeft, alone[c], sound, mostOf, inside)) {
                    caseLeft[c >> 6] &= ~(1L << c);
                    out = true;
                    continue;
                }
            }
            count(alive, c);
        }
        tried = contest.asked() - before + (cases.size() + passedOver) / QUICK;
        return out;
    }

    /**
     * How many coolers were tried when it was last filled; those passed over without a level count
     * less.
     */
    long tried() {
        return tried;
    }

    /** A case with the best of all coolers for each figure. */
    private void apart(
            Bounder.AliveSets alive, int c, double most, long[] leastApart, double[][] netApart) {
        long[] minor = cases.candidate(c).minorBySet();
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            leastWith(c, k, minor[s] + leastApart[s]);
            for (int w = 0; w < worth.length; w++) {
                netWith(c, w, k, most - worth[w] * minor[s] + netApart[w][s]);
            }
        }
    }

    /** Whether a case could be better than those looked into for some figure. */
    private boolean passes(Bounder.AliveSets alive, int c) {
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            if (leastWith(c, s) < least[s]) {
                return true;
            }
            for (int w = 0; w < worth.length; w++) {
                if (netWith(c, w, s) > net[w][s]) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A case with those of its coolers that do; false when none does. */
    private boolean look(
            Bounder.AliveSets alive,
            int c,
            long[] coolerLeft,
            double alone,
            double best,
            double[] mostOf,
            CoolerContest.Inside door) {
        long[] row = pairs.row(cases.candidate(c), Slot.COOLER);
        long[] minor = cases.candidate(c).minorBySet();
        boolean any = bestAlone;
        if (bestAlone) {
            contest.begin(this, minor, alone);
        } else {
            contest.begin();
        }
        for (int k : inOrder) {
            boolean fits = SlotTable.has(coolerLeft, k) && (row == null || SlotTable.has(row, k));
            passedOver++;
            if (fits && mostOf[k] != Double.NEGATIVE_INFINITY) {
                double most = Math.min(best, mostOf[k]);
                if (any) {
                    contest.offer(k, most, door);
                } else {
                    any = contest.take(k, door);
                }
            }
        }
        for (int k = 0; any && k < alive.count(); k++) {
            int s = alive.get(k);
            leastWith(c, k, minor[s] + contest.least(k));
            for (int w = 0; w < worth.length; w++) {
                netWith(c, w, k, alone - worth[w] * minor[s] + contest.net(w, k));
            }
        }
        return any;
    }
}
