package rigbrief.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessment;
import rigbrief.assess.CaseAirs;
import rigbrief.assess.CoolersInCase;
import rigbrief.assess.Foresight;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.part.Cooler;
import rigbrief.part.CoolerType;
import rigbrief.part.Drive;
import rigbrief.part.Fan;
import rigbrief.part.Graphics;
import rigbrief.part.Part;
import rigbrief.part.PcCase;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;

/**
 * Lower bounds on the sound of an unfinished build, and whether it can be kept cool: open air
 * first, then every case with the best of its coolers and fans, then what is decided.
 */
final class SoundOutlook {
    private static final double CLOSE_DBA = 1e-6;

    /** Fans in cases to remember; what is forgotten is reckoned again when it is asked for. */
    private static final int MOST_AIRS = 50_000;

    /** Stands for no row: any cooler goes. */
    private static final long[] ANY = {};

    /** What a drive or a supply as loud as all fans would add. */
    private static final double AS_MUCH_AGAIN_DB = 3.01;

    /** Levels to remember over all pairs; eight bytes each. */
    private static final long MOST_LEVELS = 8_000_000;

    /** Coolers by strength, the strongest first; none before all. */
    private static final Comparator<Candidate> STRONGEST =
            Comparator.<Candidate>comparingDouble(
                            c -> c.none() ? 0 : ((Cooler) c.partOrNull()).resistanceKw())
                    .thenComparingDouble(c -> c.none() ? 0 : ((Cooler) c.partOrNull()).maxDba())
                    .thenComparingInt(Candidate::index);

    static final Comparator<Candidate> CHEAPEST =
            Comparator.<Candidate>comparingLong(c -> Arrays.stream(c.minorBySet()).min().orElse(0))
                    .thenComparingInt(Candidate::index);

    /**
     * The order in which to try coolers in a case: where quiet counts, what a strong one can't make
     * good no weaker one can; else the first one that will do is the best.
     */
    Comparator<Candidate> order() {
        return quietCounts ? STRONGEST : CHEAPEST;
    }

    /** Stands for the level where no cooler holds the processor. */
    static final double NO_COOLER = Double.MAX_VALUE;

    private final Problem problem;
    private final Brief brief;
    private final Foresight foresight;
    private final Outlook outlook;
    private final List<Cooler> coolers = new ArrayList<>();
    private final List<Candidate> coolersByStrength = new ArrayList<>();
    private final List<Candidate> casesByDamping = new ArrayList<>();
    private final boolean quietCounts;
    private final double mostDampingDb;
    private final double leastDriveDba;
    private final Map<AirKey, CaseAirs> airs = new HashMap<>();
    private final Map<FansKey, CaseAirs> airsWith = new HashMap<>();
    private final Map<List<Object>, Integer> likeCases = new HashMap<>();
    private final Map<List<Object>, Integer> likeCoolers = new HashMap<>();
    private final int[] likeCase;
    private final int[] likeCooler;
    private final int[] likeFans;
    private final Candidate noFans;
    private final List<Map<Foresight.Rates, Levels>> remembered = new ArrayList<>();
    private final Map<List<Long>, List<Candidate>> blowingBest = new HashMap<>();
    private final Map<Processor, BitSet> coolEnough = new IdentityHashMap<>();
    private final Map<long[], Map<long[], Candidate[]>> worthATry = new IdentityHashMap<>();
    private final Map<CoolerKind, InLastCase> inLastCase = new HashMap<>();
    private Outlook.Pair lastPair;
    private Foresight.Rates lastAssumed;
    private Candidate lastMemory;
    private Candidate lastBoard;
    private Levels levelsNow;
    private Levels lastLevels;
    private int lastCase;
    private int levelsMade;

    SoundOutlook(Problem problem, Foresight foresight, Outlook outlook) {
        this.problem = problem;
        this.brief = problem.assessor().brief();
        this.foresight = foresight;
        this.outlook = outlook;
        double damping = 0;
        for (Candidate candidate : problem.candidates().of(Slot.CASE)) {
            damping = Math.max(damping, ((PcCase) candidate.partOrNull()).dampingDb());
        }
        this.mostDampingDb = damping;
        double drive = Double.MAX_VALUE;
        for (Candidate candidate : problem.candidates().of(Slot.DRIVE)) {
            drive = Math.min(drive, driveDba(candidate.partOrNull()));
        }
        this.leastDriveDba = drive;
        for (Candidate candidate : problem.candidates().of(Slot.COOLER)) {
            coolers.add((Cooler) candidate.partOrNull());
        }
        coolersByStrength.addAll(problem.candidates().of(Slot.COOLER));
        coolersByStrength.sort(STRONGEST);
        casesByDamping.addAll(problem.candidates().of(Slot.CASE));
        casesByDamping.sort(
                Comparator.<Candidate>comparingDouble(c -> -((PcCase) c.partOrNull()).dampingDb())
                        .thenComparingInt(Candidate::index));
        this.quietCounts = problem.assessor().valued().wishes().weight("quiet") > 0;
        this.likeCase =
                problem.candidates().of(Slot.CASE).stream().mapToInt(this::likeCase).toArray();
        this.likeCooler =
                problem.candidates().of(Slot.COOLER).stream().mapToInt(this::likeCooler).toArray();
        this.likeFans = likeFans(problem.candidates().of(Slot.FANS));
        this.noFans =
                problem.candidates().of(Slot.FANS).stream()
                        .filter(Candidate::none)
                        .findFirst()
                        .orElse(null);
    }

    private static int[] likeFans(List<Candidate> candidates) {
        Map<List<Object>, Integer> first = new HashMap<>();
        return candidates.stream()
                .mapToInt(fans -> first.computeIfAbsent(air(fans), any -> fans.index()))
                .toArray();
    }

    /** A number of its own for each pair at some memory rates. */
    int numberBesidePair(Unfinished it) {
        return levels(it).number;
    }

    /** Number of the first case that air and sound can't tell from the one that is decided. */
    int likeCase(Unfinished it) {
        return likeCase[it.choices()[Slot.CASE.ordinal()].index()];
    }

    /** Number of the first cooler that air and sound can't tell from one. */
    int likeCooler(int index) {
        return likeCooler[index];
    }

    /** Number of the first fans that air can't tell from some others. */
    int likeFans(int index) {
        return likeFans[index];
    }

    double mostDampingDb() {
        return mostDampingDb;
    }

    /** Whether how quiet a build is counts, and not only whether it is quiet enough. */
    boolean quietCounts() {
        return quietCounts;
    }

    /** The least level with any cooler in open air, in dB(A); {@link #NO_COOLER} without one. */
    double leastLevelDba(Foresight.Pair bounds, Processor processor, Graphics graphics) {
        return leastLevelDba(bounds, processor, graphics, mostDampingDb);
    }

    private double leastLevelDba(
            Foresight.Pair bounds, Processor processor, Graphics graphics, double dampingDb) {
        double least = NO_COOLER;
        BitSet enough = coolEnough(processor);
        double quietest = Double.POSITIVE_INFINITY;
        for (Candidate candidate : coolersByStrength) {
            Cooler cooler = (Cooler) candidate.partOrNull();
            // In open air a weaker cooler is only worth a look when it is quieter at full speed.
            if (enough.get(candidate.index()) && (cooler == null || cooler.maxDba() < quietest)) {
                quietest = cooler == null ? quietest : cooler.maxDba();
                least =
                        Math.min(
                                least,
                                foresight.leastLevelDba(
                                        bounds, processor, graphics, cooler, dampingDb));
            }
        }
        return least;
    }

    /** Whether a level is over the most that the brief allows. */
    boolean tooLoud(double levelDba) {
        return brief.noise().mustDba().isPresent()
                && Math.round((levelDba - CLOSE_DBA) * 100)
                        > brief.noise().mustDba().getAsInt() * 100L;
    }

    /**
     * Whether each cooler can hold a processor at sustained power, were the case all open; computed
     * once.
     */
    BitSet coolEnough(Processor processor) {
        return coolEnough.computeIfAbsent(
                processor,
                any -> {
                    BitSet enough = new BitSet(coolers.size());
                    int low = 0;
                    int high = coolersByStrength.size();
                    while (low < high) {
                        int middle = (low + high) >>> 1;
                        Candidate cooler = coolersByStrength.get(middle);
                        if (cooler.none() || coolEnough(processor, cooler(cooler))) {
                            low = middle + 1;
                        } else {
                            high = middle;
                        }
                    }
                    for (Candidate cooler : coolersByStrength.subList(0, low)) {
                        enough.set(
                                cooler.index(),
                                !cooler.none() || coolEnough(processor, cooler(cooler)));
                    }
                    return enough;
                });
    }

    private boolean coolEnough(Processor processor, Cooler cooler) {
        boolean any = cooler != null || processor.boxedCooler().isPresent();
        return any && foresight.coolEnough(processor, cooler);
    }

    /** Least level with a cooler in a case, in dB(A). */
    double leastLevelDba(
            Outlook.Pair pair,
            Processor processor,
            Graphics graphics,
            Cooler cooler,
            PcCase pcCase) {
        return foresight.leastLevelDba(
                pair.bounds(), processor, graphics, cooler, pcCase.dampingDb());
    }

    /**
     * Least level with a cooler in open air beside the pair that is decided, at the memory's rate
     * as far as that is decided or assumed, in dB(A).
     */
    double openLevelDba(Unfinished it, Candidate cooler) {
        return foresight.leastLevelDba(
                outlook.bounds(it, it.pair()),
                (Processor) it.part(Slot.PROCESSOR),
                (Graphics) it.part(Slot.GRAPHICS),
                (Cooler) cooler.partOrNull(),
                mostDampingDb);
    }

    /** The least level of an unfinished build at the seat; plus infinity when it gets too hot. */
    double level(Unfinished it, Outlook.Pair pair) {
        double level = levelOfFans(it, pair);
        return level == Double.POSITIVE_INFINITY ? level : atSeat(it, level);
    }

    /** A level of fans with the sound of the drive added, and of the supply once it is decided. */
    double atSeat(Unfinished it, double levelDba) {
        double damping =
                it.has(Slot.CASE) ? ((PcCase) it.part(Slot.CASE)).dampingDb() : mostDampingDb;
        double drive = it.has(Slot.DRIVE) ? driveDba(it.part(Slot.DRIVE)) : leastDriveDba;
        double level = foresight.withDrive(levelDba, drive, damping);
        return it.has(Slot.SUPPLY)
                ? foresight.withSupply(
                        level, it.pair().bounds(), (Supply) it.part(Slot.SUPPLY), damping)
                : level;
    }

    /** A level of fans with the sound of the drive and of a supply that is not decided added. */
    double atSeat(Unfinished it, double levelDba, Supply supply) {
        double damping =
                it.has(Slot.CASE) ? ((PcCase) it.part(Slot.CASE)).dampingDb() : mostDampingDb;
        return foresight.withSupply(
                foresight.withDrive(levelDba, leastDriveDba, damping),
                it.pair().bounds(),
                supply,
                damping);
    }

    /**
     * A level of fans with the sound of the drives added, as far as they are decided, and of a
     * supply that is not, in dB(A) at its own place.
     */
    double atSeat(Unfinished it, double levelDba, double supplyDba) {
        double damping =
                it.has(Slot.CASE) ? ((PcCase) it.part(Slot.CASE)).dampingDb() : mostDampingDb;
        double drive = it.has(Slot.DRIVE) ? driveDba(it.part(Slot.DRIVE)) : leastDriveDba;
        double level = foresight.withDrive(levelDba, drive, damping);
        level = foresight.withDrive(level, driveDba(it.part(Slot.SECOND_DRIVE)), damping);
        return foresight.withDrive(level, supplyDba, damping);
    }

    /** The least level of fans beside what is decided, drives and supply left out. */
    double leastOfFans(Unfinished it) {
        if (!it.has(Slot.CASE) || it.has(Slot.COOLER)) {
            return levelOfFans(it, it.pair());
        }
        Candidate pcCase = it.choices()[Slot.CASE.ordinal()];
        double[] known = levels(it).best();
        if (Double.isNaN(known[pcCase.index()])) {
            known[pcCase.index()] = leastOverCoolers(it, pcCase);
        }
        return known[pcCase.index()];
    }

    /** Sound of a supply at its own place beside a pair, in dB(A). */
    double supplyDba(Outlook.Pair pair, Supply supply) {
        return foresight.supplyDba(pair.bounds(), supply);
    }

    /** The least level beside a pair of which nothing else is decided. */
    double openLevelDba(Outlook.Pair pair) {
        return foresight.withDrive(pair.leastLevelDba(), leastDriveDba, mostDampingDb);
    }

    private static double driveDba(Part drive) {
        return drive == null ? 0 : ((Drive) drive).dba();
    }

    private double levelOfFans(Unfinished it, Outlook.Pair pair) {
        if (!it.has(Slot.COOLER) || !it.has(Slot.CASE)) {
            return pair.leastLevelDba();
        }
        if (!it.has(Slot.BOARD)) {
            return leastLevelDba(
                    pair,
                    (Processor) it.part(Slot.PROCESSOR),
                    (Graphics) it.part(Slot.GRAPHICS),
                    (Cooler) it.part(Slot.COOLER),
                    (PcCase) it.part(Slot.CASE));
        }
        return sheltered(
                it, it.choices()[Slot.COOLER.ordinal()], it.choices()[Slot.FANS.ordinal()]);
    }

    /**
     * Looks at every case beside a pair: heat that has to go through one makes fans turn faster
     * than in open air. False when no case is cool and quiet enough.
     */
    boolean lookAtCases(Unfinished it) {
        Outlook.Pair pair = it.pair();
        if (!pair.casesSeen()) {
            pair.casesSeen(leastOverCases(it));
        }
        return pair.leastLevelDba() != Double.POSITIVE_INFINITY && !tooLoud(pair.leastLevelDba());
    }

    /** Cases in the order of what they could be at best, until none of the others could be less. */
    private double leastOverCases(Unfinished it) {
        double least = Double.POSITIVE_INFINITY;
        double lastDampingDb = Double.NaN;
        double open = Double.NaN;
        for (Candidate candidate : casesByDamping) {
            double dampingDb = ((PcCase) candidate.partOrNull()).dampingDb();
            if (dampingDb != lastDampingDb) {
                lastDampingDb = dampingDb;
                open =
                        leastLevelDba(
                                it.pair().bounds(),
                                (Processor) it.part(Slot.PROCESSOR),
                                (Graphics) it.part(Slot.GRAPHICS),
                                dampingDb);
            }
            if (open >= least) {
                break;
            }
            least = Math.min(least, leastLevelInCase(it, candidate));
        }
        return least;
    }

    /**
     * No more than {@link #leastLevelInCase}: what is known by now, so that nothing needs to be
     * reckoned.
     */
    double knownLevelInCase(Unfinished it, Candidate pcCase) {
        double known = levels(it).best()[pcCase.index()];
        return Double.isNaN(known) ? it.pair().leastLevelDba() : known;
    }

    /**
     * The least level in a case, at the memory's rate once that is decided; over the coolers of
     * which none is both stronger and quieter than another. Computed once for a pair and a rate.
     */
    double leastLevelInCase(Unfinished it, Candidate pcCase) {
        double[] known = levels(it).best();
        int c = pcCase.index();
        if (Double.isNaN(known[c])) {
            known[c] = computeInCase(it, pcCase);
        }
        return known[c];
    }

    /**
     * Levels beside a pair at one memory rate, as far as they were asked for; not a number where
     * not.
     */
    static final class Levels {
        private final int number;
        private final double[] best;
        private final double[][] withCooler;
        private final double[][] bare;
        private final int coolers;
        private long held;

        private Levels(int number, int cases, int coolers) {
            this.number = number;
            best = new double[cases];
            Arrays.fill(best, Double.NaN);
            withCooler = new double[cases][];
            bare = new double[cases][];
            held = 3L * cases;
            this.coolers = coolers;
        }

        private double[] in(double[][] levels, int pcCase) {
            if (levels[pcCase] == null) {
                levels[pcCase] = new double[coolers];
                held += coolers;
                Arrays.fill(levels[pcCase], Double.NaN);
            }
            return levels[pcCase];
        }

        /** Least level in each case with the best cooler. */
        double[] best() {
            return best;
        }
    }

    private Levels levels(Unfinished it) {
        Candidate memory = it.choices()[Slot.MEMORY.ordinal()];
        Candidate board = it.choices()[Slot.BOARD.ordinal()];
        boolean asLast =
                it.pair() == lastPair
                        && it.assumed() == lastAssumed
                        && memory == lastMemory
                        && board == lastBoard;
        if (!asLast) {
            lastPair = it.pair();
            lastAssumed = it.assumed();
            lastMemory = memory;
            lastBoard = board;
            levelsNow = findLevels(it);
        }
        return levelsNow;
    }

    private Levels findLevels(Unfinished it) {
        Map<Foresight.Rates, Levels> ofPair = it.pair().levels();
        Levels known = ofPair.get(rates(it));
        if (known == null) {
            // What is forgotten is computed again when it is asked for.
            if (known(remembered) > MOST_LEVELS) {
                remembered.forEach(Map::clear);
                remembered.clear();
            }
            if (ofPair.isEmpty()) {
                remembered.add(ofPair);
            }
            known = new Levels(levelsMade++, likeCase.length, likeCooler.length);
            ofPair.put(rates(it), known);
        }
        return known;
    }

    private static long known(List<Map<Foresight.Rates, Levels>> remembered) {
        long sum = 0;
        for (Map<Foresight.Rates, Levels> ofPair : remembered) {
            for (Levels levels : ofPair.values()) {
                sum += levels.held;
            }
        }
        return sum;
    }

    /** The memory's rate once board and memory are decided or rates are assumed; 0 before. */
    private Foresight.Rates rates(Unfinished it) {
        if (it.assumed() != null) {
            return it.assumed();
        }
        Candidate memory = it.choices()[Slot.MEMORY.ordinal()];
        int mts = memory == null || !it.has(Slot.BOARD) ? 0 : outlook.rateWith(it, memory);
        return new Foresight.Rates(mts, mts);
    }

    private double computeInCase(Unfinished it, Candidate pcCase) {
        it.decide(pcCase);
        double least = leastOverCoolers(it, pcCase);
        it.undo(Slot.CASE);
        return least;
    }

    /** The least level in the case that is decided, over its coolers. */
    private double leastOverCoolers(Unfinished it, Candidate pcCase) {
        Levels levels = levels(it);
        double[] known = levels.in(levels.withCooler, likeCase[pcCase.index()]);
        double least = Double.POSITIVE_INFINITY;
        double energy = Double.POSITIVE_INFINITY;
        for (Candidate candidate : worthATry(it, pcCase)) {
            int k = likeCooler[candidate.index()];
            if (Double.isNaN(known[k])) {
                InLastCase kind = inCase(levels, it, candidate, null);
                double with = kind.coolers.leastEnergy(cooler(candidate), energy);
                double level = kind.coolers.levelDba(with);
                if (with < energy || with == Double.POSITIVE_INFINITY) {
                    known[k] = level; // Else it is only known to be no quieter.
                }
                kind.add(cooler(candidate), level);
                energy = with;
                least = Math.min(least, level);
            } else {
                least = Math.min(least, known[k]);
            }
            if (!quietCounts && !tooLoud(least + AS_MUCH_AGAIN_DB) && least < NO_COOLER) {
                // How quiet does not count: that something does is enough.
                return it.pair().leastLevelDba();
            }
        }
        return least;
    }

    /**
     * The coolers that go with the processor and into a case, without those than which a stronger
     * one is quieter; found once for cases and processors that the same ones go with.
     */
    private Candidate[] worthATry(Unfinished it, Candidate pcCase) {
        PairTable table = problem.tables().pairs(problem);
        long[] byCase = table.row(pcCase, Slot.COOLER);
        long[] byProcessor = table.row(it.choices()[Slot.PROCESSOR.ordinal()], Slot.COOLER);
        return worthATry
                .computeIfAbsent(byCase == null ? ANY : byCase, any -> new IdentityHashMap<>())
                .computeIfAbsent(
                        byProcessor == null ? ANY : byProcessor,
                        any -> worthATry(byCase, byProcessor));
    }

    private Candidate[] worthATry(long[] byCase, long[] byProcessor) {
        Map<Integer, Double> quietest = new HashMap<>();
        return coolersByStrength.stream()
                .filter(cooler -> byCase == null || SlotTable.has(byCase, cooler.index()))
                .filter(cooler -> byProcessor == null || SlotTable.has(byProcessor, cooler.index()))
                .filter(cooler -> quieterThanStronger(cooler, quietest))
                .toArray(Candidate[]::new);
    }

    private static boolean quieterThanStronger(Candidate candidate, Map<Integer, Double> quietest) {
        if (candidate.none()) {
            return true;
        }
        Cooler cooler = (Cooler) candidate.partOrNull();
        int kind = airKind(candidate);
        Double before = quietest.get(kind);
        if (before != null && before <= cooler.maxDba()) {
            return false;
        }
        quietest.put(kind, cooler.maxDba());
        return true;
    }

    /** Radiators of one size and thickness leave the same places to fans; so do all others. */
    private static int airKind(Candidate candidate) {
        Cooler cooler = cooler(candidate);
        return cooler == null || cooler.type() != CoolerType.LIQUID
                ? 0
                : cooler.radiatorMm() * 1_000
                        + cooler.thickness().map(l -> l.millimetres()).or(999);
    }

    /**
     * The least level with a cooler in the case that is decided and the best fans for it; computed
     * once for a pair and a memory rate, so without regard to what else memory is.
     */
    double levelWithCooler(Unfinished it, Candidate cooler) {
        Levels levels = levels(it);
        return level(levels, levels.withCooler, it, cooler, null);
    }

    /** The same without any fans added to those of the case. */
    double levelBare(Unfinished it, Candidate cooler) {
        Levels levels = levels(it);
        return level(levels, levels.bare, it, cooler, noFans);
    }

    private double level(
            Levels levels, double[][] of, Unfinished it, Candidate cooler, Candidate fans) {
        int k = likeCooler[cooler.index()];
        double[] known = levels.in(of, likeCase[it.choices()[Slot.CASE.ordinal()].index()]);
        if (Double.isNaN(known[k])) {
            known[k] = inCase(levels, it, cooler, fans).level(cooler(cooler));
        }
        return known[k];
    }

    /**
     * No more than {@link #levelWithCooler}: the most that is known by now of a cooler that is both
     * stronger and quieter.
     */
    double knownLevelWithCooler(Unfinished it, Candidate cooler) {
        Levels levels = levels(it);
        return knownLevel(levels, levels.withCooler, it, cooler, null);
    }

    /** The same for {@link #levelBare}. */
    double knownLevelBare(Unfinished it, Candidate cooler) {
        Levels levels = levels(it);
        return knownLevel(levels, levels.bare, it, cooler, noFans);
    }

    private double knownLevel(
            Levels levels, double[][] of, Unfinished it, Candidate cooler, Candidate fans) {
        int pcCase = likeCase[it.choices()[Slot.CASE.ordinal()].index()];
        double known = levels.in(of, pcCase)[likeCooler[cooler.index()]];
        return Double.isNaN(known)
                ? inCase(levels, it, cooler, fans).knownLevel(cooler(cooler))
                : known;
    }

    /** The least sound of a supply that is left, at its own place beside a pair, in dB(A). */
    double quietestSupplyDba(Unfinished it, SlotTable supplies, long[] left) {
        if (it.has(Slot.SUPPLY)) {
            return supplyDba(it.pair(), (Supply) it.part(Slot.SUPPLY));
        }
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < supplies.size(); i++) {
            if (SlotTable.has(left, i)) {
                Supply supply = (Supply) supplies.candidate(i).partOrNull();
                least = Math.min(least, supplyDba(it.pair(), supply));
            }
        }
        return least;
    }

    /** Whether a level of fans in what is decided is cool and quiet enough beside a supply. */
    boolean does(Unfinished it, double levelDba, double supplyDba) {
        return levelDba != Double.POSITIVE_INFINITY && !tooLoud(atSeat(it, levelDba, supplyDba));
    }

    /**
     * Sound energy in the case that is decided from which on it is too loud; plus infinity where
     * nothing is.
     */
    double tooLoudEnergy(Unfinished it, double supplyDba) {
        Candidate[] some = worthATry(it, it.choices()[Slot.CASE.ordinal()]);
        if (some.length == 0) {
            return 0;
        }
        CoolersInCase any = inCase(levels(it), it, some[0], null).coolers;
        double low = 0;
        double high = 150;
        if (does(it, any.levelDba(any.energy(high)), supplyDba)) {
            return Double.POSITIVE_INFINITY;
        }
        while (high - low > CLOSE_DBA) {
            double middle = (low + high) / 2;
            boolean quiet = does(it, any.levelDba(any.energy(middle)), supplyDba);
            low = quiet ? middle : low;
            high = quiet ? high : middle;
        }
        return any.energy(high);
    }

    /**
     * Whether a cooler is cool and quiet enough in the case that is decided, beside the quietest
     * supply; no more is reckoned than it takes to tell.
     *
     * @param bare whether no fans are added to those of the case
     * @param tooLoudEnergy as {@link #tooLoudEnergy} has it
     */
    boolean does(
            Unfinished it, Candidate cooler, boolean bare, double supplyDba, double tooLoudEnergy) {
        Levels levels = levels(it);
        int pcCase = likeCase[it.choices()[Slot.CASE.ordinal()].index()];
        double[] known = levels.in(bare ? levels.bare : levels.withCooler, pcCase);
        int k = likeCooler[cooler.index()];
        if (Double.isNaN(known[k])) {
            InLastCase kind = inCase(levels, it, cooler, bare ? noFans : null);
            if (!does(it, kind.knownLevel(cooler(cooler)), supplyDba)) {
                return false;
            }
            double energy = kind.coolers.leastEnergy(cooler(cooler), tooLoudEnergy);
            double level = kind.coolers.levelDba(energy);
            kind.add(cooler(cooler), level);
            if (energy == tooLoudEnergy && energy != Double.POSITIVE_INFINITY) {
                return false; // It is only known to be no quieter.
            }
            known[k] = level;
        }
        return does(it, known[k], supplyDba);
    }

    /** Whether a cooler is cool and quiet enough in the case that is decided, with some fans. */
    boolean fansDo(
            Unfinished it,
            Candidate cooler,
            Candidate fans,
            double supplyDba,
            double tooLoudEnergy) {
        CoolersInCase with =
                foresight.coolers(
                        outlook.bounds(it, it.pair()),
                        (Processor) it.part(Slot.PROCESSOR),
                        (Graphics) it.part(Slot.GRAPHICS),
                        (PcCase) it.part(Slot.CASE),
                        airs(it, cooler, fans),
                        !fans.none());
        double energy = with.leastEnergy(cooler(cooler), tooLoudEnergy);
        boolean known = energy != tooLoudEnergy || energy == Double.POSITIVE_INFINITY;
        return known && does(it, with.levelDba(energy), supplyDba);
    }

    /** What some fans do in the case that is decided, beside a radiator of one size or none. */
    private CaseAirs airs(Unfinished it, Candidate cooler, Candidate fans) {
        if (airsWith.size() > MOST_AIRS) {
            airsWith.clear();
        }
        Candidate pcCase = it.choices()[Slot.CASE.ordinal()];
        return airsWith.computeIfAbsent(
                new FansKey(likeCase[pcCase.index()], airKind(cooler), likeFans[fans.index()]),
                any -> {
                    Build build = build(it, cooler, false);
                    List<Assessment> one =
                            fans.none()
                                    ? List.of()
                                    : List.of(problem.assessor().assess(with(build, fans)));
                    return new CaseAirs(problem.assessor().assess(build), one);
                });
    }

    /** Whether any cooler is cool and quiet enough in the case that is decided. */
    boolean someCoolerDoes(Unfinished it, double supplyDba, double tooLoudEnergy) {
        Candidate pcCase = it.choices()[Slot.CASE.ordinal()];
        double best = levels(it).best()[pcCase.index()];
        if (!Double.isNaN(best)) {
            return does(it, best, supplyDba);
        }
        for (Candidate cooler : worthATry(it, pcCase)) {
            if (does(it, cooler, false, supplyDba, tooLoudEnergy)) {
                return true;
            }
        }
        return false;
    }

    /** Coolers of one kind in the case that was last asked for, and levels with some of them. */
    private static final class InLastCase {
        private final CoolersInCase coolers;
        private final List<Cooler> tried = new ArrayList<>();
        private final List<Double> levels = new ArrayList<>();

        InLastCase(CoolersInCase coolers) {
            this.coolers = coolers;
        }

        double level(Cooler cooler) {
            double level = coolers.leastLevelDba(cooler);
            add(cooler, level);
            return level;
        }

        /** Takes note of what a cooler's level is at least. */
        void add(Cooler cooler, double level) {
            if (cooler != null) {
                tried.add(cooler);
                levels.add(level);
            }
        }

        double knownLevel(Cooler cooler) {
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; cooler != null && i < tried.size(); i++) {
                Cooler other = tried.get(i);
                if (other.resistanceKw() <= cooler.resistanceKw()
                        && other.maxDba() <= cooler.maxDba()) {
                    most = Math.max(most, levels.get(i));
                }
            }
            return most;
        }
    }

    private static Cooler cooler(Candidate candidate) {
        return (Cooler) candidate.partOrNull();
    }

    /** Coolers of one kind in the case that is decided, with some fans, null for the best ones. */
    private InLastCase inCase(Levels levels, Unfinished it, Candidate cooler, Candidate fans) {
        int pcCase = likeCase[it.choices()[Slot.CASE.ordinal()].index()];
        if (levels != lastLevels || pcCase != lastCase) {
            lastLevels = levels;
            lastCase = pcCase;
            inLastCase.clear();
        }
        return inLastCase.computeIfAbsent(
                new CoolerKind(airKind(cooler), fans != null),
                any -> new InLastCase(coolers(it, cooler, fans != null)));
    }

    private CoolersInCase coolers(Unfinished it, Candidate cooler, boolean bare) {
        return foresight.coolers(
                outlook.bounds(it, it.pair()),
                (Processor) it.part(Slot.PROCESSOR),
                (Graphics) it.part(Slot.GRAPHICS),
                (PcCase) it.part(Slot.CASE),
                airs(it, cooler),
                !bare);
    }

    private record CoolerKind(int airKind, boolean bare) {}

    /**
     * What the least level in a decided case depends on: indices of case, cooler, fans and memory,
     * and the memory's rate.
     */
    record Shelter(int pcCase, int cooler, int fans, int memory, int mts) {}

    /**
     * The least level with the case, the cooler and the memory that are decided and some fans, null
     * for the best ones, whatever drives are chosen; plus infinity when some part gets too hot.
     * Computed once for a pair.
     */
    private double sheltered(Unfinished it, Candidate cooler, Candidate fans) {
        Candidate memory = it.choices()[Slot.MEMORY.ordinal()];
        Shelter key =
                new Shelter(
                        likeCase[it.choices()[Slot.CASE.ordinal()].index()],
                        likeCooler[cooler.index()],
                        fans == null ? -1 : likeFans[fans.index()],
                        memory == null ? -1 : memory.index(),
                        memory == null ? 0 : outlook.rateWith(it, memory));
        return it.pair()
                .sheltered()
                .computeIfAbsent(key, any -> computeSheltered(it, cooler, fans));
    }

    private double computeSheltered(Unfinished it, Candidate cooler, Candidate fans) {
        return fans == null
                ? coolers(it, cooler, false).leastLevelDba(cooler(cooler))
                : foresight.leastLevelDba(
                        outlook.bounds(it, it.pair()),
                        problem.assessor().assess(with(build(it, cooler, true), fans)));
    }

    private Build build(Unfinished it, Candidate cooler, boolean withMemory) {
        // Any board will do: air does not ask which.
        Build build =
                Build.empty()
                        .with(
                                Slot.BOARD,
                                problem.candidates().of(Slot.BOARD).get(0).partOrNull(),
                                1);
        if (!cooler.none()) {
            build = build.with(Slot.COOLER, cooler.partOrNull(), 1);
        }
        for (Slot slot : SHELTERING) {
            if (it.part(slot) != null && (withMemory || slot != Slot.MEMORY)) {
                build = build.with(slot, it.part(slot), it.pieces(slot));
            }
        }
        return build;
    }

    private static Build with(Build build, Candidate fans) {
        return fans.none() ? build : build.with(Slot.FANS, fans.partOrNull(), fans.pieces());
    }

    /** What the fans that go into a case can do there, beside a radiator of one size or none. */
    private CaseAirs airs(Unfinished it, Candidate cooler) {
        Candidate pcCase = it.choices()[Slot.CASE.ordinal()];
        AirKey key = new AirKey(likeCase[pcCase.index()], airKind(cooler));
        return airs.computeIfAbsent(
                key,
                any -> {
                    Build build = build(it, cooler, false);
                    List<Assessment> choices = new ArrayList<>();
                    for (Candidate fans : blowingBest(pcCase)) {
                        choices.add(problem.assessor().assess(with(build, fans)));
                    }
                    return new CaseAirs(problem.assessor().assess(build), choices);
                });
    }

    /**
     * The fans that go into a case, without those that move no more air there against no more
     * pressure with no less sound than as many others of their size.
     */
    private List<Candidate> blowingBest(Candidate pcCase) {
        return blowingBest.computeIfAbsent(
                fansThatFit(pcCase),
                row -> {
                    Map<List<Object>, List<Candidate>> bySize = new LinkedHashMap<>();
                    for (Candidate fans : problem.candidates().of(Slot.FANS)) {
                        boolean fits =
                                row.isEmpty()
                                        || (row.get(fans.index() >> 6) >> fans.index() & 1) == 1;
                        if (fits) {
                            addIfBest(
                                    bySize.computeIfAbsent(size(fans), any -> new ArrayList<>()),
                                    fans);
                        }
                    }
                    return bySize.values().stream().flatMap(List::stream).toList();
                });
    }

    private static List<Object> size(Candidate fans) {
        return fans.none()
                ? List.of()
                : List.of(
                        ((Fan) fans.partOrNull()).sizeMm(),
                        ((Fan) fans.partOrNull()).pack() * fans.pieces());
    }

    private static void addIfBest(List<Candidate> best, Candidate fans) {
        if (best.stream().noneMatch(other -> blowsNoLess(other, fans))) {
            best.removeIf(other -> blowsNoLess(fans, other));
            best.add(fans);
        }
    }

    private static boolean blowsNoLess(Candidate one, Candidate other) {
        if (one.none() || other.none()) {
            return one.none() && other.none();
        }
        Fan fan = (Fan) one.partOrNull();
        Fan rival = (Fan) other.partOrNull();
        return fan.flowM3h() >= rival.flowM3h()
                && fan.pressurePa() >= rival.pressurePa()
                && fan.maxDba() <= rival.maxDba();
    }

    /** What air asks of fans: colours and prices make no wind. */
    private static List<Object> air(Candidate candidate) {
        if (candidate.none()) {
            return List.of();
        }
        Fan fan = (Fan) candidate.partOrNull();
        return List.of(
                fan.sizeMm(),
                fan.flowM3h(),
                fan.pressurePa(),
                fan.maxDba(),
                fan.pack() * candidate.pieces());
    }

    /**
     * Number of the first case that air and sound can't tell from this one: paint makes no wind.
     */
    private int likeCase(Candidate candidate) {
        PcCase it = (PcCase) candidate.partOrNull();
        return likeCases.computeIfAbsent(
                List.of(
                        it.positions(),
                        it.includedFans(),
                        it.includedFanM3h(),
                        it.includedFanPa(),
                        it.includedFanDba(),
                        it.radiators(),
                        it.dampingDb(),
                        it.impedance(),
                        fansThatFit(candidate)),
                any -> candidate.index());
    }

    private List<Long> fansThatFit(Candidate pcCase) {
        long[] row = problem.tables().pairs(problem).row(pcCase, Slot.FANS);
        return row == null ? List.of() : Arrays.stream(row).boxed().toList();
    }

    /** Number of the first cooler that air and sound can't tell from this one. */
    private int likeCooler(Candidate candidate) {
        if (candidate.none()) {
            return candidate.index();
        }
        Cooler it = (Cooler) candidate.partOrNull();
        return likeCoolers.computeIfAbsent(
                List.of(it.type(), airKind(candidate), it.resistanceKw(), it.maxDba()),
                any -> candidate.index());
    }

    private record FansKey(int pcCase, int airKind, int fans) {}

    private record AirKey(int pcCase, int airKind) {}

    private static final List<Slot> SHELTERING =
            List.of(Slot.PROCESSOR, Slot.BOARD, Slot.MEMORY, Slot.GRAPHICS, Slot.CASE);

    /** The least level with these fans, all else but drives decided. */
    double levelWithFans(Unfinished it, Candidate fans) {
        return sheltered(it, it.choices()[Slot.COOLER.ordinal()], fans);
    }

    /** Whether some fans keep every part cool and the machine quiet enough, at best. */
    boolean coolEnough(Unfinished it, Candidate fans) {
        double level = sheltered(it, it.choices()[Slot.COOLER.ordinal()], fans);
        return level != Double.POSITIVE_INFINITY && !tooLoud(level);
    }
}
