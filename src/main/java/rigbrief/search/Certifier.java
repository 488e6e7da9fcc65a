package rigbrief.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.BooleanSupplier;
import rigbrief.assess.Pricing;
import rigbrief.part.Cooler;
import rigbrief.part.Graphics;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Dominance;
import rigbrief.rule.Rule;

/**
 * Finds the best build and proves it: branch and bound over the slots.
 *
 * <p>Pairs of processor and card come first, best bound first, so that the next pair's bound holds
 * for everything not yet looked at, and an interrupted run still knows how far it can be off.
 * Within a pair the other slots are decided one by one; rules about two slots shrink the open
 * slots' domains at once, rules about more are asked as soon as all their slots are decided, by the
 * same rule objects as everywhere.
 */
public final class Certifier {
    /**
     * The order in which slots are decided when utility counts: a supply decides much of noise,
     * energy and room to grow, so it comes early.
     */
    private static final List<Slot> FOR_UTILITY =
            List.of(
                    Slot.PROCESSOR,
                    Slot.GRAPHICS,
                    Slot.SUPPLY,
                    Slot.BOARD,
                    Slot.CASE,
                    Slot.WIRELESS,
                    Slot.COOLER,
                    Slot.FANS,
                    Slot.MEMORY,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.BRACE,
                    Slot.SYSTEM,
                    Slot.DISPLAY,
                    Slot.CABLES);

    /** The order when only money counts: the cheapest supply that feeds the rest is found last. */
    private static final List<Slot> FOR_MONEY =
            List.of(
                    Slot.PROCESSOR,
                    Slot.GRAPHICS,
                    Slot.BOARD,
                    Slot.CASE,
                    Slot.WIRELESS,
                    Slot.COOLER,
                    Slot.FANS,
                    Slot.MEMORY,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.SUPPLY,
                    Slot.BRACE,
                    Slot.SYSTEM,
                    Slot.DISPLAY,
                    Slot.CABLES);

    private static final int PAIR = 2;
    private static final int LEVELS = Slot.values().length;
    private static final double CLOSE = 1e-6;

    private final Problem problem;
    private final Objective objective;
    private final long stepLimit;
    private final BooleanSupplier stop;
    private final PairTable pairs;
    private final Outlook outlook;
    private final Bounder bounder;
    private final double[] worth;
    private final SlotTable[] tables = new SlotTable[LEVELS];
    private final List<List<Rule>> rulesAt = new ArrayList<>();
    private final List<List<Rule>> rechecksAt = new ArrayList<>();
    private final List<List<Narrowing>> narrowing = new ArrayList<>();
    private final long[][][] domains = new long[LEVELS + 1][LEVELS][];
    private final long[][][] least;
    private final double[][][][] net;
    private final long[][] spent;
    private final Bounder.AliveSets[] alive = new Bounder.AliveSets[LEVELS + 1];
    private final double[] gained = new double[LEVELS + 1];
    private final List<Slot> order;
    private final int firstDrive;
    private final int secondDrive;
    private final double[][] losses = new double[LEVELS][];
    private final long[] leastDrives;
    private final double[][] netDrives;
    private final long[] leastSum;
    private final double[][] netSum;
    private final Unfinished unfinished;
    private Candidate atRoot;
    private boolean rootStands;
    private Standing best;
    private long steps;
    private boolean interrupted;
    private boolean firstIsEnough;

    /**
     * A certifier.
     *
     * @param stepLimit most nodes to visit
     * @param stop asked now and then; true ends the run early, with a true bound
     * @param worths rates of exchange between points and minor units at which to bound utility,
     *     beside the objective's own
     */
    public Certifier(
            Problem problem,
            Objective objective,
            long stepLimit,
            BooleanSupplier stop,
            List<Double> worths) {
        this.problem = problem;
        this.objective = objective;
        this.order = objective.perPoint() == 0 ? FOR_MONEY : FOR_UTILITY;
        this.firstDrive = levelOf(Slot.DRIVE);
        this.secondDrive = levelOf(Slot.SECOND_DRIVE);
        this.stepLimit = stepLimit;
        this.stop = stop;
        this.pairs = problem.tables().pairs(problem);
        this.outlook = problem.tables().outlook(problem);
        this.worth = worths(objective, worths, problem);
        this.bounder = new Bounder(problem, objective, worth);
        this.unfinished = new Unfinished(problem.assessor());
        int sets = bounder.sets();
        this.least = new long[LEVELS + 1][LEVELS][sets];
        this.net = new double[LEVELS + 1][LEVELS][worth.length][sets];
        this.spent = new long[LEVELS + 1][sets];
        for (int level = 0; level <= LEVELS; level++) {
            alive[level] = new Bounder.AliveSets(sets).fill();
        }
        this.leastSum = new long[sets];
        this.leastDrives = new long[sets];
        this.netDrives = new double[worth.length][sets];
        this.netSum = new double[worth.length][sets];
        Map<Slot, List<Candidate>> left =
                Dominance.undominated(
                        problem.assessor(), problem.candidates(), objective.perPoint() == 0);
        for (int level = 0; level < LEVELS; level++) {
            tables[level] = table(order.get(level), sets);
            losses[level] = new double[tables[level].size()];
            domains[0][level] = tables[level].domain(left.get(order.get(level)));
            rulesAt.add(new ArrayList<>());
            narrowing.add(new ArrayList<>());
            rechecksAt.add(new ArrayList<>());
        }
        for (Rule rule : problem.rules()) {
            int last = lastLevel(rule);
            rulesAt.get(last).add(rule);
            addNarrowing(rule, rule.reads());
            if (!rule.onlyWorsenedBy().isEmpty()) {
                addRechecks(rule);
                EnumSet<Slot> core = EnumSet.copyOf(rule.reads());
                core.removeAll(rule.onlyWorsenedBy());
                addNarrowing(rule, core);
            }
        }
    }

    private SlotTable table(Slot slot, int sets) {
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

    /**
     * The least that both drives cost together, and their most net gain: a small first drive is
     * cheap and so is no second one, but not both at once.
     */
    private void boundDrives() {
        for (int s = 0; s < bounder.sets(); s++) {
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
        for (int s = 0; s < bounder.sets(); s++) {
            long price = one[s] + two[s];
            leastDrives[s] = Math.min(leastDrives[s], price);
            for (int w = 0; w < worth.length; w++) {
                netDrives[w][s] = Math.max(netDrives[w][s], gain - worth[w] * price);
            }
        }
    }

    /** The objective's own rate first; 0 always among them. */
    private static double[] worths(Objective objective, List<Double> others, Problem problem) {
        List<Double> all = new ArrayList<>();
        if (objective.perPoint() > 0 && objective.perMinor() > 0) {
            double tax = 1 + problem.assessor().brief().fees().taxBasisPoints() / 10_000.0;
            all.add(tax * objective.perMinor() / objective.perPoint());
        }
        all.add(0.0);
        if (objective.perPoint() > 0) {
            all.addAll(others);
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * A rule that narrows one open slot once all the others it reads are decided.
     *
     * @param rule the rule
     * @param open level of the open slot
     */
    private record Narrowing(Rule rule, int open) {}

    /** A rule is asked again whenever a slot is decided that can only make it worse. */
    private void addRechecks(Rule rule) {
        boolean core = false;
        int open = rule.reads().size() - rule.onlyWorsenedBy().size();
        for (int level = 0; level < LEVELS; level++) {
            Slot slot = order.get(level);
            if (core && rule.onlyWorsenedBy().contains(slot)) {
                rechecksAt.get(level).add(rule);
            }
            if (rule.reads().contains(slot) && !rule.onlyWorsenedBy().contains(slot)) {
                open--;
                core = open == 0;
            }
        }
    }

    private void addNarrowing(Rule rule, Set<Slot> slots) {
        int last = -1;
        int before = -1;
        for (int level = 0; level < LEVELS; level++) {
            if (slots.contains(order.get(level))) {
                before = last;
                last = level;
            }
        }
        boolean paired = slots.size() == 2 && rule.reads().size() == 2;
        if (before >= 0 && !paired) {
            narrowing.get(before).add(new Narrowing(rule, last));
        }
    }

    private int lastLevel(Rule rule) {
        int last = 0;
        for (int level = 0; level < LEVELS; level++) {
            if (rule.reads().contains(order.get(level))) {
                last = level;
            }
        }
        return rule.reads().isEmpty() ? LEVELS - 1 : last;
    }

    /**
     * The same certifier, but it stops at the first sound build: for asking whether there is any.
     */
    public Certifier untilFirst() {
        firstIsEnough = true;
        return this;
    }

    /**
     * Runs from a known build, or from nothing.
     *
     * @param incumbent a sound build, or nothing
     */
    public Certificate run(Optional<Standing> incumbent) {
        best = incumbent.filter(Standing::sound).orElse(null);
        for (int level = 0; level < LEVELS; level++) {
            refresh(0, level);
        }
        boundDrives();
        PriorityQueue<Top> queue = tops();
        double open = Double.NEGATIVE_INFINITY;
        while (!queue.isEmpty() && !interrupted) {
            Top top = queue.poll();
            if (beaten(top.bound)) {
                break;
            }
            if (!top.refined) {
                refine(top);
                if (!beaten(top.bound)) {
                    queue.add(top);
                }
            } else {
                explore(top);
                open = interrupted ? top.bound.first() : open;
            }
        }
        for (Top top : queue) {
            open = interrupted ? Math.max(open, top.bound.first()) : open;
        }
        double reached =
                best == null
                        ? Double.NEGATIVE_INFINITY
                        : objective.first(best.points(), best.totalMinor());
        return new Certificate(
                Optional.ofNullable(best),
                interrupted ? Math.max(open, reached) : reached,
                !interrupted || (best != null && Math.floor(open + CLOSE) <= reached),
                steps);
    }

    /** A processor and a card, with the best that any build around them can reach. */
    private static final class Top {
        private final Candidate processor;
        private final Candidate card;
        private Bounder.Bound bound;
        private boolean refined;

        Top(Candidate processor, Candidate card, Bounder.Bound bound) {
            this.processor = processor;
            this.card = card;
            this.bound = bound;
        }
    }

    private PriorityQueue<Top> tops() {
        PriorityQueue<Top> queue =
                new PriorityQueue<>(
                        Comparator.<Top>comparingDouble(top -> -top.bound.first())
                                .thenComparingDouble(top -> -top.bound.second())
                                .thenComparingInt(top -> top.processor.index())
                                .thenComparingInt(top -> top.card.index()));
        for (int p = 0; p < tables[0].size(); p++) {
            for (int g = 0; g < tables[1].size(); g++) {
                Candidate processor = tables[0].candidate(p);
                Candidate card = tables[1].candidate(g);
                long[] row = pairs.row(processor, Slot.GRAPHICS);
                if (row == null || SlotTable.has(row, g)) {
                    Bounder.Bound bound = enter(processor, card, false);
                    if (!beaten(bound)) {
                        queue.add(new Top(processor, card, bound));
                    }
                    leave();
                }
            }
        }
        return queue;
    }

    private void refine(Top top) {
        top.bound = enter(top.processor, top.card, true);
        top.refined = true;
        leave();
    }

    private void explore(Top top) {
        Bounder.Bound bound = enter(top.processor, top.card, true);
        if (!beaten(bound)) {
            decide(PAIR, bound.set());
        }
        leave();
    }

    /** Decides processor and card; with foresight when refined, by their prices alone otherwise. */
    private Bounder.Bound enter(Candidate processor, Candidate card, boolean refined) {
        unfinished.pair(null);
        // What a processor leaves of the other slots holds for all its pairs.
        boolean entered = processor == atRoot;
        atRoot = processor;
        unfinished.decide(processor);
        rootStands = entered ? rootStands : push(0, processor);
        if (!rootStands || !push(1, card)) {
            return Bounder.IMPOSSIBLE;
        }
        if (refined) {
            Processor p = (Processor) processor.partOrNull();
            Outlook.Pair pair = outlook.pair(p, (Graphics) card.partOrNull());
            if (pair.hopeless()) {
                return Bounder.IMPOSSIBLE;
            }
            unfinished.pair(pair);
            if (!narrow(0) || !narrow(1) || !narrow(p, (Graphics) card.partOrNull(), pair)) {
                return Bounder.IMPOSSIBLE;
            }
        }
        return bound(PAIR);
    }

    private void leave() {
        unfinished.undo(Slot.PROCESSOR);
        unfinished.undo(Slot.GRAPHICS);
        unfinished.pair(null);
    }

    /** Takes out coolers that can't hold the processor and supplies that can't feed the two. */
    private boolean narrow(Processor processor, Graphics card, Outlook.Pair pair) {
        Map<Slot, Boolean> touched = new EnumMap<>(Slot.class);
        for (int level = PAIR; level < LEVELS; level++) {
            Slot slot = order.get(level);
            if (slot != Slot.COOLER && slot != Slot.SUPPLY) {
                continue;
            }
            long[] domain = domains[PAIR][level];
            for (int i = 0; i < tables[level].size(); i++) {
                Candidate candidate = tables[level].candidate(i);
                boolean stays =
                        slot == Slot.COOLER
                                ? outlook.coolEnough(processor, (Cooler) candidate.partOrNull())
                                : outlook.canFeed((Supply) candidate.partOrNull(), card, pair);
                if (SlotTable.has(domain, i) && !stays) {
                    domain[i >> 6] &= ~(1L << i);
                    touched.put(slot, true);
                }
            }
            if (SlotTable.empty(domain)) {
                return false;
            }
            if (touched.containsKey(slot)) {
                refresh(PAIR, level);
            }
        }
        return true;
    }

    /** Decides the slot of a level; false when that leaves another slot without candidates. */
    private boolean push(int level, Candidate candidate) {
        unfinished.decide(candidate);
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

    private void refresh(int level, int open) {
        long[] domain = domains[level][open];
        boolean reckoned = level > levelOf(Slot.BOARD) + 1 && objective.perPoint() > 0;
        if (losing(open) && reckoned) {
            refreshWithLosses(level, open);
            return;
        }
        Bounder.AliveSets sets = alive[parent(level)];
        for (int i = 0; i < sets.count(); i++) {
            int s = sets.get(i);
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
        Bounder.AliveSets sets = alive[parent(level)];
        for (int k = 0; k < sets.count(); k++) {
            int s = sets.get(k);
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
                    for (int k = 0; k < sets.count(); k++) {
                        int s = sets.get(k);
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
    private boolean reckonMemoryAndDrives(int level) {
        for (int open = level + 1; open < LEVELS; open++) {
            if (losing(open)) {
                long[] domain = domains[level + 1][open];
                for (int i = 0; i < tables[open].size(); i++) {
                    if (SlotTable.has(domain, i)) {
                        reckon(domain, open, i);
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

    private void reckon(long[] domain, int open, int i) {
        Candidate candidate = tables[open].candidate(i);
        if (order.get(open) == Slot.MEMORY && outlook.missesMust(unfinished, candidate)) {
            domain[i >> 6] &= ~(1L << i);
        } else if (objective.perPoint() > 0) {
            losses[open][i] = outlook.loss(unfinished, candidate);
        }
    }

    private void copy(int level, int open) {
        System.arraycopy(least[level][open], 0, least[level + 1][open], 0, bounder.sets());
        for (int w = 0; w < worth.length; w++) {
            System.arraycopy(net[level][open][w], 0, net[level + 1][open][w], 0, bounder.sets());
        }
    }

    /**
     * Bounds what follows from the slots decided so far, over the supplier sets that the parent
     * left alive.
     */
    private Bounder.Bound bound(int level) {
        double coupled = outlook.coupledPoints(unfinished);
        if (coupled == Double.NEGATIVE_INFINITY) {
            return Bounder.IMPOSSIBLE;
        }
        Bounder.AliveSets sets = alive[level].copyOf(alive[parent(level)]);
        for (int i = 0; i < sets.count(); i++) {
            sumUp(level, sets.get(i));
        }
        double threshold =
                best == null
                        ? Double.NEGATIVE_INFINITY
                        : objective.first(best.points(), best.totalMinor());
        return bounder.bound(
                unfinished,
                coupled,
                gained[level],
                spent[level],
                leastSum,
                netSum,
                sets,
                threshold);
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

    private void decide(int level, int set) {
        if (level == LEVELS) {
            finish();
            return;
        }
        long[] domain = domains[level][level];
        int[] tried = tables[level].order(set, objective.perPoint() == 0);
        for (int i : tried) {
            if (!SlotTable.has(domain, i)) {
                continue;
            }
            if (++steps >= stepLimit || ((steps & 1023) == 0 && stop.getAsBoolean())) {
                interrupted = true;
            }
            if (interrupted) {
                break;
            }
            Candidate candidate = tables[level].candidate(i);
            if (push(level, candidate) && kept(level)) {
                descend(level);
            }
        }
        unfinished.undo(order.get(level));
    }

    /** Goes on from a decided slot while something better can still come of it. */
    private void descend(int level) {
        // The bound is cheaper than asking every rule about every open candidate, so it comes
        // first.
        if (beaten(bound(level + 1)) || !narrow(level)) {
            return;
        }
        if (order.get(level) == Slot.BOARD && !reckonMemoryAndDrives(level)) {
            return;
        }
        Bounder.Bound bound = bound(level + 1);
        if (!beaten(bound)) {
            decide(level + 1, bound.set());
        }
    }

    /** Whether every rule that can be asked since this level's slot was decided is kept. */
    private boolean kept(int level) {
        for (Rule rule : rulesAt.get(level)) {
            // Rules about several slots have already narrowed the last of them.
            if (rule.reads().size() < 2 && rule.forbids(rule.check(unfinished.assessment()))) {
                return false;
            }
        }
        for (Rule rule : rechecksAt.get(level)) {
            if (rule.forbids(rule.check(unfinished.assessment()))) {
                return false;
            }
        }
        return true;
    }

    /**
     * Takes out of the one open slot of each rule, of which all others are decided since this
     * level, what the rule refuses; false when that leaves nothing.
     */
    private boolean narrow(int level) {
        for (Narrowing narrowing : narrowing.get(level)) {
            Rule rule = narrowing.rule();
            int open = narrowing.open();
            long[] domain = domains[level + 1][open];
            boolean changed = false;
            for (int i = 0; i < tables[open].size(); i++) {
                if (SlotTable.has(domain, i) && refuses(rule, tables[open].candidate(i))) {
                    domain[i >> 6] &= ~(1L << i);
                    changed = true;
                }
            }
            if (changed && SlotTable.empty(domain)) {
                return false;
            }
            if (changed) {
                refresh(level + 1, open);
            }
        }
        return true;
    }

    private boolean refuses(Rule rule, Candidate candidate) {
        unfinished.decide(candidate);
        boolean refused = rule.forbids(rule.check(unfinished.assessment()));
        unfinished.undo(candidate.slot());
        return refused;
    }

    private void finish() {
        Standing found = problem.soundStanding(unfinished.choices(), best, objective);
        if (found != null && found.betterThan(best, objective)) {
            best = found;
            interrupted |= firstIsEnough;
        }
    }

    private boolean beaten(Bounder.Bound bound) {
        if (bound.set() < 0) {
            return true;
        }
        if (best == null) {
            return false;
        }
        double first = objective.first(best.points(), best.totalMinor());
        double reachable = Math.floor(bound.first() + CLOSE);
        if (reachable != first) {
            return reachable < first;
        }
        return Math.floor(bound.second() + CLOSE)
                < objective.second(best.points(), best.totalMinor());
    }
}
