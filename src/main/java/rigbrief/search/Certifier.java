package rigbrief.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.BooleanSupplier;
import rigbrief.brief.Brief;
import rigbrief.goal.Goal;
import rigbrief.part.Graphics;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
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

    /** Level of the board, behind the pair. */
    static final int BOARD = PAIR;

    private static final int LEVELS = Slot.values().length;
    private static final double CLOSE = 1e-6;

    /** How often a pair is looked at, each time closer, before it is explored. */
    private static final int LOOKS = 4;

    /**
     * After so many looks a pair is split by boards in a large catalogue, where a look at a board
     * is cheap beside the last one at a pair; among few candidates it is the other way round.
     */
    private static final int LOOKS_WITHOUT_BOARD = LOOKS - 1;

    /** Pairs of which it is remembered what they leave of the other slots. */
    private static final int MOST_NARROWED = 2_000;

    /** How often, and with how much effort, to go straight for a first build. */
    private static final int PLUNGES = 4;

    private static final int PLUNGE = 300;
    private static final int CANDIDATES_A_PLUNGE = 4;

    private final Subspace undominated;
    private final Problem problem;
    private final Objective objective;
    private final int plungeEffort;
    private final int looksAtPair;
    private Effort effort;
    private final List<Slot> order;
    private final RuleSchedule schedule;
    private final Refusals refusals;
    private final Outlook outlook;
    private final Bounder bounder;
    private final OpenSlots slots;
    private final SoundNarrowing quiet;
    private final Unfinished unfinished;
    private final double[] fixed = new double[LEVELS + 1];
    private final Map<Outlook.Pair, long[][]> narrowed = new IdentityHashMap<>();
    private final Map<Candidate, long[][]> narrowedByProcessor = new IdentityHashMap<>();
    private Candidate atRoot;
    private boolean rootStands;
    private OpenSlots.BesideProcessor[] beside;
    private double fixedBeside;
    private Standing best;
    private PriorityQueue<Top> queue;
    private Bounder.Bound cutShort = Bounder.IMPOSSIBLE;
    private long steps;
    private boolean interrupted;
    private boolean firstIsEnough;
    private Stairs stairs;
    private double closeEnough = 1;
    private double leastExcess = 1;

    /**
     * A certifier.
     *
     * @param whole the problem, with all its candidates
     * @param stepLimit most nodes to visit; looks at pairs count as some where there are many parts
     * @param stop asked now and then; true ends the run early, with a true bound
     */
    public Certifier(Problem whole, Objective objective, long stepLimit, BooleanSupplier stop) {
        this(whole, objective, worths(objective, whole), stepLimit, stop);
    }

    /** A certifier with the rates of exchange at which to bound utility. */
    Certifier(
            Problem whole,
            Objective objective,
            double[] worth,
            long stepLimit,
            BooleanSupplier stop) {
        this.undominated = whole.tables().undominated(whole);
        this.problem = undominated.of(whole);
        this.objective = objective;
        this.order = SlotOrder.of(objective, problem.candidates());
        int count = problem.candidates().count();
        this.effort = new Effort(count, stepLimit, stop);
        this.looksAtPair = effort.large() ? LOOKS_WITHOUT_BOARD : LOOKS;
        this.plungeEffort = PLUNGE + count / CANDIDATES_A_PLUNGE;
        this.schedule = new RuleSchedule(problem.rules(), order);
        this.refusals = problem.tables().refusals(problem);
        this.outlook = problem.tables().outlook(problem);
        this.bounder = new Bounder(problem, objective, worth);
        this.slots =
                new OpenSlots(
                        problem,
                        objective,
                        order,
                        worth,
                        bounder.sets(),
                        objective.perPoint() == 0
                                ? undominated.forMoney(problem)
                                : problem.candidates().bySlot());
        this.quiet = new SoundNarrowing(problem, objective, order, slots);
        this.unfinished = new Unfinished(problem.assessor());
    }

    /**
     * Rates of exchange between points and minor units at which to bound utility. The objective's
     * own rate first; 0 always among them. Where value counts, money is worth about a quarter to a
     * half of its weight over the ceiling on top. Last the rate at which the whole limit would buy
     * full utility.
     */
    private static double[] worths(Objective objective, Problem problem) {
        Set<Double> all = new LinkedHashSet<>();
        double own = 0;
        if (objective.perPoint() > 0 && objective.perMinor() > 0) {
            double tax = 1 + problem.assessor().brief().fees().taxBasisPoints() / 10_000.0;
            own = tax * objective.perMinor() / objective.perPoint();
            all.add(own);
        }
        all.add(0.0);
        if (objective.perPoint() > 0) {
            Brief brief = problem.assessor().brief();
            double value =
                    brief.wishes().weight("value")
                            * (double) Goal.FULL
                            / brief.ceiling().minorUnits();
            if (value > 0) {
                all.add(own + value / 4);
                all.add(own + value / 2);
            }
            all.add((double) problem.mostPoints() / problem.limitMinor());
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The same certifier, but looks count even though there are few candidates. */
    Certifier countingLooks() {
        effort = effort.countingLooks();
        return this;
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
        begin(incumbent.orElse(null), 0, 1);
        for (int i = 0; i < PLUNGES && best == null && !interrupted; i++) {
            plunge(queue);
        }
        goOn(Long.MAX_VALUE);
        return end();
    }

    /**
     * Begins from a known build, null for nothing, with one hand's share of the processors: of
     * those in the order of their bounds every so-manieth, so that each hand has as promising ones.
     */
    void begin(Standing incumbent, int hand, int hands) {
        learn(incumbent);
        PriorityQueue<Top> all = tops();
        queue = new PriorityQueue<>(all.comparator());
        for (int i = 0; !all.isEmpty(); i++) {
            Top top = all.poll();
            if (i % hands == hand) {
                queue.add(top);
            }
        }
    }

    /** Hears of a build, null for none; keeps it if it is sound and better than its own. */
    void learn(Standing known) {
        if (known != null && known.sound() && known.betterThan(best, objective)) {
            best = known;
        }
    }

    /** The best build known so far; null for none. */
    Standing best() {
        return best;
    }

    Effort effort() {
        return effort;
    }

    /** Goes on for so much work; true when there is nothing left to do, or no more allowance. */
    boolean goOn(long work) {
        long until = work == Long.MAX_VALUE ? work : effort.worked() + work;
        while (!queue.isEmpty() && !interrupted && effort.worked() < until) {
            Top top = queue.poll();
            if (beaten(top.bound)) {
                queue.clear();
            } else {
                Bounder.Bound before = top.bound;
                advance(top, queue);
                cutShort = interrupted ? before : cutShort;
            }
        }
        return queue.isEmpty() || interrupted;
    }

    /** What was found out. */
    Certificate end() {
        boolean cut = interrupted || !queue.isEmpty();
        double open = Double.NEGATIVE_INFINITY;
        // As good a first figure is no proof while the second could still be better.
        boolean proven = best != null;
        List<Bounder.Bound> left = new ArrayList<>(List.of(cutShort));
        queue.forEach(top -> left.add(top.bound));
        for (Bounder.Bound bound : left) {
            open = Math.max(open, bound.first());
            proven &= beaten(bound);
        }
        double reached =
                best == null
                        ? Double.NEGATIVE_INFINITY
                        : objective.first(best.points(), best.totalMinor());
        return new Certificate(
                Optional.ofNullable(best),
                cut ? Math.max(open, reached) : reached,
                !cut || proven,
                steps);
    }

    private void advance(Top top, PriorityQueue<Top> queue) {
        if (top.card == null && beside[top.processor.index()] == null) {
            lookAtProcessor(top, queue);
        } else if (top.card == null) {
            halve(top, queue);
        } else if (top.looks < looksAtPair) {
            look(top, queue);
        } else if (top.board == null) {
            split(top, queue);
        } else {
            explore(top, queue);
        }
    }

    /** From now on every build that passes a front's steps is looked for; best first as before. */
    PriorityQueue<Top> passing(Stairs steps) {
        stairs = steps;
        bounder.passing(steps);
        return tops();
    }

    /**
     * Goes on with what is left of a search for a front: looks at everything that could pass a step
     * by so many points, until nothing could or the steps are used up.
     *
     * @param left what is left; empty once no build passes any step
     * @return whether nothing is left that could pass a step by so many points
     */
    boolean goOn(PriorityQueue<Top> left, long points, long moreSteps) {
        effort.limit(effort.used() + moreSteps);
        interrupted = false;
        while (!left.isEmpty() && left.peek().most >= points && !interrupted) {
            Top top = left.poll();
            closeEnough = points;
            advance(top, left);
            if (interrupted) {
                left.add(top);
            }
        }
        boolean done = left.isEmpty() || left.peek().most < points;
        if (done && points <= 1) {
            left.clear();
        }
        return done;
    }

    long steps() {
        return steps;
    }

    /** By how many points each step of the front could be passed by what is left. */
    long[] gaps(PriorityQueue<Top> left) {
        long[] gaps = new long[stairs.size()];
        for (Top top : left) {
            bounder.raise(top.lines, (long) top.most, gaps);
        }
        return gaps;
    }

    /**
     * Stays with the best processor until a first build is found, so that a search that is cut
     * short has one.
     */
    private void plunge(PriorityQueue<Top> queue) {
        PriorityQueue<Top> own = new PriorityQueue<>(queue.comparator());
        if (!queue.isEmpty()) {
            own.add(queue.poll());
        }
        long limit = effort.limit();
        effort.limit(Math.min(limit, effort.used() + plungeEffort));
        while (best == null && !own.isEmpty() && !interrupted) {
            Top top = own.poll();
            advance(top, own);
            if (interrupted) {
                own.add(top); // What was cut short has to be looked at again.
            }
        }
        boolean stopped = effort.stopped();
        effort.limit(limit);
        interrupted = stopped || effort.used() >= limit || (firstIsEnough && best != null);
        queue.addAll(own);
    }

    /**
     * A processor and cards, then one card, perhaps a board, with the best that any build around
     * them reaches.
     */
    static final class Top {
        private final Candidate processor;
        private final CardGroup cards;
        private final Candidate card;
        private final Candidate board;
        private Bounder.Bound bound;
        private int looks;
        private double[][] lines;
        private double most;

        Top(Candidate processor, CardGroup cards, Bounder.Bound bound) {
            this.processor = processor;
            this.cards = cards;
            this.card = null;
            this.board = null;
            this.bound = bound;
        }

        Top(Candidate processor, Candidate card, Candidate board, Bounder.Bound bound, int looks) {
            this.processor = processor;
            this.cards = null;
            this.card = card;
            this.board = board;
            this.bound = bound;
            this.looks = looks;
        }
    }

    /** Processors by themselves, so that a large catalogue's pairs are made as they are wanted. */
    private PriorityQueue<Top> tops() {
        PriorityQueue<Top> queue =
                new PriorityQueue<>(
                        Comparator.<Top>comparingDouble(top -> -top.most)
                                .thenComparingDouble(top -> -top.bound.first())
                                .thenComparingDouble(top -> -top.bound.second())
                                .thenComparingInt(top -> top.processor.index())
                                .thenComparingInt(top -> firstOf(top.cards))
                                .thenComparingInt(top -> indexOf(top.card))
                                .thenComparingInt(top -> indexOf(top.board)));
        CardGroup cards = slots.cards();
        beside = new OpenSlots.BesideProcessor[slots.table(0).size()];
        for (int p = 0; p < beside.length; p++) {
            Candidate processor = slots.table(0).candidate(p);
            forgetPair();
            Bounder.Bound bound = decideProcessor(processor) ? bound(1) : Bounder.IMPOSSIBLE;
            if (!beaten(bound)) {
                add(queue, new Top(processor, cards, bound));
            }
            leave();
        }
        return queue;
    }

    /** Takes out what can't be in a machine with a processor, before any card is looked at. */
    private void lookAtProcessor(Top top, PriorityQueue<Top> queue) {
        top.bound = lookAtProcessor(top.processor);
        if (!beaten(top.bound)) {
            add(queue, top);
        }
        leave();
        effort.look(2); // It takes about as long as that at a pair.
    }

    private Bounder.Bound lookAtProcessor(Candidate processor) {
        forgetPair();
        if (!decideProcessor(processor)) {
            return Bounder.IMPOSSIBLE;
        }
        if (!narrowedByProcessor.containsKey(processor)) {
            BitSet cool = outlook.sound().coolEnough((Processor) processor.partOrNull());
            rootStands = slots.keep(1, order.indexOf(Slot.COOLER), cool::get);
            slots.touchAll();
            rootStands = rootStands && slots.support(1);
            narrowedByProcessor.put(processor, rootStands ? slots.left(1) : null);
        }
        Bounder.Bound bound = rootStands ? bound(1) : Bounder.IMPOSSIBLE;
        rootStands = !beaten(bound);
        beside[processor.index()] = slots.besideProcessor(processor);
        return bound;
    }

    /** Keeps what was bounded last for later. */
    private void add(PriorityQueue<Top> queue, Top top) {
        int level = top.card == null ? 1 : top.board == null ? PAIR : BOARD + 1;
        if (stairs != null) {
            top.most = Math.floor(top.bound.first() + CLOSE);
            top.lines =
                    bounder.lines(
                            fixed[level],
                            slots.spent(level),
                            slots.leastSum(level),
                            slots.netSum(level),
                            slots.alive(level));
        }
        queue.add(top);
    }

    /** Keeps what was last looked at beside what is decided. */
    private void addWith(PriorityQueue<Top> queue, Top top, double fixedBeside, long[] spent) {
        if (stairs != null) {
            top.most = Math.floor(top.bound.first() + CLOSE);
            top.lines =
                    bounder.lines(
                            fixedBeside,
                            spent,
                            slots.leastWith(),
                            slots.netWith(),
                            slots.aliveWith());
        }
        queue.add(top);
    }

    private static int indexOf(Candidate candidate) {
        return candidate == null ? -1 : candidate.index();
    }

    private static int firstOf(CardGroup cards) {
        return cards == null ? -1 : cards.first();
    }

    /** Splits a processor's cards in two. */
    private void halve(Top top, PriorityQueue<Top> queue) {
        CardGroup[] some = top.cards.size() == 1 ? new CardGroup[] {top.cards} : top.cards.halves();
        for (CardGroup cards : some) {
            if (cards.size() == 1) {
                pair(top.processor, cards.single(), queue);
            } else {
                Bounder.Bound bound = bound(top.processor, cards);
                if (!beaten(bound)) {
                    Top group = new Top(top.processor, cards, bound);
                    addWith(queue, group, fixedBeside, beside[top.processor.index()].spent());
                }
            }
        }
        effort.group();
        interrupted = effort.over();
    }

    private void pair(Candidate processor, Candidate card, PriorityQueue<Top> queue) {
        long[] row = slots.pairs().row(processor, Slot.GRAPHICS);
        if (row == null || SlotTable.has(row, card.index())) {
            Bounder.Bound bound = enter(processor, card, 1);
            if (!beaten(bound)) {
                add(queue, new Top(processor, card, null, bound, 1));
            }
            leave();
        }
    }

    /** Bounds a processor with any card of a group. */
    private Bounder.Bound bound(Candidate processor, CardGroup cards) {
        forgetPair();
        unfinished.decide(processor);
        OpenSlots.BesideProcessor others = beside[processor.index()];
        Outlook.Pair group = outlook.pair((Processor) processor.partOrNull(), cards);
        if (group != null) {
            unfinished.pair(group);
            fixedBeside =
                    bounder.fixed(unfinished, outlook.coupledPoints(unfinished), others.gained());
        }
        leave();
        if (group == null) {
            return Bounder.IMPOSSIBLE;
        }
        return bounder.bound(
                fixedBeside,
                others.spent(),
                slots.leastWith(),
                slots.netWith(),
                slots.lookAt(others, cards),
                threshold());
    }

    /**
     * The bound after each decision on the way to a build, for asking whether none of them is below
     * that build.
     */
    List<Bounder.Bound> boundsTowards(Standing known) {
        best = null;
        List<Bounder.Bound> bounds = new ArrayList<>();
        Candidate processor = here(known, Slot.PROCESSOR);
        Candidate card = here(known, Slot.GRAPHICS);
        if (beside == null) {
            tops();
        }
        bounds.add(lookAtProcessor(processor));
        for (CardGroup group : slots.cards().towards(card)) {
            bounds.add(bound(processor, group));
        }
        for (int looks = 0; looks <= LOOKS; looks++) {
            bounds.add(enter(processor, card, looks));
            if (looks == LOOKS_WITHOUT_BOARD) {
                Candidate board = here(known, Slot.BOARD);
                bounds.add(boundWith(BOARD, board.index()));
                bounds.add(choose(BOARD, board));
                unfinished.undo(Slot.BOARD);
            }
        }
        for (int level = PAIR; level < LEVELS; level++) {
            Candidate candidate = here(known, order.get(level));
            bounds.add(boundWith(level, candidate.index()));
            bounds.add(push(level, candidate));
            bounds.add(choose(level, candidate));
        }
        for (int level = PAIR; level < LEVELS; level++) {
            unfinished.undo(order.get(level));
        }
        leave();
        return bounds;
    }

    private Candidate here(Standing known, Slot slot) {
        return undominated.here(known.choices().get(slot.ordinal()));
    }

    private void look(Top top, PriorityQueue<Top> queue) {
        top.looks++;
        top.bound = enter(top.processor, top.card, top.looks);
        effort.look(top.looks);
        effort.tried(slots.tried());
        interrupted = effort.over();
        // Whoever asked counts what was cut short: twice in the queue, the next look at it would
        // change its bound where it stands, and the queue would no longer be in order.
        if (!interrupted && !beaten(top.bound)) {
            add(queue, top);
        }
        leave();
    }

    /** Splits a pair by boards, each with no more than its price and what it is known to lose. */
    private void split(Top top, PriorityQueue<Top> queue) {
        if (!beaten(enter(top.processor, top.card, looksAtPair))) {
            SlotTable boards = slots.table(BOARD);
            for (int i = 0; i < boards.size(); i++) {
                if (slots.has(BOARD, BOARD, i)) {
                    Bounder.Bound bound = boundWith(BOARD, i);
                    if (!beaten(bound)) {
                        addWith(
                                queue,
                                new Top(
                                        top.processor,
                                        top.card,
                                        boards.candidate(i),
                                        bound,
                                        looksAtPair),
                                fixed[BOARD],
                                slots.spent(BOARD));
                    }
                }
            }
        }
        leave();
    }

    /**
     * Looks at what a board leaves beside a pair, once more with the last look at the pair, and
     * then decides everything else around them.
     */
    private void explore(Top top, PriorityQueue<Top> queue) {
        boolean looked = top.looks > LOOKS;
        int looks = Math.min(LOOKS, top.looks);
        if (looks < LOOKS && slots.housingKnown(pair(top.processor, top.card))) {
            looks = LOOKS;
        }
        boolean stands = !beaten(enter(top.processor, top.card, looks));
        effort.look(LOOKS_WITHOUT_BOARD);
        if (stands && (looked || !counted())) {
            Bounder.Bound bound = choose(BOARD, top.board);
            if (!beaten(bound) && !looked) {
                top.looks = looks + 1;
                top.bound = bound;
                add(queue, top);
            } else if (!beaten(bound)) {
                leastExcess = closeEnough;
                decide(BOARD + 1);
                leastExcess = 1;
                if (closeEnough > 1 && !interrupted) {
                    top.most = Math.min(top.most, closeEnough - 1);
                    queue.add(top);
                }
            }
        }
        unfinished.undo(Slot.BOARD);
        leave();
    }

    private Outlook.Pair pair(Candidate processor, Candidate card) {
        return outlook.pair((Processor) processor.partOrNull(), (Graphics) card.partOrNull());
    }

    /**
     * Decides processor and card: by their prices alone at first, then with what the pair can
     * reach, then with what every candidate of the other slots loses beside it, then with what
     * every case makes of its heat.
     */
    private Bounder.Bound enter(Candidate processor, Candidate card, int looks) {
        forgetPair();
        boolean stands = decideProcessor(processor);
        unfinished.decide(card);
        if (!stands || !slots.push(1, card)) {
            return Bounder.IMPOSSIBLE;
        }
        if (looks == 1) {
            double reach =
                    outlook.reach((Processor) processor.partOrNull(), (Graphics) card.partOrNull());
            if (reach < 0) {
                return Bounder.IMPOSSIBLE;
            }
            unfinished.reach(reach);
        } else if (looks > 1) {
            Processor p = (Processor) processor.partOrNull();
            Outlook.Pair pair = pair(processor, card);
            if (pair.hopeless()) {
                return Bounder.IMPOSSIBLE;
            }
            unfinished.pair(pair);
            if (beaten(bound(PAIR))) {
                return Bounder.IMPOSSIBLE;
            }
            slots.keepAlivePair();
            long[][] known = narrowed.get(pair);
            if (known != null) {
                slots.restore(PAIR, known);
            } else if (narrow(p, (Graphics) card.partOrNull(), pair) && narrow(0) && narrow(1)) {
                slots.touchAll();
                if (!slots.support(PAIR)) {
                    return Bounder.IMPOSSIBLE;
                }
                if (narrowed.size() >= MOST_NARROWED) {
                    narrowed.clear(); // What is forgotten is narrowed again.
                }
                narrowed.put(pair, slots.left(PAIR));
            } else {
                return Bounder.IMPOSSIBLE;
            }
            if (looks == LOOKS
                    && objective.perPoint() > 0
                    && !outlook.sound().lookAtCases(unfinished)) {
                return Bounder.IMPOSSIBLE;
            }
            if (looks >= 3) {
                slots.reckonLosses(unfinished);
                if (beaten(bound(PAIR))) {
                    return Bounder.IMPOSSIBLE;
                }
                slots.reckonDrives(unfinished);
            }
            if (looks == LOOKS) {
                if (beaten(bound(PAIR)) || !slots.reckonHousing(unfinished)) {
                    return Bounder.IMPOSSIBLE;
                }
            }
        }
        return bound(PAIR);
    }

    private void forgetPair() {
        unfinished.reach(1);
        unfinished.pair(null);
        slots.withoutLosses();
    }

    /** What a processor leaves of the other slots holds for all its pairs. */
    private boolean decideProcessor(Candidate processor) {
        boolean entered = processor == atRoot;
        atRoot = processor;
        unfinished.decide(processor);
        if (!entered) {
            long[][] known = narrowedByProcessor.get(processor);
            rootStands = slots.pushProcessor(processor, known) && !beaten(bound(1));
        }
        return rootStands;
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
        BitSet cool = outlook.sound().coolEnough(processor);
        return slots.keep(PAIR, cooler, cool::get)
                && slots.keep(PAIR, supply, outlook.load().feeding(card, pair));
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
        fixed[level] = bounder.fixed(unfinished, coupled, slots.gained(level));
        return bounder.bound(
                fixed[level],
                slots.spent(level),
                slots.leastSum(level),
                slots.netSum(level),
                alive,
                threshold());
    }

    private double threshold() {
        if (stairs != null) {
            return leastExcess;
        }
        return best == null
                ? Double.NEGATIVE_INFINITY
                : objective.first(best.points(), best.totalMinor());
    }

    private void decide(int level) {
        if (level == LEVELS) {
            finish();
            return;
        }
        Branch[] branches = branches(level);
        for (Branch branch : branches) {
            if (beaten(branch.bound()) || tooHot(branch.candidate())) {
                continue;
            }
            if (counted()) {
                break;
            }
            if (!beaten(choose(level, branch.candidate()))) {
                decide(level + 1);
            }
        }
        unfinished.undo(order.get(level));
    }

    /** Counts a step; true when it was one too many. */
    private boolean counted() {
        steps++;
        effort.step();
        effort.tried(slots.tried());
        interrupted = effort.over();
        return interrupted;
    }

    /** Decides a level's slot, and what follows from it; the bound of what can still come of it. */
    private Bounder.Bound choose(int level, Candidate candidate) {
        // The bound is cheaper than asking every rule about every open candidate, so it comes
        // first.
        if (beaten(push(level, candidate))
                || !narrow(level)
                || !narrowSupplies(level)
                || !quiet.narrow(level, unfinished)
                || !slots.support(level + 1)
                || !slots.reckon(level, unfinished)) {
            return Bounder.IMPOSSIBLE;
        }
        return bound(level + 1);
    }

    /** Decides a level's slot; the bound by what is known without a look at the open slots. */
    private Bounder.Bound push(int level, Candidate candidate) {
        unfinished.decide(candidate);
        return slots.push(level, candidate) && kept(level) && outlook.load().carriesOn(unfinished)
                ? bound(level + 1)
                : Bounder.IMPOSSIBLE;
    }

    private boolean tooHot(Candidate candidate) {
        return candidate.slot() == Slot.FANS
                && unfinished.has(Slot.CASE)
                && unfinished.has(Slot.COOLER)
                && !outlook.sound().coolEnough(unfinished, candidate);
    }

    /** Bounds one choice for the slot of a level that is summed up. */
    private Bounder.Bound boundWith(int level, int index) {
        Bounder.AliveSets alive = slots.lookAt(level, index);
        return bounder.bound(
                fixed[level],
                slots.spent(level),
                slots.leastWith(),
                slots.netWith(),
                alive,
                threshold());
    }

    private record Branch(Candidate candidate, Bounder.Bound bound) {}

    /** What may be chosen for a level's slot and can still be best, best bound first. */
    private Branch[] branches(int level) {
        List<Branch> branches = new ArrayList<>();
        SlotTable table = slots.table(level);
        for (int i = 0; i < table.size(); i++) {
            if (slots.has(level, level, i)) {
                Bounder.Bound bound = boundWith(level, i);
                if (!beaten(bound)) {
                    branches.add(new Branch(table.candidate(i), bound));
                }
            }
        }
        branches.sort(BEST_FIRST);
        return branches.toArray(Branch[]::new);
    }

    private static final Comparator<Branch> BEST_FIRST =
            Comparator.<Branch>comparingDouble(branch -> -branch.bound().first())
                    .thenComparingDouble(branch -> -branch.bound().second());

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
            if (level < PAIR && LoadOutlook.foresees(narrowing.rule())) {
                continue;
            }
            int open = narrowing.open();
            boolean left =
                    slots.keep(
                            level + 1,
                            open,
                            refusals.allowed(narrowing.rule(), slots.table(open), unfinished));
            if (!left) {
                return false;
            }
        }
        return true;
    }

    /** Takes out supplies that can't carry what is decided by now. */
    private boolean narrowSupplies(int level) {
        int supply = order.indexOf(Slot.SUPPLY);
        if (level >= supply || !LoadOutlook.drawsOfItsOwn(order.get(level))) {
            return true;
        }
        return slots.keep(level + 1, supply, outlook.load().carrying(unfinished));
    }

    private void finish() {
        if (stairs != null) {
            Standing found = problem.soundStanding(unfinished.choices(), null, objective);
            if (found != null) {
                stairs.offer(undominated.original(found));
            }
            return;
        }
        Standing found = problem.soundStanding(unfinished.choices(), best, objective);
        if (found != null) {
            Standing original = undominated.original(found);
            if (original.betterThan(best, objective)) {
                best = original;
                interrupted |= firstIsEnough;
            }
        }
    }

    private boolean beaten(Bounder.Bound bound) {
        if (bound.set() < 0 || stairs != null) {
            // Supplier sets that pass no step were taken out, so any that is left passes one.
            return bound.set() < 0 || Math.floor(bound.first() + CLOSE) < leastExcess;
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
