package rigbrief.search;

import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import rigbrief.assess.Pricing;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * What is left of every open slot at each level of the certifier, with the least price and the most
 * net gain that each leaves, by supplier set.
 *
 * <p>Level n holds what is left once the first n slots are decided. Figures are kept for those
 * supplier sets only that the level before left alive. Mutable; never leaves this package.
 */
final class OpenSlots {
    private static final int LEVELS = Slot.values().length;

    /**
     * Between slots with more ways to fill both it is not asked what goes with nothing: asking the
     * rules about each would take longer than it saves, and a bound is true without.
     */
    private static final long MOST_SUPPORTED = 5_000_000;

    /** What was left of slots to be remembered, so that it is kept only once. */
    private static final int MOST_DOMAINS = 20_000;

    /** Slots that lose points beside a processor and a card, but for boards and drives. */
    private static final List<Slot> LOSING = List.of(Slot.SUPPLY, Slot.CASE, Slot.MEMORY);

    /** Processor and card, which are decided in one go; level of the board, which follows. */
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
    private final Bounder.AliveSets pairSets;
    private final double[][] besidePair = new double[LEVELS][];
    private double[] boardLosses;
    private final Map<OthersKey, Others> othersKnown = new HashMap<>();
    private final Map<LongBuffer, long[]> domainsKnown = new HashMap<>();
    private final double[][][] reckoned = new double[LEVELS][Rounds.MOST][];
    private final Rounds rounds;
    private final boolean[] touched = new boolean[LEVELS];
    private final int[][] related = new int[LEVELS][];
    private final DriveSlots drives;
    private final Housing housing;
    private final long[][] leastSum;
    private final double[][][] netSum;
    private final long[] leastWith;
    private final double[][] netWith;
    private final Bounder.AliveSets aliveWith;

    OpenSlots(
            Problem problem,
            Objective objective,
            List<Slot> order,
            double[] worth,
            int sets,
            Map<Slot, List<Candidate>> left) {
        this.problem = problem;
        this.objective = objective;
        this.order = order;
        this.pairs = problem.tables().pairs(problem);
        this.outlook = problem.tables().outlook(problem);
        this.worth = worth;
        this.sets = sets;
        this.rounds = new Rounds(order, objective.perPoint() > 0);
        this.least = new long[LEVELS + 1][LEVELS][sets];
        this.net = new double[LEVELS + 1][LEVELS][worth.length][sets];
        this.spent = new long[LEVELS + 1][sets];
        this.leastSum = new long[LEVELS + 1][sets];
        this.netSum = new double[LEVELS + 1][worth.length][sets];
        this.leastWith = new long[sets];
        this.netWith = new double[worth.length][sets];
        this.aliveWith = new Bounder.AliveSets(sets);
        this.pairSets = new Bounder.AliveSets(sets).fill();
        for (int level = 0; level <= LEVELS; level++) {
            alive[level] = new Bounder.AliveSets(sets).fill();
        }
        for (int level = 0; level < LEVELS; level++) {
            tables[level] = table(order.get(level));
            for (int round = 0; round < Rounds.MOST; round++) {
                reckoned[level][round] = new double[tables[level].size()];
            }
            domains[0][level] = tables[level].domain(left.get(order.get(level)));
        }
        for (int level = 0; level < LEVELS; level++) {
            int by = level;
            related[by] =
                    IntStream.range(0, LEVELS)
                            .filter(open -> pairs.related(order.get(by), order.get(open)))
                            .filter(open -> (long) rows(by) * rows(open) <= MOST_SUPPORTED)
                            .toArray();
            refresh(0, level);
        }
        housing = Housing.of(this, problem, order, rounds);
        drives = new DriveSlots(this, problem, order);
    }

    private SlotTable table(Slot slot) {
        List<Candidate> candidates = problem.candidates().of(slot);
        double[] gain = new double[candidates.size()];
        double[] openGain = new double[candidates.size()];
        for (Candidate candidate : candidates) {
            int i = candidate.index();
            gain[i] = outlook.gain(candidate);
            openGain[i] = gain[i] + outlook.losses().open(candidate);
        }
        return new SlotTable(slot, candidates, gain, openGain, sets, worth);
    }

    private int rows(int level) {
        return tables[level].size();
    }

    private int levelOf(Slot slot) {
        return order.indexOf(slot);
    }

    /** A level's slot as a table. */
    SlotTable table(int level) {
        return tables[level];
    }

    /** What is left of a slot that is open at a level, as it stands. */
    long[] domain(int level, int open) {
        return domains[level][open];
    }

    /** Supplier sets for which figures are kept at a level. */
    Bounder.AliveSets kept(int level) {
        return before(level);
    }

    /** Supplier sets that a level has left alive. */
    Bounder.AliveSets alive(int level) {
        return alive[level];
    }

    /** What each candidate of an open slot loses beside the pair; null when that is not known. */
    double[] besidePair(int open) {
        return besidePair[open];
    }

    PairTable pairs() {
        return pairs;
    }

    double[] worth() {
        return worth;
    }

    int sets() {
        return sets;
    }

    boolean points() {
        return objective.perPoint() > 0;
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

    /** Least price of the open slots together at a level, by supplier set, as last summed up. */
    long[] leastSum(int level) {
        return leastSum[level];
    }

    /** Most net gain of the open slots together, by worth and supplier set, as last summed up. */
    double[][] netSum(int level) {
        return netSum[level];
    }

    /** As {@link #leastSum}, with the candidate last looked at in the level's slot. */
    long[] leastWith() {
        return leastWith;
    }

    /** As {@link #netSum}, with the candidate last looked at in the level's slot. */
    double[][] netWith() {
        return netWith;
    }

    /**
     * Sums up a level that is summed up already, with one candidate in its slot instead of the best
     * of all that are left there.
     *
     * @return the supplier sets alive at the level
     */
    Bounder.AliveSets lookAt(int level, int index) {
        aliveWith.copyOf(alive[level]);
        Couple driven = drives.couple(level);
        if (driven != null && level == drives.slots()[0]) {
            lookAtFirst(level, drives.slots(), driven, index);
            return aliveWith;
        }
        int[] housed = housing.slots(level);
        if (housed.length > 0 && housed[0] == level) {
            lookAtFirst(level, housed, housing.couple(level), index);
            return aliveWith;
        }
        long[] minor = tables[level].candidate(index).minorBySet();
        double gain = openGain(level, level, index);
        for (int k = 0; k < aliveWith.count(); k++) {
            int s = aliveWith.get(k);
            leastWith[s] =
                    leastSum[level][s]
                            - Math.min(least[level][level][s], Pricing.notToBeHad())
                            + minor[s];
            for (int w = 0; w < worth.length; w++) {
                netWith[w][s] =
                        netSum[level][w][s] - net[level][level][w][s] + gain - worth[w] * minor[s];
            }
        }
        return aliveWith;
    }

    /**
     * Goes to level 1 by a processor; false when that leaves a slot without any.
     *
     * @param known what {@link #left} told of level 1; null where that is not known
     */
    boolean pushProcessor(Candidate processor, long[][] known) {
        if (objective.perPoint() > 0) {
            boardLosses = outlook.losses().boards((Processor) processor.partOrNull());
        }
        return push(0, processor, known);
    }

    /** What a processor leaves of everything else but the card, by supplier set. */
    static final class BesideProcessor {
        private final int[] alive;
        private final long[] spent;
        private final Others others;
        private final double gained;

        private BesideProcessor(OpenSlots of, long[] spent, Others others) {
            Bounder.AliveSets left = of.alive[1];
            this.alive = new int[left.count()];
            for (int k = 0; k < alive.length; k++) {
                alive[k] = left.get(k);
            }
            this.spent = spent;
            this.others = others;
            this.gained = of.gained[1];
        }

        long[] spent() {
            return spent;
        }

        double gained() {
            return gained;
        }
    }

    /** The same for all processors that leave the same of the other slots. */
    private static final class Others {
        private final long[] least;
        private final double[][] net;

        private Others(OpenSlots of) {
            least = new long[of.sets];
            net = new double[of.worth.length][of.sets];
            Bounder.AliveSets all = of.before(1);
            for (int k = 0; k < all.count(); k++) {
                int s = all.get(k);
                least[s] = of.leastSum[1][s] - Math.min(of.least[1][1][s], Pricing.notToBeHad());
                for (int w = 0; w < net.length; w++) {
                    net[w][s] = of.netSum[1][w][s] - of.net[1][1][w][s];
                }
            }
        }
    }

    /** What others depends on: what is left of each slot, and what boards lose. */
    private record OthersKey(List<LongBuffer> left, Object boards) {}

    /** What the processor that is decided and summed up leaves of everything but the card. */
    BesideProcessor besideProcessor(Candidate processor) {
        List<LongBuffer> left = new ArrayList<>();
        for (int open = PAIR; open < LEVELS; open++) {
            left.add(LongBuffer.wrap(same(domains[1][open])));
        }
        Others others =
                othersKnown.computeIfAbsent(
                        new OthersKey(left, boardLosses), any -> new Others(this));
        return new BesideProcessor(this, processor.minorBySet(), others);
    }

    /** The same array for the same candidates: many processors leave the same of most slots. */
    private long[] same(long[] domain) {
        LongBuffer key = LongBuffer.wrap(domain);
        long[] known = domainsKnown.get(key);
        if (known == null) {
            if (domainsKnown.size() >= MOST_DOMAINS) {
                domainsKnown.clear();
            }
            known = domain.clone();
            domainsKnown.put(LongBuffer.wrap(known), known);
        }
        return known;
    }

    /** Sums up a processor with any card of a group instead of the best of all. */
    Bounder.AliveSets lookAt(BesideProcessor beside, CardGroup cards) {
        aliveWith.take(beside.alive);
        for (int k = 0; k < aliveWith.count(); k++) {
            int s = aliveWith.get(k);
            leastWith[s] =
                    beside.others.least[s] + Math.min(cards.minor()[s], Pricing.notToBeHad());
            for (int w = 0; w < worth.length; w++) {
                netWith[w][s] = beside.others.net[w][s] + cards.net()[w][s];
            }
        }
        return aliveWith;
    }

    /** Supplier sets alive with what was last looked at. */
    Bounder.AliveSets aliveWith() {
        return aliveWith;
    }

    /** The cards that are left, in groups. */
    CardGroup cards() {
        return CardGroup.of(tables[1], domains[0][1], worth, sets);
    }

    /** The first of some coupled slots with whatever goes best with it in the others. */
    private void lookAtFirst(int level, int[] slots, Couple couple, int index) {
        for (int k = 0; k < aliveWith.count(); k++) {
            int s = aliveWith.get(k);
            leastWith[s] =
                    leastSum[level][s]
                            - leastApart(level, slots, s)
                            - more(level, slots, couple, s)
                            + Math.min(couple.leastWith(index, s), Pricing.notToBeHad());
            for (int w = 0; w < worth.length; w++) {
                netWith[w][s] =
                        netSum[level][w][s]
                                - netApart(level, slots, w, s)
                                - less(level, slots, couple, w, s)
                                + couple.netWith(index, w, s);
            }
        }
    }

    /** Goes from a level to the next by a candidate; false when that leaves a slot without any. */
    boolean push(int level, Candidate candidate) {
        return push(level, candidate, null);
    }

    /**
     * The same where it is known already what is left.
     *
     * @param known what {@link #left} told of the next level; null where that is not known
     */
    private boolean push(int level, Candidate candidate, long[][] known) {
        gained[level + 1] = gained[level] + tables[level].gain(candidate.index());
        drives.pass(level);
        housing.pass(level, candidate);
        rounds.begin(level);
        if (level + 1 == PAIR) {
            pairSets.copyOf(alive[level]);
        }
        for (int s = 0; s < spent[level].length; s++) {
            spent[level + 1][s] = spent[level][s] + candidate.minorBySet()[s];
        }
        for (int open = level + 1; open < LEVELS; open++) {
            long[] row = known == null ? pairs.row(candidate, order.get(open)) : known[open];
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
            touched[open] = changed;
            // What boards lose is known from level 1 on.
            if (changed || (level == 0 && open == PAIR && boardLosses != null)) {
                refresh(level + 1, open);
            } else {
                copy(level, open);
            }
        }
        return true;
    }

    /** Counts every open slot as changed, for {@link #support}. */
    void touchAll() {
        Arrays.fill(touched, true);
    }

    /**
     * Takes out what goes with nothing that is left of another open slot, until nothing more goes
     * (arc consistency, AC-3 of Mackworth 1977); false when that leaves a slot without any.
     */
    boolean support(int level) {
        boolean again = true;
        while (again) {
            again = false;
            for (int by = level; by < LEVELS; by++) {
                if (touched[by]) {
                    touched[by] = false;
                    for (int open : related[by]) {
                        if (open >= level && !support(level, open, by)) {
                            return false;
                        }
                    }
                    again = true;
                }
            }
        }
        return true;
    }

    private boolean support(int level, int open, int by) {
        long[] domain = domains[level][open];
        long[] support = domains[level][by];
        Slot slot = order.get(by);
        boolean changed = false;
        for (int k = 0; k < domain.length; k++) {
            for (long left = domain[k]; left != 0; left &= left - 1) {
                long bit = Long.lowestOneBit(left);
                Candidate candidate =
                        tables[open].candidate((k << 6) + Long.numberOfTrailingZeros(bit));
                if (!SlotTable.meet(pairs.row(candidate, slot), support)) {
                    domain[k] &= ~bit;
                    changed = true;
                }
            }
        }
        if (changed) {
            if (SlotTable.empty(domain)) {
                return false;
            }
            touched[open] = true;
            refresh(level, open);
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
            touched[open] = true;
            refresh(level, open);
        }
        return !changed || !SlotTable.empty(domain);
    }

    /** What is left of the open slots at a level, to be put back by {@link #restore}. */
    long[][] left(int level) {
        long[][] copy = new long[LEVELS][];
        for (int open = level; open < LEVELS; open++) {
            copy[open] = same(domains[level][open]);
        }
        return copy;
    }

    /** Puts back what was left of the open slots at a level. */
    void restore(int level, long[][] left) {
        for (int open = level; open < LEVELS; open++) {
            if (!Arrays.equals(domains[level][open], left[open])) {
                System.arraycopy(left[open], 0, domains[level][open], 0, left[open].length);
                refresh(level, open);
            }
        }
    }

    /** Bounds an open slot anew, now that less is left of it or other losses are known. */
    void refresh(int level, int open) {
        long[] domain = domains[level][open];
        double[] losses = losses(level, open);
        Bounder.AliveSets left = before(level);
        for (int i = 0; i < left.count(); i++) {
            int s = left.get(i);
            least[level][open][s] = tables[open].leastMinor(domain, s);
            for (int w = 0; w < worth.length; w++) {
                net[level][open][w][s] = tables[open].mostNet(domain, s, w, losses);
            }
        }
    }

    /** What the candidates of an open slot lose as far as a level knows; null when nothing. */
    double[] losses(int level, int open) {
        int round = objective.perPoint() > 0 ? rounds.seen(level, open) : -1;
        if (round >= 0) {
            return reckoned[open][round];
        }
        if (open == PAIR && level > 0) {
            return boardLosses;
        }
        return level >= PAIR ? besidePair[open] : null;
    }

    /** Points of a candidate of an open slot, as far as a level knows. */
    double openGain(int level, int open, int index) {
        double[] losses = losses(level, open);
        return losses == null
                ? tables[open].openGain(index)
                : tables[open].gain(index) + losses[index];
    }

    /** Forgets what the candidates lose beside a processor and a card. */
    void withoutLosses() {
        for (Slot slot : LOSING) {
            besidePair[levelOf(slot)] = null;
        }
        besidePair[levelOf(Slot.DRIVE)] = null;
        drives.forgetPair();
        housing.forgetPair();
    }

    /** Reckons what the candidates lose beside the processor and the card that are decided. */
    void reckonLosses(Unfinished unfinished) {
        if (objective.perPoint() == 0) {
            return;
        }
        for (Slot slot : LOSING) {
            reckonLosses(slot, unfinished);
        }
    }

    /** The same of drives, which takes longest. */
    void reckonDrives(Unfinished unfinished) {
        if (objective.perPoint() == 0) {
            return;
        }
        int open = levelOf(Slot.DRIVE);
        besidePair[open] = outlook.lossesBesidePair(Slot.DRIVE, unfinished);
        if (outlook.drivesMatter() && drives.couple(PAIR) != null) {
            drives.know(PAIR, unfinished); // Which makes no use of drives each by itself.
        } else {
            refresh(PAIR, open);
        }
    }

    private void reckonLosses(Slot slot, Unfinished unfinished) {
        int open = levelOf(slot);
        besidePair[open] = outlook.lossesBesidePair(slot, unfinished);
        refresh(PAIR, open);
    }

    /**
     * Reckons anew what the candidates of open slots lose, now that a level's slot is decided, and
     * takes out memory with which a must is missed; false when none is left.
     */
    boolean reckon(int level, Unfinished unfinished) {
        rounds.reckon(level);
        for (int open = level + 1; open < LEVELS; open++) {
            int round = rounds.now(level, open);
            if (round >= 0
                    && (!reckon(level, open, reckoned[open][round], unfinished)
                            || !housing.reckon(level, open, round, unfinished))) {
                return false;
            }
        }
        housing.board(level);
        return drives.reckon(level, unfinished);
    }

    /** Cases and coolers tried with each other so far. */
    long tried() {
        return housing.tried();
    }

    /** As {@link Housing#knows}. */
    boolean housingKnown(Outlook.Pair pair) {
        return housing.knows(pair);
    }

    /** As {@link Housing#besidePair}. */
    boolean reckonHousing(Unfinished unfinished) {
        return housing.besidePair(unfinished);
    }

    private boolean reckon(int level, int open, double[] losses, Unfinished unfinished) {
        long[] domain = domains[level + 1][open];
        Slot slot = order.get(open);
        for (int i = 0; i < tables[open].size(); i++) {
            if (!SlotTable.has(domain, i)) {
                continue;
            }
            Candidate candidate = tables[open].candidate(i);
            if (slot == Slot.MEMORY && outlook.missesMust(unfinished, candidate)) {
                domain[i >> 6] &= ~(1L << i);
            } else if (objective.perPoint() > 0) {
                losses[i] = loss(slot, open, candidate, unfinished);
                if (losses[i] == Double.NEGATIVE_INFINITY) {
                    domain[i >> 6] &= ~(1L << i);
                }
            }
        }
        if (SlotTable.empty(domain)) {
            return false;
        }
        // Both drives are bounded together, which makes no use of each by itself.
        if (slot != Slot.DRIVE || drives.couple(level + 1) == null) {
            refresh(level + 1, open);
        }
        return true;
    }

    private double loss(Slot slot, int open, Candidate candidate, Unfinished unfinished) {
        return switch (slot) {
            case MEMORY -> outlook.losses().memory(unfinished, candidate);
            case DRIVE ->
                    outlook.losses().driveRoom(unfinished, candidate)
                            + besidePair[open][candidate.index()];
            case CASE ->
                    outlook.losses()
                                    .caseAlone(
                                            unfinished,
                                            candidate,
                                            besidePair[open][candidate.index()])
                            + outlook.losses().caseSound(unfinished, candidate);
            case SECOND_DRIVE ->
                    outlook.losses().watts(candidate)
                            + outlook.losses()
                                    .secondRoom(
                                            unfinished,
                                            unfinished.choices()[Slot.DRIVE.ordinal()],
                                            candidate);
            case COOLER -> outlook.losses().cooler(unfinished, candidate);
            case FANS -> outlook.losses().fans(unfinished, candidate);
            default -> 0;
        };
    }

    private void copy(int level, int open) {
        System.arraycopy(least[level][open], 0, least[level + 1][open], 0, sets);
        for (int w = 0; w < worth.length; w++) {
            System.arraycopy(net[level][open][w], 0, net[level + 1][open][w], 0, sets);
        }
    }

    /** Sums up what is open at a level, for the supplier sets that the level before left alive. */
    Bounder.AliveSets sumUp(int level) {
        Bounder.AliveSets left = alive[level].copyOf(before(level));
        for (int i = 0; i < left.count(); i++) {
            sumUp(level, left.get(i));
        }
        return left;
    }

    /** Supplier sets that a level can count on: what the one before has left alive. */
    private Bounder.AliveSets before(int level) {
        return level == PAIR ? pairSets : alive[Math.max(0, level - 1)];
    }

    /** From now on only supplier sets that are alive beside the pair count there. */
    void keepAlivePair() {
        pairSets.copyOf(alive[PAIR]);
    }

    private void sumUp(int level, int s) {
        long sum = 0;
        for (int open = level; open < LEVELS; open++) {
            sum += Math.min(least[level][open][s], Pricing.notToBeHad());
        }
        Couple driven = drives.couple(level);
        int[] housed = housing.slots(level);
        Couple house = housing.couple(level);
        leastSum[level][s] =
                sum + more(level, drives.slots(), driven, s) + more(level, housed, house, s);
        for (int w = 0; w < worth.length; w++) {
            double most = 0;
            for (int open = level; open < LEVELS; open++) {
                most += net[level][open][w][s];
            }
            netSum[level][w][s] =
                    most
                            + less(level, drives.slots(), driven, w, s)
                            + less(level, housed, house, w, s);
        }
    }

    /** What coupled slots cost more together than apart, while all are open. */
    private long more(int level, int[] slots, Couple couple, int s) {
        return couple == null
                ? 0
                : Math.max(
                        0,
                        Math.min(couple.least(s), Pricing.notToBeHad())
                                - leastApart(level, slots, s));
    }

    /** Least price of some open slots, each by itself. */
    long leastApart(int level, int[] slots, int s) {
        long apart = 0;
        for (int slot : slots) {
            apart += Math.min(least[level][slot][s], Pricing.notToBeHad());
        }
        return apart;
    }

    /**
     * What coupled slots gain together over what they gain apart, while all are open; 0 or less.
     */
    private double less(int level, int[] slots, Couple couple, int w, int s) {
        return couple == null ? 0 : Math.min(0, couple.net(w, s) - netApart(level, slots, w, s));
    }

    /** Most net gain of some open slots, each by itself. */
    double netApart(int level, int[] slots, int w, int s) {
        double apart = 0;
        for (int slot : slots) {
            apart += net[level][slot][w][s];
        }
        return apart;
    }
}
