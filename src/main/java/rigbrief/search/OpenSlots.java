package rigbrief.search;

import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import rigbrief.assess.Pricing;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Dominance;

/**
 * What is left of every open slot at each level of the certifier, with the least price and the most
 * net gain that each leaves, by supplier set.
 *
 * <p>Level n holds what is left once the first n slots are decided. Figures are kept for those
 * supplier sets only that the level before left alive. Mutable; never leaves this package.
 */
final class OpenSlots {
    private static final int LEVELS = Slot.values().length;

    /** Processor and card, which are decided in one go. */
    static final int PAIR = 2;

    private final Problem problem;
    private final Objective objective;
    private final List<Slot> order;
    private final PairTable pairs;
    private final Outlook outlook;
    private final double[] worth;
    private final int sets;
    private final SlotTable[] tables = new SlotTable[LEVELS];
    private final long[][][] domains = new long[LEVELS + 1][LEVELS][];
    private final long[][][] least;
    private final double[][][][] net;
    private final long[][] spent;
    private final double[] gained = new double[LEVELS + 1];
    private final Bounder.AliveSets[] alive = new Bounder.AliveSets[LEVELS + 1];
    private final double[][] losses = new double[LEVELS][];
    private final int firstDrive;
    private final int secondDrive;
    private final long[] leastDrives;
    private final double[][] netDrives;
    private final long[] leastSum;
    private final double[][] netSum;

    OpenSlots(Problem problem, Objective objective, List<Slot> order, double[] worth, int sets) {
        this.problem = problem;
        this.objective = objective;
        this.order = order;
        this.pairs = problem.tables().pairs(problem);
        this.outlook = problem.tables().outlook(problem);
        this.worth = worth;
        this.sets = sets;
        this.firstDrive = levelOf(Slot.DRIVE);
        this.secondDrive = levelOf(Slot.SECOND_DRIVE);
        this.least = new long[LEVELS + 1][LEVELS][sets];
        this.net = new double[LEVELS + 1][LEVELS][worth.length][sets];
        this.spent = new long[LEVELS + 1][sets];
        this.leastDrives = new long[sets];
        this.netDrives = new double[worth.length][sets];
        this.leastSum = new long[sets];
        this.netSum = new double[worth.length][sets];
        for (int level = 0; level <= LEVELS; level++) {
            alive[level] = new Bounder.AliveSets(sets).fill();
        }
        Map<Slot, List<Candidate>> left =
                Dominance.undominated(
                        problem.assessor(), problem.candidates(), objective.perPoint() == 0);
        for (int level = 0; level < LEVELS; level++) {
            tables[level] = table(order.get(level));
            losses[level] = new double[tables[level].size()];
            domains[0][level] = tables[level].domain(left.get(order.get(level)));
        }
        for (int level = 0; level < LEVELS; level++) {
            refresh(0, level);
        }
        boundDrives();
    }

    private SlotTable table(Slot slot) {
        List<Candidate> candidates = problem.candidates().of(slot);
        double[] gain = new double[candidates.size()];
        for (Candidate candidate : candidates) {
            gain[candidate.index()] = outlook.gain(candidate);
        }
        return new SlotTable(slot, candidates, gain, sets, worth);
    }

    private int levelOf(Slot slot) {
        return order.indexOf(slot);
    }

    /** A level's slot as a table. */
    SlotTable table(int level) {
        return tables[level];
    }

    /** Whether a candidate is still among those of a slot that is open at a level. */
    boolean has(int level, int open, int index) {
        return SlotTable.has(domains[level][open], index);
    }

    /** Points of the slots decided at a level. */
    double gained(int level) {
        return gained[level];
    }

    /** Price of the slots decided at a level, by supplier set. */
    long[] spent(int level) {
        return spent[level];
    }

    /** Least price of the open slots together, by supplier set, as last summed up. */
    long[] leastSum() {
        return leastSum;
    }

    /** Most net gain of the open slots together, by worth and supplier set, as last summed up. */
    double[][] netSum() {
        return netSum;
    }

    /**
     * The least that both drives cost together, and their most net gain: a small first drive is
     * cheap and so is no second one, but not both at once.
     */
    void boundDrives() {
        for (int s = 0; s < sets; s++) {
            leastDrives[s] = Long.MAX_VALUE;
            for (double[] bySet : netDrives) {
                bySet[s] = Double.NEGATIVE_INFINITY;
            }
        }
        for (int i = 0; i < tables[firstDrive].size(); i++) {
            long[] row = pairs.row(tables[firstDrive].candidate(i), Slot.SECOND_DRIVE);
            for (int j = 0; j < tables[secondDrive].size(); j++) {
                boolean together =
                        SlotTable.has(domains[0][firstDrive], i)
                                && SlotTable.has(domains[0][secondDrive], j)
                                && (row == null || SlotTable.has(row, j));
                if (together) {
                    boundDrives(i, j);
                }
            }
        }
    }

    private void boundDrives(int i, int j) {
        long[] one = tables[firstDrive].candidate(i).minorBySet();
        long[] two = tables[secondDrive].candidate(j).minorBySet();
        double gain = tables[firstDrive].gain(i) + tables[secondDrive].gain(j);
        for (int s = 0; s < sets; s++) {
            long price = one[s] + two[s];
            leastDrives[s] = Math.min(leastDrives[s], price);
            for (int w = 0; w < worth.length; w++) {
                netDrives[w][s] = Math.max(netDrives[w][s], gain - worth[w] * price);
            }
        }
    }

    /** Goes from a level to the next by a candidate; false when that leaves a slot without any. */
    boolean push(int level, Candidate candidate) {
        gained[level + 1] = gained[level] + tables[level].gain(candidate.index());
        for (int s = 0; s < spent[level].length; s++) {
            spent[level + 1][s] = spent[level][s] + candidate.minorBySet()[s];
        }
        for (int open = level + 1; open < LEVELS; open++) {
            long[] row = pairs.row(candidate, order.get(open));
            long[] from = domains[level][open];
            long[] to = domains[level + 1][open];
            if (to == null) {
                to = new long[from.length];
                domains[level + 1][open] = to;
            }
            boolean changed = false;
            for (int i = 0; i < from.length; i++) {
                to[i] = row == null ? from[i] : from[i] & row[i];
                changed |= to[i] != from[i];
            }
            if (changed && SlotTable.empty(to)) {
                return false;
            }
            if (changed) {
                refresh(level + 1, open);
            } else {
                copy(level, open);
            }
        }
        return true;
    }

    /**
     * Keeps of an open slot the candidates that pass; false when none is left.
     *
     * @param passes asked by index, of candidates that are still there
     */
    boolean keep(int level, int open, IntPredicate passes) {
        long[] domain = domains[level][open];
        boolean changed = false;
        for (int i = 0; i < tables[open].size(); i++) {
            if (SlotTable.has(domain, i) && !passes.test(i)) {
                domain[i >> 6] &= ~(1L << i);
                changed = true;
            }
        }
        if (changed && !SlotTable.empty(domain)) {
            refresh(level, open);
        }
        return !changed || !SlotTable.empty(domain);
    }

    private void refresh(int level, int open) {
        long[] domain = domains[level][open];
        boolean reckoned = level > levelOf(Slot.BOARD) + 1 && objective.perPoint() > 0;
        if (losing(open) && reckoned) {
            refreshWithLosses(level, open);
            return;
        }
        Bounder.AliveSets left = alive[parent(level)];
        for (int i = 0; i < left.count(); i++) {
            int s = left.get(i);
            least[level][open][s] = tables[open].leastMinor(domain, s);
            for (int w = 0; w < worth.length; w++) {
                net[level][open][w][s] = tables[open].mostNet(domain, s, w);
            }
        }
    }

    /**
     * Memory and drives lose points that depend on processor, card and board: known once these are
     * decided.
     */
    private boolean losing(int level) {
        return order.get(level) == Slot.MEMORY || order.get(level) == Slot.DRIVE;
    }

    private void refreshWithLosses(int level, int open) {
        long[] domain = domains[level][open];
        Bounder.AliveSets left = alive[parent(level)];
        for (int k = 0; k < left.count(); k++) {
            int s = left.get(k);
            least[level][open][s] = tables[open].leastMinor(domain, s);
            for (int w = 0; w < worth.length; w++) {
                net[level][open][w][s] = Double.NEGATIVE_INFINITY;
            }
        }
        for (int i = 0; i < tables[open].size(); i++) {
            if (SlotTable.has(domain, i)) {
                long[] minor = tables[open].candidate(i).minorBySet();
                double gain = tables[open].gain(i) + losses[open][i];
                for (int w = 0; w < worth.length; w++) {
                    double[] bySet = net[level][open][w];
                    for (int k = 0; k < left.count(); k++) {
                        int s = left.get(k);
                        bySet[s] = Math.max(bySet[s], gain - worth[w] * minor[s]);
                    }
                }
            }
        }
    }

    /**
     * Once processor, card and board are decided: takes out memory with which a must is missed, and
     * reckons what memory and drives lose; false when no memory is left.
     */
    boolean reckonMemoryAndDrives(int level, Unfinished unfinished) {
        for (int open = level + 1; open < LEVELS; open++) {
            if (losing(open)) {
                long[] domain = domains[level + 1][open];
                for (int i = 0; i < tables[open].size(); i++) {
                    if (SlotTable.has(domain, i)) {
                        reckon(domain, open, i, unfinished);
                    }
                }
                if (SlotTable.empty(domain)) {
                    return false;
                }
                refreshWithLosses(level + 1, open);
            }
        }
        return true;
    }

    private void reckon(long[] domain, int open, int i, Unfinished unfinished) {
        Candidate candidate = tables[open].candidate(i);
        if (order.get(open) == Slot.MEMORY && outlook.missesMust(unfinished, candidate)) {
            domain[i >> 6] &= ~(1L << i);
        } else if (objective.perPoint() > 0) {
            losses[open][i] = outlook.loss(unfinished, candidate);
        }
    }

    private void copy(int level, int open) {
        System.arraycopy(least[level][open], 0, least[level + 1][open], 0, sets);
        for (int w = 0; w < worth.length; w++) {
            System.arraycopy(net[level][open][w], 0, net[level + 1][open][w], 0, sets);
        }
    }

    /** Sums up what is open at a level, for the supplier sets that the level before left alive. */
    Bounder.AliveSets sumUp(int level) {
        Bounder.AliveSets left = alive[level].copyOf(alive[parent(level)]);
        for (int i = 0; i < left.count(); i++) {
            sumUp(level, left.get(i));
        }
        return left;
    }

    /** Processor and card are decided in one go, so their pair's parent is the root. */
    private static int parent(int level) {
        return level <= PAIR ? 0 : level - 1;
    }

    private void sumUp(int level, int s) {
        long sum = 0;
        for (int open = level; open < LEVELS; open++) {
            sum += Math.min(least[level][open][s], Pricing.notToBeHad());
        }
        if (level <= firstDrive) {
            long apart = least[level][firstDrive][s] + least[level][secondDrive][s];
            sum += Math.max(0, Math.min(leastDrives[s], Pricing.notToBeHad()) - apart);
        }
        leastSum[s] = sum;
        for (int w = 0; w < worth.length; w++) {
            double most = 0;
            for (int open = level; open < LEVELS; open++) {
                most += net[level][open][w][s];
            }
            if (level <= firstDrive) {
                double apart = net[level][firstDrive][w][s] + net[level][secondDrive][w][s];
                most += Math.min(0, netDrives[w][s] - apart);
            }
            netSum[w][s] = most;
        }
    }
}
