package rigbrief.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import rigbrief.assess.Pricing;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
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

    /**
     * Slots whose losses are reckoned anew once others are decided, for some in two rounds: each
     * round waits for all of its slots.
     */
    private static final Map<Slot, List<List<Slot>>> RECKONED_BEHIND =
            new EnumMap<>(
                    Map.of(
                            Slot.CASE,
                            List.of(List.of(Slot.SUPPLY), List.of(Slot.SUPPLY, Slot.MEMORY)),
                            Slot.MEMORY,
                            List.of(List.of(Slot.BOARD)),
                            Slot.DRIVE,
                            List.of(List.of(Slot.BOARD)),
                            Slot.SECOND_DRIVE,
                            List.of(List.of(Slot.BOARD, Slot.DRIVE)),
                            Slot.COOLER,
                            List.of(
                                    List.of(Slot.CASE, Slot.SUPPLY),
                                    List.of(Slot.CASE, Slot.SUPPLY, Slot.MEMORY)),
                            Slot.FANS,
                            List.of(
                                    List.of(Slot.CASE, Slot.COOLER, Slot.SUPPLY),
                                    List.of(
                                            Slot.CASE, Slot.COOLER, Slot.SUPPLY, Slot.MEMORY))));

    /** The same where only money counts: nothing is lost there, but not everything will do. */
    private static final Map<Slot, List<List<Slot>>> RECKONED_FOR_MONEY =
            new EnumMap<>(
                    Map.of(
                            Slot.CASE,
                            List.of(List.of(Slot.BOARD), List.of(Slot.BOARD, Slot.MEMORY)),
                            Slot.MEMORY,
                            List.of(List.of(Slot.BOARD))));

    private static final int ROUNDS = 2;

    /** Stands for no board yet among the numbers of places. */
    private static final int NO_PLACES = -1;

    /** Most pairs whose drives are remembered. */
    private static final int MOST_KNOWN = 200;

    /** Slots that lose points beside a processor and a card. */
    private static final List<Slot> LOSING =
            List.of(Slot.SUPPLY, Slot.BOARD, Slot.CASE, Slot.MEMORY, Slot.DRIVE);

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
    private final double[][] besidePair = new double[LEVELS][];
    private final double[][][] reckoned = new double[LEVELS][ROUNDS][];
    private final int[][] reckonedBehind = new int[LEVELS][ROUNDS];
    private final boolean[] behindReckoned = new boolean[LEVELS];
    private final boolean[] touched = new boolean[LEVELS];
    private final int[][] related = new int[LEVELS][];
    private final int caseLevel;
    private final int coolerLevel;
    private final int memoryLevel;
    private final boolean warm;
    private final int[] bothDrives;
    private final int fansLevel;
    private final boolean fansFollow;
    private final int[] sheltering;
    private final int[] cooling;
    private final int[] warming;
    private final int supplyLevel;
    private final int[] feeding;
    private final Feeds feedsBesidePair;
    private final Feeds feedsOnBoard;
    private final Map<Outlook.Pair, Feeds.Known> feedsKnown = new IdentityHashMap<>();
    private Feeds.Known feeds;
    private final double[] supplyGain;
    private final FansApart fans;
    private final Coolings coolings;
    private final long[] leastInside;
    private final double[][] netInside;
    private final Shelters[] shelters = new Shelters[ROUNDS];
    private final Housings housings;
    private final int[] rate;
    private final double[] kitGain;
    private int kit;
    private final double[] caseAlone;
    private final double[] caseMost;
    private final int firstDrive;
    private final int secondDrive;
    private final DrivePairs.Bounds driveBounds;
    private final DriveRoom driveRoom;
    private final DrivePairs[] drives = new DrivePairs[LEVELS + 1];
    private final Map<Outlook.Pair, Map<DrivesKey, DrivePairs>> drivesKnown =
            new IdentityHashMap<>();
    private final long[][] leastSum;
    private final double[][][] netSum;
    private final long[] leastWith;
    private final double[][] netWith;
    private final Bounder.AliveSets aliveWith;

    OpenSlots(Problem problem, Objective objective, List<Slot> order, double[] worth, int sets) {
        this.problem = problem;
        this.objective = objective;
        this.order = order;
        this.pairs = problem.tables().pairs(problem);
        this.outlook = problem.tables().outlook(problem);
        this.worth = worth;
        this.sets = sets;
        this.caseLevel = levelOf(Slot.CASE);
        this.coolerLevel = levelOf(Slot.COOLER);
        this.memoryLevel = levelOf(Slot.MEMORY);
        this.warm =
                objective.perPoint() > 0
                        && levelOf(Slot.SUPPLY) < memoryLevel
                        && memoryLevel < caseLevel
                        && caseLevel < coolerLevel;
        this.fansLevel = levelOf(Slot.FANS);
        this.fansFollow = coolerLevel < fansLevel;
        this.sheltering = new int[] {caseLevel, coolerLevel, fansLevel};
        this.cooling = new int[] {coolerLevel, fansLevel};
        this.warming = new int[] {memoryLevel, caseLevel, coolerLevel, fansLevel};
        this.supplyLevel = levelOf(Slot.SUPPLY);
        this.feeding = new int[] {supplyLevel, memoryLevel, caseLevel, coolerLevel, fansLevel};
        this.firstDrive = levelOf(Slot.DRIVE);
        this.secondDrive = levelOf(Slot.SECOND_DRIVE);
        this.bothDrives = new int[] {firstDrive, secondDrive};
        this.least = new long[LEVELS + 1][LEVELS][sets];
        this.net = new double[LEVELS + 1][LEVELS][worth.length][sets];
        this.spent = new long[LEVELS + 1][sets];
        this.leastSum = new long[LEVELS + 1][sets];
        this.netSum = new double[LEVELS + 1][worth.length][sets];
        this.leastWith = new long[sets];
        this.netWith = new double[worth.length][sets];
        this.aliveWith = new Bounder.AliveSets(sets);
        for (int level = 0; level <= LEVELS; level++) {
            alive[level] = new Bounder.AliveSets(sets).fill();
        }
        Map<Slot, List<Candidate>> left =
                Dominance.undominated(
                        problem.assessor(), problem.candidates(), objective.perPoint() == 0);
        for (int level = 0; level < LEVELS; level++) {
            tables[level] = table(order.get(level));
            List<List<Slot>> rounds =
                    (objective.perPoint() > 0 ? RECKONED_BEHIND : RECKONED_FOR_MONEY)
                            .getOrDefault(order.get(level), List.of());
            for (int round = 0; round < ROUNDS; round++) {
                reckoned[level][round] = new double[tables[level].size()];
                reckonedBehind[level][round] =
                        round < rounds.size()
                                ? rounds.get(round).stream()
                                        .mapToInt(order::indexOf)
                                        .max()
                                        .orElse(LEVELS)
                                : LEVELS;
            }
            domains[0][level] = tables[level].domain(left.get(order.get(level)));
        }
        for (int level = 0; level < LEVELS; level++) {
            int by = level;
            related[by] =
                    IntStream.range(0, LEVELS)
                            .filter(open -> pairs.related(order.get(by), order.get(open)))
                            .toArray();
            refresh(0, level);
        }
        fans = new FansApart(tables[fansLevel], worth, sets);
        coolings = new Coolings(tables[coolerLevel], worth, sets, fans);
        leastInside = new long[sets];
        netInside = new double[worth.length][sets];
        for (int round = 0; round < ROUNDS; round++) {
            shelters[round] = shelters();
        }
        housings = new Housings(tables[memoryLevel], worth, sets, this::shelters);
        rate = new int[tables[memoryLevel].size()];
        kitGain = new double[tables[memoryLevel].size()];
        feedsBesidePair = new Feeds(tables[supplyLevel], tables[memoryLevel], worth, sets);
        feedsOnBoard = new Feeds(tables[supplyLevel], tables[memoryLevel], worth, sets);
        supplyGain = new double[tables[supplyLevel].size()];
        caseAlone = new double[tables[caseLevel].size()];
        caseMost = new double[tables[caseLevel].size()];
        driveRoom = new DriveRoom(problem, tables[firstDrive], tables[secondDrive]);
        driveBounds =
                new DrivePairs.Bounds(tables[firstDrive], tables[secondDrive], pairs, worth, sets);
        Arrays.fill(drives, drives(0, DrivePairs.NO_LOSS, null));
    }

    private Shelters shelters() {
        return new Shelters(
                tables[caseLevel], tables[coolerLevel], pairs, worth, sets, fans);
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
        if (level == firstDrive) {
            lookAtFirst(level, bothDrives, drives[level], index);
            return aliveWith;
        }
        int[] housed = housed(level);
        if (housed != null && housed[0] == level) {
            lookAtFirst(level, housed, housing(level), index);
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

    /** Levels of the slots that {@link #housing} couples at a level; null for none. */
    private int[] housed(int level) {
        if (caseLevel > coolerLevel || !fansFollow || level > coolerLevel) {
            return null;
        }
        if (level > caseLevel) {
            return objective.perPoint() > 0 && round(level, coolerLevel) == ROUNDS - 1
                    ? cooling
                    : null;
        }
        if (round(level, caseLevel) < 0) {
            return feeds != null && level >= PAIR && level <= supplyLevel ? feeding : null;
        }
        return warm && level <= memoryLevel ? warming : sheltering;
    }

    /** What is known of cooler and fans together, of case and memory with them, while all are open. */
    private Couple housing(int level) {
        if (level > caseLevel) {
            return coolings;
        }
        if (round(level, caseLevel) < 0) {
            boolean onBoard = level > PAIR + 1 || (level == PAIR + 1 && behindReckoned[PAIR]);
            return onBoard ? feedsOnBoard : feedsBesidePair;
        }
        if (!warm) {
            return shelters[round(level, caseLevel)];
        }
        return level <= memoryLevel ? housings : housings.shelters(kit);
    }

    /** Goes from a level to the next by a candidate; false when that leaves a slot without any. */
    boolean push(int level, Candidate candidate) {
        gained[level + 1] = gained[level] + tables[level].gain(candidate.index());
        drives[level + 1] = drives[level];
        behindReckoned[level] = false;
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
                touched[open] = true;
                refresh(level + 1, open);
            } else {
                touched[open] = false;
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
            copy[open] = domains[level][open].clone();
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

    private void refresh(int level, int open) {
        if (losses(level, open) != null) {
            refreshWithLosses(level, open);
            return;
        }
        long[] domain = domains[level][open];
        Bounder.AliveSets left = alive[parent(level)];
        for (int i = 0; i < left.count(); i++) {
            int s = left.get(i);
            least[level][open][s] = tables[open].leastMinor(domain, s);
            for (int w = 0; w < worth.length; w++) {
                net[level][open][w][s] = tables[open].mostNet(domain, s, w);
            }
        }
    }

    /** What the candidates of an open slot lose as far as a level knows; null when nothing. */
    private double[] losses(int level, int open) {
        int round = objective.perPoint() > 0 ? round(level, open) : -1;
        return round >= 0 ? reckoned[open][round] : level >= PAIR ? besidePair[open] : null;
    }

    /** The last round of reckoning that a level has seen of an open slot; -1 for none. */
    private int round(int level, int open) {
        for (int round = ROUNDS - 1; round >= 0; round--) {
            int behind = reckonedBehind[open][round];
            if (level > behind + 1 || (level == behind + 1 && behindReckoned[behind])) {
                return round;
            }
        }
        return -1;
    }

    /** Points of a candidate of an open slot, as far as a level knows. */
    private double openGain(int level, int open, int index) {
        double[] losses = losses(level, open);
        return losses == null
                ? tables[open].openGain(index)
                : tables[open].gain(index) + losses[index];
    }

    private void refreshWithLosses(int level, int open) {
        long[] domain = domains[level][open];
        double[] losses = losses(level, open);
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
                double gain = tables[open].gain(i) + losses[i];
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

    /** Forgets what the candidates lose beside a processor and a card. */
    void withoutLosses() {
        for (Slot slot : LOSING) {
            besidePair[levelOf(slot)] = null;
        }
        drives[PAIR] = drives[0];
        feeds = null;
    }

    /** Reckons what the candidates lose beside the processor and the card that are decided. */
    void reckonLosses(Unfinished unfinished) {
        if (objective.perPoint() == 0) {
            return;
        }
        for (Slot slot : LOSING) {
            int open = levelOf(slot);
            besidePair[open] = outlook.lossesBesidePair(slot, unfinished);
            refreshWithLosses(PAIR, open);
        }
        if (outlook.drivesMatter()) {
            drives[PAIR] = drives(PAIR, unfinished);
        }
    }

    /**
     * Reckons anew what the candidates of open slots lose, now that a level's slot is decided, and
     * takes out memory with which a must is missed; false when none is left.
     */
    boolean reckon(int level, Unfinished unfinished) {
        behindReckoned[level] = true;
        for (int open = level + 1; open < LEVELS; open++) {
            for (int round = 0; round < ROUNDS; round++) {
                if (reckonedBehind[open][round] == level
                        && (round + 1 == ROUNDS || reckonedBehind[open][round + 1] != level)
                        && (!reckon(level, open, reckoned[open][round], unfinished)
                                || !reckonHousing(level, open, round, unfinished)
                                || !reckonCoolings(level, open, round, unfinished))) {
                    return false;
                }
            }
        }
        if (level == PAIR && feeds != null) {
            fillFeeds(level + 1, feedsOnBoard);
        }
        if (level + 1 <= firstDrive) {
            if (!placeDrives(level, unfinished)) {
                return false;
            }
            drives[level + 1] = drives(level + 1, unfinished);
        }
        return true;
    }

    /** Takes out drives that find no place beside any other, once board and case are decided. */
    private boolean placeDrives(int level, Unfinished unfinished) {
        boolean now = order.get(level) == Slot.BOARD || order.get(level) == Slot.CASE;
        if (!now || !DriveRoom.decided(unfinished)) {
            return true;
        }
        long[][] beside = driveRoom.beside(unfinished);
        long[] seconds = domains[level + 1][secondDrive];
        long[] reached = new long[seconds.length];
        boolean left =
                keep(
                        level + 1,
                        firstDrive,
                        i -> {
                            long[] row =
                                    pairs.row(
                                            tables[firstDrive].candidate(i), Slot.SECOND_DRIVE);
                            boolean any = false;
                            for (int k = 0; k < seconds.length; k++) {
                                long with =
                                        seconds[k]
                                                & beside[i][k]
                                                & (row == null ? -1 : row[k]);
                                reached[k] |= with;
                                any |= with != 0;
                            }
                            return any;
                        });
        return left && keep(level + 1, secondDrive, j -> SlotTable.has(reached, j));
    }

    /** What is known of both drives depends on what is left of them, and on places on the board. */
    private record DrivesKey(List<Long> left, int places, List<Long> beside) {}

    /** Both drives as far as a level knows. */
    private DrivePairs drives(int level, Unfinished unfinished) {
        List<Long> left = new ArrayList<>();
        for (int slot : bothDrives) {
            for (long word : domains[level][slot]) {
                left.add(word);
            }
        }
        long[][] beside = DriveRoom.decided(unfinished) ? driveRoom.beside(unfinished) : null;
        List<Long> besideEach = new ArrayList<>();
        for (int i = 0; beside != null && i < beside.length; i++) {
            if (SlotTable.has(domains[level][firstDrive], i)) {
                for (long word : beside[i]) {
                    besideEach.add(word);
                }
            }
        }
        boolean placed = objective.perPoint() > 0 && unfinished.has(Slot.BOARD);
        int places = placed ? outlook.room().m2Places(unfinished) : NO_PLACES;
        return drivesKnown(unfinished)
                .computeIfAbsent(
                        new DrivesKey(left, places, besideEach),
                        any ->
                                drives(
                                        level,
                                        placed
                                                ? (first, second) ->
                                                        outlook.losses()
                                                                .drivesRoom(
                                                                        unfinished, first, second)
                                                : DrivePairs.NO_LOSS,
                                        beside));
    }

    /** What is known of both drives beside a pair. */
    private Map<DrivesKey, DrivePairs> drivesKnown(Unfinished unfinished) {
        if (drivesKnown.size() > MOST_KNOWN) {
            drivesKnown.clear();
        }
        return drivesKnown.computeIfAbsent(
                outlook.drivesMatter() ? unfinished.pair() : null, any -> new HashMap<>());
    }

    private DrivePairs drives(int level, DrivePairs.PlacesLoss places, long[][] beside) {
        double[] gain = new double[tables[firstDrive].size()];
        for (int i = 0; i < gain.length; i++) {
            gain[i] =
                    besidePair[firstDrive] == null
                            ? tables[firstDrive].openGain(i)
                            : tables[firstDrive].gain(i) + besidePair[firstDrive][i];
        }
        return driveBounds.of(
                domains[level][firstDrive], domains[level][secondDrive], gain, places, beside);
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
        refresh(level + 1, open);
        return true;
    }

    /**
     * Reckons with what supplies and memory leave to case and cooler beside the pair that is
     * decided, for the supplier sets that are alive there.
     */
    void reckonFeeds(Unfinished unfinished) {
        if (!warm || !fansFollow) {
            return;
        }
        feeds = feedsKnown.computeIfAbsent(unfinished.pair(), any -> feeds(unfinished));
        fillFeeds(PAIR, feedsBesidePair);
    }

    private void fillFeeds(int level, Feeds into) {
        for (int i = 0; i < supplyGain.length; i++) {
            supplyGain[i] = openGain(level, supplyLevel, i);
        }
        for (int m = 0; m < kitGain.length; m++) {
            kitGain[m] = openGain(level, memoryLevel, m);
        }
        into.fill(
                alive[parent(level)],
                feeds,
                domains[level][supplyLevel],
                supplyGain,
                domains[level][memoryLevel],
                kitGain);
    }

    /** Cases, coolers and fans by classes of supplies and kits, over all supplier sets. */
    private Feeds.Known feeds(Unfinished unfinished) {
        FeedClasses classes =
                FeedClasses.of(
                        unfinished,
                        outlook.sound(),
                        tables[supplyLevel],
                        domains[PAIR][supplyLevel],
                        tables[memoryLevel],
                        domains[PAIR][memoryLevel],
                        tables[PAIR],
                        domains[PAIR][PAIR]);
        int rates = classes.rates().size();
        long[][][] leastOf = new long[classes.supplyClasses()][rates][];
        double[][][][] netOf = new double[classes.supplyClasses()][rates][][];
        SlotTable cases = tables[caseLevel];
        double[] bestLevel = new double[cases.size()];
        for (int i = 0; i < cases.size(); i++) {
            if (SlotTable.has(domains[PAIR][caseLevel], i)) {
                caseAlone[i] = openGain(PAIR, caseLevel, i);
                bestLevel[i] = outlook.sound().leastLevelInCase(unfinished, cases.candidate(i));
            }
        }
        // Sets that can't reach what is known by now never will: they stay without any gain.
        Bounder.AliveSets all = alive[PAIR];
        takeInside(PAIR, all);
        for (int r = 0; r < rates; r++) {
            unfinished.assume(classes.rates().get(r));
            for (int g = 0; g < classes.supplyClasses(); g++) {
                Coolings.Inside inside =
                        between(unfinished, classes.quietest(g), classes.loudest(g));
                Shelters at = shelters[0];
                long[] left = domains[PAIR][caseLevel].clone();
                double[] open =
                        outlook.losses()
                                .open(unfinished, classes.quietest(g), classes.loudest(g));
                for (int i = 0; i < cases.size(); i++) {
                    if (SlotTable.has(left, i)) {
                        unfinished.decide(cases.candidate(i));
                        caseMost[i] =
                                caseAlone[i]
                                        + outlook.losses()
                                                .between(
                                                        unfinished,
                                                        bestLevel[i],
                                                        classes.quietest(g),
                                                        classes.loudest(g),
                                                        open);
                        if (caseMost[i] == Double.NEGATIVE_INFINITY) {
                            left[i >> 6] &= ~(1L << i);
                        }
                    }
                }
                unfinished.undo(Slot.CASE);
                at.fill(
                        all,
                        left,
                        domains[PAIR][coolerLevel],
                        caseAlone,
                        caseMost,
                        leastInside,
                        netInside,
                        pcCase -> {
                            unfinished.decide(cases.candidate(pcCase));
                            return inside;
                        });
                unfinished.undo(Slot.CASE);
                leastOf[g][r] = new long[sets];
                netOf[g][r] = new double[worth.length][sets];
                Feeds.clear(leastOf[g][r], netOf[g][r]);
                for (int k = 0; k < all.count(); k++) {
                    int s = all.get(k);
                    leastOf[g][r][s] = at.least(s);
                    for (int w = 0; w < worth.length; w++) {
                        netOf[g][r][w][s] = at.net(w, s);
                    }
                }
            }
            unfinished.assume(null);
        }
        return new Feeds.Known(classes.supplyClass(), classes.kitClass(), leastOf, netOf);
    }

    private Coolings.Inside between(Unfinished unfinished, Supply quietest, Supply loudest) {
        SlotTable coolers = tables[coolerLevel];
        double[] open = outlook.losses().open(unfinished, quietest, loudest);
        return new Coolings.Inside() {
            @Override
            public double best(int cooler) {
                return of(cooler, outlook.sound().levelWithCooler(unfinished, coolers.candidate(cooler)));
            }

            @Override
            public double bare(int cooler) {
                return of(cooler, outlook.sound().levelBare(unfinished, coolers.candidate(cooler)));
            }

            private double of(int cooler, double level) {
                return outlook.losses().watts(coolers.candidate(cooler))
                        + outlook.losses().between(unfinished, level, quietest, loudest, open);
            }
        };
    }

    /** Coolers with fans in the case that is decided. */
    private boolean reckonCoolings(int level, int open, int round, Unfinished unfinished) {
        if (open != coolerLevel
                || round < ROUNDS - 1
                || objective.perPoint() == 0
                || caseLevel > coolerLevel
                || !fansFollow) {
            return true;
        }
        Bounder.AliveSets left = alive[parent(level + 1)];
        fans.take(left, domains[level + 1][fansLevel]);
        coolings.clear(left);
        return keep(
                level + 1,
                coolerLevel,
                cooler -> coolings.take(left, cooler, inside(unfinished)));
    }

    private Coolings.Inside inside(Unfinished unfinished) {
        SlotTable coolers = tables[coolerLevel];
        return new Coolings.Inside() {
            @Override
            public double best(int cooler) {
                return outlook.losses().cooler(unfinished, coolers.candidate(cooler));
            }

            @Override
            public double bare(int cooler) {
                return outlook.losses().bareCooler(unfinished, coolers.candidate(cooler));
            }
        };
    }

    /** Cases and coolers together; what is left of the coolers is known by now. */
    private boolean reckonHousing(int level, int open, int round, Unfinished unfinished) {
        if (open != caseLevel || caseLevel > coolerLevel || !fansFollow) {
            return true;
        }
        if (!warm) {
            long[] cases = domains[level + 1][caseLevel];
            if (shelter(level, shelters[round], cases, unfinished)) {
                refresh(level + 1, caseLevel);
            }
            return !SlotTable.empty(cases);
        }
        if (round > 0) {
            kit = unfinished.choices()[Slot.MEMORY.ordinal()].index();
            long[] left = housings.casesLeft(kit);
            return keep(level + 1, caseLevel, i -> SlotTable.has(left, i));
        }
        SlotTable kits = tables[memoryLevel];
        long[] kitsLeft = domains[level + 1][memoryLevel];
        for (int m = 0; m < kits.size(); m++) {
            if (SlotTable.has(kitsLeft, m)) {
                rate[m] = outlook.rateWith(unfinished, kits.candidate(m));
                kitGain[m] = openGain(level + 1, memoryLevel, m);
            }
        }
        boolean out =
                housings.fill(
                        alive[parent(level + 1)],
                        kitsLeft,
                        rate,
                        kitGain,
                        domains[level + 1][caseLevel],
                        (shelters, m, cases) -> {
                            unfinished.decide(kits.candidate(m));
                            shelter(level, shelters, cases, unfinished);
                            unfinished.undo(Slot.MEMORY);
                        });
        if (out) {
            refresh(level + 1, memoryLevel);
        }
        return !SlotTable.empty(kitsLeft);
    }

    /** What coolers and fans are to be had for apart from each other. */
    private void takeInside(int level, Bounder.AliveSets sets) {
        fans.take(sets, domains[level][fansLevel]);
        for (int k = 0; k < sets.count(); k++) {
            int s = sets.get(k);
            leastInside[s] = leastApart(level, cooling, s);
            for (int w = 0; w < worth.length; w++) {
                netInside[w][s] = netApart(level, cooling, w, s);
            }
        }
    }

    /** Whether some case was taken out. */
    private boolean shelter(int level, Shelters shelters, long[] left, Unfinished unfinished) {
        SlotTable cases = tables[caseLevel];
        for (int i = 0; objective.perPoint() > 0 && i < cases.size(); i++) {
            if (SlotTable.has(left, i)) {
                Candidate candidate = cases.candidate(i);
                caseAlone[i] =
                        cases.gain(i)
                                + outlook.losses()
                                        .caseAlone(unfinished, candidate, besidePair[caseLevel][i]);
                caseMost[i] = caseAlone[i] + outlook.losses().caseSound(unfinished, candidate);
            }
        }
        Bounder.AliveSets sets = alive[parent(level + 1)];
        takeInside(level + 1, sets);
        Coolings.Inside inside = inside(unfinished);
        boolean out =
                shelters.fill(
                        sets,
                        left,
                        domains[level + 1][coolerLevel],
                        caseAlone,
                        caseMost,
                        leastInside,
                        netInside,
                        pcCase -> {
                            unfinished.decide(cases.candidate(pcCase));
                            return inside;
                        });
        unfinished.undo(Slot.CASE);
        return out;
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
        Couple bothDriven = level <= firstDrive ? drives[level] : null;
        int[] housed = housed(level);
        Couple housing = housed == null ? null : housing(level);
        leastSum[level][s] =
                sum + more(level, bothDrives, bothDriven, s) + more(level, housed, housing, s);
        for (int w = 0; w < worth.length; w++) {
            double most = 0;
            for (int open = level; open < LEVELS; open++) {
                most += net[level][open][w][s];
            }
            netSum[level][w][s] =
                    most
                            + less(level, bothDrives, bothDriven, w, s)
                            + less(level, housed, housing, w, s);
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

    private long leastApart(int level, int[] slots, int s) {
        long apart = 0;
        for (int slot : slots) {
            apart += Math.min(least[level][slot][s], Pricing.notToBeHad());
        }
        return apart;
    }

    /** What coupled slots gain together over what they gain apart, while all are open; 0 or less. */
    private double less(int level, int[] slots, Couple couple, int w, int s) {
        return couple == null
                ? 0
                : Math.min(0, couple.net(w, s) - netApart(level, slots, w, s));
    }

    private double netApart(int level, int[] slots, int w, int s) {
        double apart = 0;
        for (int slot : slots) {
            apart += net[level][slot][w][s];
        }
        return apart;
    }
}
