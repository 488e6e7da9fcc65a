package rigbrief.search;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;

/** Supply, memory, case, cooler and fans where points count. */
final class HousingSlots implements Housing {
    private static final int PAIR = OpenSlots.PAIR;

    private final OpenSlots slots;
    private final Outlook outlook;
    private final Rounds rounds;
    private final int supplyLevel;
    private final int memoryLevel;
    private final int caseLevel;
    private final int coolerLevel;
    private final int fansLevel;
    private final int[] feeding;
    private final int[] warming;
    private final int[] sheltering;
    private final int[] cooling;
    private final SlotTable supplies;
    private final SlotTable kits;
    private final SlotTable cases;
    private final SlotTable coolers;
    private final FansApart fans;
    private final Coolings coolings;
    private final CoolerContest inACase;
    private final Shelters sheltersBesidePair;
    private final Housings housings;
    private final Feeds feedsBesidePair;
    private final Feeds feedsOnBoard;
    private final Map<Outlook.Pair, Feeds.Known> feedsKnown = new IdentityHashMap<>();
    private Feeds.Known feeds;
    private final long[] leastInside;
    private final double[][] netInside;
    private final int[] rate;
    private final double[] kitGain;
    private final double[] caseAlone;
    private final double[] caseMost;
    private final double[] coolerMost;
    private int kit;
    private long tried;

    HousingSlots(OpenSlots slots, Outlook outlook, List<Slot> order, Rounds rounds) {
        this.slots = slots;
        this.outlook = outlook;
        this.rounds = rounds;
        this.supplyLevel = order.indexOf(Slot.SUPPLY);
        this.memoryLevel = order.indexOf(Slot.MEMORY);
        this.caseLevel = order.indexOf(Slot.CASE);
        this.coolerLevel = order.indexOf(Slot.COOLER);
        this.fansLevel = order.indexOf(Slot.FANS);
        this.feeding = new int[] {supplyLevel, memoryLevel, caseLevel, coolerLevel, fansLevel};
        this.warming = new int[] {memoryLevel, caseLevel, coolerLevel, fansLevel};
        this.sheltering = new int[] {caseLevel, coolerLevel, fansLevel};
        this.cooling = new int[] {coolerLevel, fansLevel};
        this.supplies = slots.table(supplyLevel);
        this.kits = slots.table(memoryLevel);
        this.cases = slots.table(caseLevel);
        this.coolers = slots.table(coolerLevel);
        double[] worth = slots.worth();
        int sets = slots.sets();
        this.fans = new FansApart(slots.table(fansLevel), worth, sets);
        this.coolings = new Coolings(coolers, worth, sets, fans);
        this.inACase = new CoolerContest(coolers, worth, sets, fans);
        this.sheltersBesidePair =
                new Shelters(
                        cases,
                        coolers,
                        slots.pairs(),
                        worth,
                        sets,
                        inACase,
                        outlook.sound().order(),
                        true);
        this.housings = new Housings(kits, worth, sets, this::shelters);
        this.feedsBesidePair = new Feeds(supplies, kits, worth, sets);
        this.feedsOnBoard = new Feeds(supplies, kits, worth, sets);
        this.leastInside = new long[sets];
        this.netInside = new double[worth.length][sets];
        this.rate = new int[kits.size()];
        this.kitGain = new double[kits.size()];
        this.caseAlone = new double[cases.size()];
        this.caseMost = new double[cases.size()];
        this.coolerMost = new double[coolers.size()];
    }

    private Shelters shelters() {
        return new Shelters(
                cases,
                coolers,
                slots.pairs(),
                slots.worth(),
                slots.sets(),
                inACase,
                SoundOutlook.CHEAPEST,
                false);
    }

    @Override
    public long tried() {
        return tried;
    }

    @Override
    public int[] slots(int level) {
        if (level > coolerLevel) {
            return NONE;
        }
        if (level > caseLevel) {
            return rounds.seen(level, coolerLevel) == Rounds.MOST - 1 ? cooling : NONE;
        }
        if (rounds.seen(level, caseLevel) < 0) {
            return feeds != null && level >= PAIR && level <= supplyLevel ? feeding : NONE;
        }
        return level <= memoryLevel ? warming : sheltering;
    }

    @Override
    public Couple couple(int level) {
        if (slots(level).length == 0) {
            return null;
        }
        if (level > caseLevel) {
            return coolings;
        }
        if (rounds.seen(level, caseLevel) < 0) {
            return rounds.past(level, PAIR) ? feedsOnBoard : feedsBesidePair;
        }
        return level <= memoryLevel ? housings : housings.shelters(kit);
    }

    /** Reckons with what supplies and memory leave to case and cooler, for the sets alive there. */
    @Override
    public boolean besidePair(Unfinished unfinished) {
        feeds = feedsKnown.computeIfAbsent(unfinished.pair(), any -> feeds(unfinished));
        fillFeeds(PAIR, feedsBesidePair);
        return true;
    }

    @Override
    public boolean knows(Outlook.Pair pair) {
        return feedsKnown.containsKey(pair);
    }

    @Override
    public void forgetPair() {
        feeds = null;
    }

    /** Takes note of the kit, if that is what is decided. */
    @Override
    public void pass(int level, Candidate candidate) {
        if (level == memoryLevel) {
            kit = candidate.index();
        }
    }

    @Override
    public void board(int level) {
        if (level == PAIR && feeds != null) {
            fillFeeds(level + 1, feedsOnBoard);
        }
    }

    @Override
    public boolean reckon(int level, int open, int round, Unfinished unfinished) {
        if (open == caseLevel) {
            return reckonHousing(level, round, unfinished);
        }
        boolean last = open == coolerLevel && round == Rounds.MOST - 1;
        return !last || reckonCoolings(level, unfinished);
    }

    private void fillFeeds(int level, Feeds into) {
        into.fill(slots.kept(level), feeds, left(level, supplyLevel), left(level, memoryLevel));
    }

    private Feeds.Left left(int level, int open) {
        return new Feeds.Left(slots.domain(level, open), slots.losses(level, open));
    }

    /** Cases, coolers and fans by classes of kits, over all supplier sets that are alive. */
    private Feeds.Known feeds(Unfinished unfinished) {
        FeedClasses classes =
                FeedClasses.of(
                        unfinished,
                        outlook.sound(),
                        supplies,
                        slots.domain(PAIR, supplyLevel),
                        kits,
                        slots.domain(PAIR, memoryLevel),
                        slots.table(PAIR),
                        slots.domain(PAIR, PAIR));
        double[] bestLevel = new double[cases.size()];
        for (int i = 0; i < cases.size(); i++) {
            if (SlotTable.has(slots.domain(PAIR, caseLevel), i)) {
                caseAlone[i] = slots.openGain(PAIR, caseLevel, i);
                bestLevel[i] = outlook.sound().knownLevelInCase(unfinished, cases.candidate(i));
            }
        }
        // Sets that can't reach what is known by now never will: they stay without any gain.
        Bounder.AliveSets all = slots.alive(PAIR);
        takeInside(PAIR, all);
        Beside beside = beside(unfinished, classes.quietest(), classes.loudest());
        int rates = classes.rates().size();
        long[][] leastOf = new long[rates][slots.sets()];
        double[][][] netOf = new double[rates][slots.worth().length][slots.sets()];
        for (int r = 0; r < rates; r++) {
            unfinished.assume(classes.rates().get(r));
            shelter(all, beside, bestLevel, unfinished);
            Couple.clear(leastOf[r], netOf[r]);
            for (int k = 0; k < all.count(); k++) {
                int s = all.get(k);
                leastOf[r][s] = sheltersBesidePair.least(s);
                for (int w = 0; w < netInside.length; w++) {
                    netOf[r][w][s] = sheltersBesidePair.net(w, s);
                }
            }
            unfinished.assume(null);
        }
        return new Feeds.Known(classes.kits(), leastOf, netOf);
    }

    /** Cases with coolers beside a pair and any supply, at the memory rates that are assumed. */
    private void shelter(
            Bounder.AliveSets sets, Beside beside, double[] bestLevel, Unfinished unfinished) {
        long[] left = slots.domain(PAIR, caseLevel).clone();
        for (int k = 0; k < coolers.size(); k++) {
            coolerMost[k] =
                    SlotTable.has(slots.domain(PAIR, coolerLevel), k)
                            ? beside.loss(
                                    outlook.sound().openLevelDba(unfinished, coolers.candidate(k)))
                            : Double.NEGATIVE_INFINITY;
        }
        for (int i = 0; i < cases.size(); i++) {
            if (SlotTable.has(left, i)) {
                unfinished.decide(cases.candidate(i));
                caseMost[i] = caseAlone[i] + beside.loss(bestLevel[i]);
                if (caseMost[i] == Double.NEGATIVE_INFINITY) {
                    left[i >> 6] &= ~(1L << i);
                }
            }
        }
        unfinished.undo(Slot.CASE);
        fill(sheltersBesidePair, PAIR, sets, left, beside, unfinished);
    }

    /** What coolers lose beside any of the supplies that are left. */
    private interface Beside extends CoolerContest.Inside {
        /** What a level loses in what is decided of the case. */
        double loss(double level);
    }

    private Beside beside(Unfinished unfinished, Supply quietest, Supply loudest) {
        double[] open = outlook.losses().open(unfinished, quietest, loudest);
        return new Beside() {
            @Override
            public double mostOfAll() {
                return loss(outlook.sound().leastOfFans(unfinished));
            }

            @Override
            public double most(int cooler) {
                return of(
                        cooler,
                        outlook.sound()
                                .knownLevelWithCooler(unfinished, coolers.candidate(cooler)));
            }

            @Override
            public double mostBare(int cooler) {
                return of(
                        cooler,
                        outlook.sound().knownLevelBare(unfinished, coolers.candidate(cooler)));
            }

            @Override
            public double best(int cooler) {
                return of(
                        cooler,
                        outlook.sound().levelWithCooler(unfinished, coolers.candidate(cooler)));
            }

            @Override
            public double bare(int cooler) {
                return of(cooler, outlook.sound().levelBare(unfinished, coolers.candidate(cooler)));
            }

            private double of(int cooler, double level) {
                return outlook.losses().watts(coolers.candidate(cooler)) + loss(level);
            }

            @Override
            public double loss(double level) {
                return outlook.losses().between(unfinished, level, quietest, loudest, open);
            }
        };
    }

    /** Coolers with fans in the case that is decided. */
    private boolean reckonCoolings(int level, Unfinished unfinished) {
        Bounder.AliveSets left = slots.kept(level + 1);
        fans.take(left, slots.domain(level + 1, fansLevel));
        coolings.begin(left, slots.domain(level + 1, coolerLevel));
        return slots.keep(
                level + 1, coolerLevel, cooler -> coolings.take(left, cooler, inside(unfinished)));
    }

    private CoolerContest.Inside inside(Unfinished unfinished) {
        return new CoolerContest.Inside() {
            @Override
            public double mostOfAll() {
                return 0;
            }

            @Override
            public double most(int cooler) {
                Candidate candidate = coolers.candidate(cooler);
                return outlook.losses()
                        .cooler(
                                unfinished,
                                candidate,
                                outlook.sound().knownLevelWithCooler(unfinished, candidate));
            }

            @Override
            public double mostBare(int cooler) {
                Candidate candidate = coolers.candidate(cooler);
                return outlook.losses()
                        .cooler(
                                unfinished,
                                candidate,
                                outlook.sound().knownLevelBare(unfinished, candidate));
            }

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
    private boolean reckonHousing(int level, int round, Unfinished unfinished) {
        if (round > 0) {
            long[] left = housings.casesLeft(kit);
            return slots.keep(level + 1, caseLevel, i -> SlotTable.has(left, i));
        }
        long[] kitsLeft = slots.domain(level + 1, memoryLevel);
        for (int m = 0; m < kits.size(); m++) {
            if (SlotTable.has(kitsLeft, m)) {
                rate[m] = outlook.rateWith(unfinished, kits.candidate(m));
                kitGain[m] = slots.openGain(level + 1, memoryLevel, m);
            }
        }
        boolean out =
                housings.fill(
                        slots.kept(level + 1),
                        kitsLeft,
                        rate,
                        kitGain,
                        slots.domain(level + 1, caseLevel),
                        (shelters, m, cases) -> {
                            unfinished.decide(kits.candidate(m));
                            shelter(level, shelters, cases, unfinished);
                            unfinished.undo(Slot.MEMORY);
                        });
        if (out) {
            slots.refresh(level + 1, memoryLevel);
        }
        return !SlotTable.empty(kitsLeft);
    }

    /** What coolers and fans are to be had for apart from each other. */
    private void takeInside(int level, Bounder.AliveSets sets) {
        fans.take(sets, slots.domain(level, fansLevel));
        for (int k = 0; k < sets.count(); k++) {
            int s = sets.get(k);
            leastInside[s] = slots.leastApart(level, cooling, s);
            for (int w = 0; w < netInside.length; w++) {
                netInside[w][s] = slots.netApart(level, cooling, w, s);
            }
        }
    }

    /** Whether some case was taken out. */
    private boolean shelter(int level, Shelters shelters, long[] left, Unfinished unfinished) {
        for (int i = 0; i < cases.size(); i++) {
            if (SlotTable.has(left, i)) {
                Candidate candidate = cases.candidate(i);
                caseAlone[i] =
                        cases.gain(i)
                                + outlook.losses()
                                        .caseAlone(
                                                unfinished,
                                                candidate,
                                                slots.besidePair(caseLevel)[i]);
                caseMost[i] = caseAlone[i] + outlook.losses().caseSound(unfinished, candidate);
            }
        }
        Bounder.AliveSets sets = slots.kept(level + 1);
        takeInside(level + 1, sets);
        Arrays.fill(coolerMost, 0);
        return fill(shelters, level + 1, sets, left, inside(unfinished), unfinished);
    }

    /** Fills cases with coolers from what was reckoned of both; whether some case was taken out. */
    private boolean fill(
            Shelters shelters,
            int level,
            Bounder.AliveSets sets,
            long[] left,
            CoolerContest.Inside inside,
            Unfinished unfinished) {
        boolean out =
                shelters.fill(
                        sets,
                        left,
                        slots.domain(level, coolerLevel),
                        caseAlone,
                        caseMost,
                        coolerMost,
                        leastInside,
                        netInside,
                        pcCase -> {
                            unfinished.decide(cases.candidate(pcCase));
                            return inside;
                        });
        unfinished.undo(Slot.CASE);
        tried += shelters.tried();
        return out;
    }
}
