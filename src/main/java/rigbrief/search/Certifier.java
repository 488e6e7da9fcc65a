package rigbrief.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import rigbrief.part.Cooler;
import rigbrief.part.Graphics;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;
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
    private static final int PAIR = OpenSlots.PAIR;
    private static final int LEVELS = Slot.values().length;
    private static final double CLOSE = 1e-6;

    private final Problem problem;
    private final Objective objective;
    private final long stepLimit;
    private final BooleanSupplier stop;
    private final List<Slot> order;
    private final RuleSchedule schedule;
    private final PairTable pairs;
    private final Outlook outlook;
    private final Bounder bounder;
    private final OpenSlots slots;
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
        this.order = SlotOrder.of(objective);
        this.stepLimit = stepLimit;
        this.stop = stop;
        this.schedule = new RuleSchedule(problem.rules(), order);
        this.pairs = problem.tables().pairs(problem);
        this.outlook = problem.tables().outlook(problem);
        double[] worth = worths(objective, worths, problem);
        this.bounder = new Bounder(problem, objective, worth);
        this.slots = new OpenSlots(problem, objective, order, worth, bounder.sets());
        this.unfinished = new Unfinished(problem.assessor());
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
        for (int p = 0; p < slots.table(0).size(); p++) {
            for (int g = 0; g < slots.table(1).size(); g++) {
                Candidate processor = slots.table(0).candidate(p);
                Candidate card = slots.table(1).candidate(g);
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
        rootStands = entered ? rootStands : slots.push(0, processor);
        unfinished.decide(card);
        if (!rootStands || !slots.push(1, card)) {
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
        int cooler = order.indexOf(Slot.COOLER);
        int supply = order.indexOf(Slot.SUPPLY);
        return slots.keep(
                        PAIR, cooler, i -> outlook.coolEnough(processor, (Cooler) part(cooler, i)))
                && slots.keep(
                        PAIR, supply, i -> outlook.canFeed((Supply) part(supply, i), card, pair));
    }

    private Part part(int level, int index) {
        return slots.table(level).candidate(index).partOrNull();
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
        Bounder.AliveSets alive = slots.sumUp(level);
        double threshold =
                best == null
                        ? Double.NEGATIVE_INFINITY
                        : objective.first(best.points(), best.totalMinor());
        return bounder.bound(
                unfinished,
                coupled,
                slots.gained(level),
                slots.spent(level),
                slots.leastSum(),
                slots.netSum(),
                alive,
                threshold);
    }

    private void decide(int level, int set) {
        if (level == LEVELS) {
            finish();
            return;
        }
        int[] tried = slots.table(level).order(set, objective.perPoint() == 0);
        for (int i : tried) {
            if (!slots.has(level, level, i)) {
                continue;
            }
            if (++steps >= stepLimit || ((steps & 1023) == 0 && stop.getAsBoolean())) {
                interrupted = true;
            }
            if (interrupted) {
                break;
            }
            Candidate candidate = slots.table(level).candidate(i);
            unfinished.decide(candidate);
            if (slots.push(level, candidate) && kept(level)) {
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
        if (order.get(level) == Slot.BOARD && !slots.reckonMemoryAndDrives(level, unfinished)) {
            return;
        }
        Bounder.Bound bound = bound(level + 1);
        if (!beaten(bound)) {
            decide(level + 1, bound.set());
        }
    }

    /** Whether every rule that can be asked since this level's slot was decided is kept. */
    private boolean kept(int level) {
        for (Rule rule : schedule.askedAt(level)) {
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
        for (RuleSchedule.Narrowing narrowing : schedule.narrowing(level)) {
            int open = narrowing.open();
            boolean left =
                    slots.keep(
                            level + 1,
                            open,
                            i -> !refuses(narrowing.rule(), slots.table(open).candidate(i)));
            if (!left) {
                return false;
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
