package rigbrief.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import rigbrief.assess.Assessment;
import rigbrief.assess.Foresight;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.TaskTime;
import rigbrief.goal.EnergyGoal;
import rigbrief.goal.Goal;
import rigbrief.goal.LifetimeGoal;
import rigbrief.goal.LookGoal;
import rigbrief.goal.QuietGoal;
import rigbrief.goal.UpgradeRoomGoal;
import rigbrief.goal.WorkloadsGoal;
import rigbrief.part.Board;
import rigbrief.part.Cooler;
import rigbrief.part.CoolerType;
import rigbrief.part.Drive;
import rigbrief.part.Fan;
import rigbrief.part.Graphics;
import rigbrief.part.Memory;
import rigbrief.part.Part;
import rigbrief.part.PcCase;
import rigbrief.part.Processor;
import rigbrief.part.RateByModules;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Reads;
import rigbrief.rule.fit.SupplyConnectorsRule;
import rigbrief.rule.fit.SupplyLoadRule;
import rigbrief.rule.fit.SupplyPeakRule;

/**
 * Upper bounds on what any completion of an unfinished build can score, goal by goal.
 *
 * <p>A goal that this class does not know counts as fully met: slower to prove, never wrong.
 */
final class Outlook {
    private static final double FULL = Goal.FULL;
    private static final double CLOSE_DBA = 1e-6;
    private static final double NO_COOLER = Double.MAX_VALUE;

    private final Problem problem;
    private final Brief brief;
    private final Foresight foresight;
    private final List<Cooler> coolers = new ArrayList<>();
    private final List<Candidate> coolersByStrength = new ArrayList<>();
    private final double mostDampingDb;
    private final int mostSupplyW;
    private final int leastModules;
    private final boolean onlyM2Drives;
    private final double referenceKwh;
    private final double unknownPoints;
    private final double leastDriveDba;
    private final double[] leastW;
    private final boolean drivesMatter;
    private final Losses losses;
    private final Map<AirKey, Foresight.Airs> airs = new HashMap<>();
    private final Map<List<Object>, Integer> likeCases = new HashMap<>();
    private final Map<List<Object>, Integer> likeCoolers = new HashMap<>();
    private final int[] likeCase;
    private final int[] likeCooler;
    private final Map<Part, Map<Object, Pair>> pairs = new IdentityHashMap<>();

    Outlook(Problem problem) {
        this.problem = problem;
        this.brief = problem.assessor().brief();
        double damping = 0;
        for (Candidate candidate : problem.candidates().of(Slot.CASE)) {
            damping = Math.max(damping, ((PcCase) candidate.partOrNull()).dampingDb());
        }
        this.mostDampingDb = damping;
        int watts = 0;
        for (Candidate candidate : problem.candidates().of(Slot.SUPPLY)) {
            watts = Math.max(watts, ((Supply) candidate.partOrNull()).watts());
        }
        this.mostSupplyW = watts;
        int modules = Integer.MAX_VALUE;
        for (Candidate candidate : problem.candidates().of(Slot.MEMORY)) {
            modules =
                    Math.min(
                            modules,
                            ((Memory) candidate.partOrNull()).modules() * candidate.pieces());
        }
        this.leastModules = modules;
        for (Candidate candidate : problem.candidates().of(Slot.COOLER)) {
            coolers.add((Cooler) candidate.partOrNull());
        }
        this.onlyM2Drives =
                problem.candidates().of(Slot.DRIVE).stream()
                        .allMatch(c -> ((Drive) c.partOrNull()).form().m2());
        this.referenceKwh = EnergyGoal.referenceKwh(brief);
        this.foresight = foresight(problem);
        this.unknownPoints = unknownPoints();
        double drive = Double.MAX_VALUE;
        for (Candidate candidate : problem.candidates().of(Slot.DRIVE)) {
            drive = Math.min(drive, driveDba(candidate.partOrNull()));
        }
        this.leastDriveDba = drive;
        this.drivesMatter =
                problem.assessor().catalogue().workloads().stream()
                        .anyMatch(workload -> workload instanceof TaskTime);
        coolersByStrength.addAll(problem.candidates().of(Slot.COOLER));
        coolersByStrength.sort(
                Comparator.<Candidate>comparingDouble(
                                c -> c.none() ? 0 : ((Cooler) c.partOrNull()).resistanceKw())
                        .thenComparingDouble(c -> c.none() ? 0 : ((Cooler) c.partOrNull()).maxDba())
                        .thenComparingInt(Candidate::index));
        this.likeCase =
                problem.candidates().of(Slot.CASE).stream().mapToInt(this::likeCase).toArray();
        this.likeCooler =
                problem.candidates().of(Slot.COOLER).stream().mapToInt(this::likeCooler).toArray();
        this.leastW = leastW();
        this.losses = new Losses(problem, foresight, this);
    }

    /** What candidates of open slots lose. */
    Losses losses() {
        return losses;
    }

    /** What each candidate of a slot loses beside a processor and a card that are decided. */
    double[] lossesBesidePair(Slot slot, Unfinished it) {
        Processor processor = (Processor) it.part(Slot.PROCESSOR);
        Graphics card = (Graphics) it.part(Slot.GRAPHICS);
        return it.pair().losses(slot, () -> losses.besidePair(slot, processor, card, it.pair()));
    }

    boolean drivesMatter() {
        return drivesMatter;
    }

    Drive fastest() {
        return foresight.fastest();
    }

    int mostSupplyW() {
        return mostSupplyW;
    }

    double mostDampingDb() {
        return mostDampingDb;
    }

    int leastModules() {
        return leastModules;
    }

    boolean onlyM2Drives() {
        return onlyM2Drives;
    }

    /** What a processor and a card together can reach at best. */
    static final class Pair {
        private final Foresight.Pair bounds;
        private final double workloadsShare;
        private double leastLevelDba;
        private boolean casesSeen;
        private final Map<Shelter, Double> inCase = new HashMap<>();
        private final boolean hopeless;
        private final Map<Slot, double[]> losses = new EnumMap<>(Slot.class);
        private final Map<Shelter, Double> sheltered = new HashMap<>();

        Pair(Foresight.Pair bounds, double workloadsShare, double leastLevelDba, boolean hopeless) {
            this.bounds = bounds;
            this.workloadsShare = workloadsShare;
            this.leastLevelDba = leastLevelDba;
            this.hopeless = hopeless;
        }

        /** Whether some must can't be met whatever fills the other slots. */
        boolean hopeless() {
            return hopeless;
        }

        double sustainedW() {
            return bounds.sustainedW();
        }

        Foresight.Pair bounds() {
            return bounds;
        }

        double workloadsShare() {
            return workloadsShare;
        }

        double leastLevelDba() {
            return leastLevelDba;
        }

        /** What each candidate of a slot loses, by index; computed once. */
        double[] losses(Slot slot, Supplier<double[]> compute) {
            return losses.computeIfAbsent(slot, any -> compute.get());
        }
    }

    private static Foresight foresight(Problem problem) {
        List<Integer> rates = new ArrayList<>();
        for (Candidate candidate : problem.candidates().of(Slot.MEMORY)) {
            rates.add(((Memory) candidate.partOrNull()).mts());
        }
        for (Candidate candidate : problem.candidates().of(Slot.BOARD)) {
            for (RateByModules rate : ((Board) candidate.partOrNull()).memoryMaxMts()) {
                rates.add(rate.mts());
            }
        }
        Drive any = (Drive) problem.candidates().of(Slot.DRIVE).get(0).partOrNull();
        int read = 0;
        int write = 0;
        int slowRead = Integer.MAX_VALUE;
        int slowWrite = Integer.MAX_VALUE;
        for (Candidate candidate : problem.candidates().of(Slot.DRIVE)) {
            Drive drive = (Drive) candidate.partOrNull();
            read = Math.max(read, drive.readMbs());
            write = Math.max(write, drive.writeMbs());
            slowRead = Math.min(slowRead, drive.readMbs());
            slowWrite = Math.min(slowWrite, drive.writeMbs());
        }
        return new Foresight(
                problem.assessor(),
                rates,
                withSpeed(any, read, write),
                withSpeed(any, slowRead, slowWrite),
                problem.candidates().of(Slot.SUPPLY).stream()
                        .map(candidate -> (Supply) candidate.partOrNull())
                        .toList());
    }

    private static Drive withSpeed(Drive drive, int readMbs, int writeMbs) {
        return new Drive(
                drive.listing(),
                drive.form(),
                drive.bus(),
                drive.capacityGb(),
                readMbs,
                writeMbs,
                drive.enduranceTbw(),
                drive.cache(),
                drive.dba());
    }

    private double unknownPoints() {
        double points = 0;
        for (Goal goal : problem.goals()) {
            boolean known =
                    switch (goal.info().id()) {
                        case "workloads",
                                "quiet",
                                "energy",
                                "upgrade-room",
                                "look",
                                "lifetime",
                                "simple-order",
                                "value" ->
                                true;
                        default -> false;
                    };
            points += known ? 0 : problem.weight(goal) * FULL;
        }
        return points;
    }

    private double weight(String goal) {
        return brief.wishes().weight(goal);
    }

    /** Points a candidate adds by itself, whatever the other slots hold. */
    double gain(Candidate candidate) {
        double gain =
                weight("lifetime") * LifetimeGoal.share(candidate.slot(), candidate.partOrNull());
        if (brief.looks().colour().isPresent()) {
            gain += weight("look") * look(candidate);
        }
        return gain * FULL;
    }

    private double look(Candidate candidate) {
        if (!LOOK.reads().contains(candidate.slot())) {
            return 0;
        }
        var alone = Build.empty();
        if (!candidate.none()) {
            alone = alone.with(candidate.slot(), candidate.partOrNull(), candidate.pieces());
        }
        return LookGoal.share(alone, candidate.slot(), brief) / LOOK.reads().size();
    }

    /** A build of which nothing is decided. */
    static final Build NOTHING = Build.empty();

    private static final LookGoal LOOK = new LookGoal();
    private static final List<Goal> DECIDED =
            List.of(new WorkloadsGoal(), new QuietGoal(), new EnergyGoal(), new UpgradeRoomGoal());

    /** The bounds for a processor and a card, null for none; computed once. */
    Pair pair(Processor processor, Graphics graphics) {
        Object card = graphics == null ? "none" : graphics;
        return pairs.computeIfAbsent(processor, any -> new IdentityHashMap<>())
                .computeIfAbsent(card, any -> compute(processor, graphics));
    }

    private Pair compute(Processor processor, Graphics graphics) {
        Foresight.Pair bounds = foresight.pair(processor, graphics);
        boolean hopeless = missed(bounds.best());
        double level = hopeless ? 0 : leastLevelDba(bounds, processor, graphics);
        return new Pair(
                bounds,
                WorkloadsGoal.share(bounds.best(), brief),
                level,
                hopeless || level == NO_COOLER || tooLoud(level));
    }

    private double leastLevelDba(Foresight.Pair bounds, Processor processor, Graphics graphics) {
        double least = NO_COOLER;
        for (Cooler cooler : coolers) {
            if (coolEnough(processor, cooler)) {
                least =
                        Math.min(
                                least,
                                foresight.leastLevelDba(
                                        bounds, processor, graphics, cooler, mostDampingDb));
            }
        }
        return least;
    }

    private boolean tooLoud(double levelDba) {
        return brief.noise().mustDba().isPresent()
                && Math.round((levelDba - CLOSE_DBA) * 100)
                        > brief.noise().mustDba().getAsInt() * 100L;
    }

    /** Whether a supply can feed a processor and a card, whatever else is in the machine. */
    boolean canFeed(Supply supply, Graphics card, Pair pair) {
        double sustainedW =
                pair.sustainedW() + leastFurtherW(NOTHING_DECIDED) - foresight.countedW();
        return carries(supply, card, Math.max(pair.sustainedW(), sustainedW))
                && (card == null || SupplyConnectorsRule.feeds(supply, card));
    }

    /** Whether the supply that is decided carries what is decided and the least of what is open. */
    boolean carriesOn(Unfinished it) {
        return !it.has(Slot.SUPPLY)
                || carries(
                        (Supply) it.part(Slot.SUPPLY),
                        (Graphics) it.part(Slot.GRAPHICS),
                        it.assessment().sustainedW() + leastFurtherW(it::has));
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
                                        NOTHING.with(
                                                slot, candidate.partOrNull(), candidate.pieces()));
                watts = Math.min(watts, own);
            }
            least[slot.ordinal()] = watts;
        }
        return least;
    }

    /** Whether some must is missed with this memory, whatever the drive. */
    boolean missesMust(Unfinished it, Candidate candidate) {
        return missed(withMemory(it, candidate));
    }

    List<Prediction> withMemory(Unfinished it, Candidate candidate) {
        return foresight.atBestDrive(
                (Processor) it.part(Slot.PROCESSOR),
                (Graphics) it.part(Slot.GRAPHICS),
                rateWith(it, candidate),
                ((Memory) candidate.partOrNull()).kitGb() * candidate.pieces());
    }

    /** The rate of a kit on the board that is decided, in MT/s, halved for a single module. */
    int rateWith(Unfinished it, Candidate candidate) {
        Board board = (Board) it.part(Slot.BOARD);
        Processor processor = (Processor) it.part(Slot.PROCESSOR);
        Memory memory = (Memory) candidate.partOrNull();
        int modules = memory.modules() * candidate.pieces();
        int mts =
                Math.min(
                        memory.mts(),
                        Math.min(board.memoryMts(modules), processor.memoryMts(memory.type())));
        return mts * Math.min(modules, 2) / 2;
    }

    /** Whether a cooler can hold a processor at sustained power, were the case all open. */
    boolean coolEnough(Processor processor, Cooler cooler) {
        boolean any = cooler != null || processor.boxedCooler().isPresent();
        return any && foresight.coolEnough(processor, cooler);
    }

    /** Least level with a cooler in a case, in dB(A). */
    double leastLevelDba(
            Pair pair, Processor processor, Graphics graphics, Cooler cooler, PcCase pcCase) {
        return foresight.leastLevelDba(
                pair.bounds, processor, graphics, cooler, pcCase.dampingDb());
    }

    /**
     * Most points of the goals that no slot decides alone, the order and value left out; minus
     * infinity when the noise must is already out of reach.
     */
    double coupledPoints(Unfinished it) {
        Pair pair = it.pair();
        if (electricalDecided(it)) {
            return decidedPoints(it);
        }
        double workloads = workloads(it, pair);
        double level = pair == null ? 0 : level(it, pair);
        if (workloads < 0 || level == Double.POSITIVE_INFINITY || tooLoud(level)) {
            return Double.NEGATIVE_INFINITY;
        }
        double points = unknownPoints + weight("workloads") * workloads * FULL;
        points += weight("quiet") * clip(QuietGoal.share(level, brief)) * FULL;
        points += weight("energy") * energy(it, pair) * FULL;
        points += weight("upgrade-room") * upgradeRoom(it, pair) * FULL;
        if (brief.looks().colour().isEmpty()) {
            points += weight("look") * look(it) * FULL;
        }
        return points;
    }

    private static boolean electricalDecided(Unfinished it) {
        for (Slot slot : Reads.ELECTRICAL) {
            if (!it.has(slot) && slot != Slot.SECOND_DRIVE && slot != Slot.WIRELESS) {
                return false;
            }
        }
        return true;
    }

    /**
     * Everything that these goals read is decided, but for a second drive and a wireless card,
     * which only cost watts, sound and places: no completion has more points than the build without
     * them.
     */
    private double decidedPoints(Unfinished it) {
        double points = unknownPoints;
        for (Goal goal : DECIDED) {
            int weight = problem.weight(goal);
            points += weight == 0 ? 0 : (double) weight * goal.utility(it.assessment());
        }
        if (brief.looks().colour().isEmpty()) {
            points += weight("look") * look(it) * FULL;
        }
        return points;
    }

    private double workloads(Unfinished it, Pair pair) {
        boolean memory = it.has(Slot.BOARD) && it.has(Slot.MEMORY);
        if (!it.has(Slot.PROCESSOR) || !it.has(Slot.GRAPHICS) || !memory) {
            return pair == null ? 1 : clip(pair.workloadsShare);
        }
        if (it.has(Slot.DRIVE)) {
            return clip(WorkloadsGoal.share(it.assessment().predictions(), brief));
        }
        List<Prediction> best = foresight.atBestDrive(it.assessment());
        return missed(best) ? Double.NEGATIVE_INFINITY : clip(WorkloadsGoal.share(best, brief));
    }

    private static boolean missed(List<Prediction> predictions) {
        for (Prediction prediction : predictions) {
            for (Promise promise : prediction.promises()) {
                if (promise.must() && !promise.met()) {
                    return true;
                }
            }
        }
        return false;
    }

    private double level(Unfinished it, Pair pair) {
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
                        level, it.pair().bounds, (Supply) it.part(Slot.SUPPLY), damping)
                : level;
    }

    /** The least level beside a pair of which nothing else is decided. */
    double openLevelDba(Pair pair) {
        return foresight.withDrive(pair.leastLevelDba, leastDriveDba, mostDampingDb);
    }

    private static double driveDba(Part drive) {
        return drive == null ? 0 : ((Drive) drive).dba();
    }

    private double levelOfFans(Unfinished it, Pair pair) {
        if (!it.has(Slot.COOLER) || !it.has(Slot.CASE)) {
            return pair.leastLevelDba;
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

    double referenceKwh() {
        return referenceKwh;
    }

    /**
     * Looks at every case beside a pair: heat that has to go through one makes fans turn faster
     * than in open air. False when no case is cool and quiet enough.
     */
    boolean lookAtCases(Unfinished it) {
        Pair pair = it.pair();
        if (!pair.casesSeen) {
            double least = Double.POSITIVE_INFINITY;
            for (Candidate candidate : problem.candidates().of(Slot.CASE)) {
                least = Math.min(least, leastLevelInCase(it, candidate));
            }
            pair.casesSeen = true;
            pair.leastLevelDba = Math.max(pair.leastLevelDba, least);
            pair.losses.remove(Slot.SUPPLY);
        }
        return pair.leastLevelDba != Double.POSITIVE_INFINITY && !tooLoud(pair.leastLevelDba);
    }

    /**
     * The least level in a case, at the memory's rate once that is decided; over the coolers of
     * which none is both stronger and quieter than another. Computed once for a pair and a rate.
     */
    double leastLevelInCase(Unfinished it, Candidate pcCase) {
        Shelter key = new Shelter(pcCase.index(), -1, -1, -1, rate(it));
        return it.pair().inCase.computeIfAbsent(key, any -> computeInCase(it, pcCase));
    }

    /** The memory's rate once board and memory are decided; 0 before. */
    private int rate(Unfinished it) {
        Candidate memory = it.choices()[Slot.MEMORY.ordinal()];
        return memory == null || !it.has(Slot.BOARD) ? 0 : rateWith(it, memory);
    }

    private double computeInCase(Unfinished it, Candidate pcCase) {
        it.decide(pcCase);
        double least = leastOverCoolers(it, pcCase);
        it.undo(Slot.CASE);
        return least;
    }

    private double leastOverCoolers(Unfinished it, Candidate pcCase) {
        PairTable table = problem.tables().pairs(problem);
        long[] byCase = table.row(pcCase, Slot.COOLER);
        long[] byProcessor = table.row(it.choices()[Slot.PROCESSOR.ordinal()], Slot.COOLER);
        double least = Double.POSITIVE_INFINITY;
        Map<Integer, Double> quietest = new HashMap<>();
        for (Candidate cooler : coolersByStrength) {
            boolean fits =
                    (byCase == null || SlotTable.has(byCase, cooler.index()))
                            && (byProcessor == null || SlotTable.has(byProcessor, cooler.index()));
            if (fits && quieterThanStronger(cooler, quietest)) {
                least = Math.min(least, levelWithCooler(it, cooler));
            }
        }
        return least;
    }

    private static boolean quieterThanStronger(Candidate candidate, Map<Integer, Double> quietest) {
        if (candidate.none()) {
            return true;
        }
        Cooler cooler = (Cooler) candidate.partOrNull();
        int kind = cooler.type() == CoolerType.LIQUID ? airKind(cooler) : 0;
        Double before = quietest.get(kind);
        if (before != null && before <= cooler.maxDba()) {
            return false;
        }
        quietest.put(kind, cooler.maxDba());
        return true;
    }

    /** Radiators of one size and thickness leave the same places to fans. */
    private static int airKind(Cooler cooler) {
        return cooler.radiatorMm() * 1_000 + cooler.thickness().map(l -> l.millimetres()).or(999);
    }

    /**
     * The least level with a cooler in the case that is decided and the best fans for it; computed
     * once for a pair and a memory rate, so without regard to what else memory is.
     */
    double levelWithCooler(Unfinished it, Candidate cooler) {
        Shelter key =
                new Shelter(
                        likeCase[it.choices()[Slot.CASE.ordinal()].index()],
                        likeCooler[cooler.index()],
                        -1,
                        -1,
                        rate(it));
        return it.pair()
                .sheltered
                .computeIfAbsent(
                        key,
                        any -> computeSheltered(it, bounds(it, it.pair()), cooler, null, false));
    }

    /**
     * What the least level in a decided case depends on: indices of case, cooler, fans and memory,
     * and the memory's rate.
     */
    private record Shelter(int pcCase, int cooler, int fans, int memory, int mts) {}

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
                        fans == null ? -1 : fans.index(),
                        memory == null ? -1 : memory.index(),
                        memory == null ? 0 : rateWith(it, memory));
        return it.pair()
                .sheltered
                .computeIfAbsent(
                        key,
                        any -> computeSheltered(it, bounds(it, it.pair()), cooler, fans, true));
    }

    private double computeSheltered(
            Unfinished it,
            Foresight.Pair bounds,
            Candidate cooler,
            Candidate fans,
            boolean withMemory) {
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
        if (fans == null) {
            return foresight.leastLevelDba(
                    bounds, problem.assessor().assess(build), airs(it, cooler, build));
        }
        return foresight.leastLevelDba(bounds, problem.assessor().assess(with(build, fans)));
    }

    private static Build with(Build build, Candidate fans) {
        return fans.none() ? build : build.with(Slot.FANS, fans.partOrNull(), fans.pieces());
    }

    /** What the fans that go into a case can do there, beside a radiator of one size or none. */
    private Foresight.Airs airs(Unfinished it, Candidate candidate, Build build) {
        Candidate pcCase = it.choices()[Slot.CASE.ordinal()];
        Cooler cooler = (Cooler) candidate.partOrNull();
        boolean liquid = cooler != null && cooler.type() == CoolerType.LIQUID;
        AirKey key = new AirKey(likeCase[pcCase.index()], liquid ? airKind(cooler) : 0);
        return airs.computeIfAbsent(
                key,
                any -> {
                    long[] row = problem.tables().pairs(problem).row(pcCase, Slot.FANS);
                    List<Assessment> choices = new ArrayList<>();
                    Set<List<Object>> seen = new HashSet<>();
                    for (Candidate fans : problem.candidates().of(Slot.FANS)) {
                        boolean fits = row == null || SlotTable.has(row, fans.index());
                        if (fits && seen.add(air(fans))) {
                            choices.add(problem.assessor().assess(with(build, fans)));
                        }
                    }
                    return new Foresight.Airs(choices);
                });
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

    /** Number of the first cooler that air and sound can't tell from this one; -1 for none. */
    private int likeCooler(Candidate candidate) {
        if (candidate.none()) {
            return -1;
        }
        Cooler it = (Cooler) candidate.partOrNull();
        int kind = it.type() == CoolerType.LIQUID ? airKind(it) : 0;
        return likeCoolers.computeIfAbsent(
                List.of(it.type(), kind, it.resistanceKw(), it.maxDba()), any -> candidate.index());
    }

    private record AirKey(int pcCase, int airKind) {}

    private static final List<Slot> SHELTERING =
            List.of(Slot.PROCESSOR, Slot.BOARD, Slot.MEMORY, Slot.GRAPHICS, Slot.CASE);

    /** Whether some fans keep every part cool and the machine quiet enough, at best. */
    boolean coolEnough(Unfinished it, Candidate fans) {
        double level = sheltered(it, it.choices()[Slot.COOLER.ordinal()], fans);
        return level != Double.POSITIVE_INFINITY && !tooLoud(level);
    }

    private double energy(Unfinished it, Pair pair) {
        if (pair == null) {
            return 1;
        }
        Foresight.Pair bounds = bounds(it, pair);
        return energy(
                it.has(Slot.SUPPLY)
                        ? foresight.kwhPerYear(bounds, (Supply) it.part(Slot.SUPPLY), it.build())
                        : bounds.kwhPerYear());
    }

    /** The pair's bounds; at the memory's own rate once that is decided. */
    private Foresight.Pair bounds(Unfinished it, Pair pair) {
        return it.has(Slot.BOARD) && it.has(Slot.MEMORY)
                ? foresight.atRate(pair.bounds, it.assessment())
                : pair.bounds;
    }

    /** Utility of a year's energy. */
    double energy(double kwhPerYear) {
        return clip(1 - kwhPerYear / referenceKwh);
    }

    /** Parts of the room to grow, each counting alike. */
    static final int ROOM_PARTS = 5;

    /** Those of them that are the board's. */
    static final int BOARD_ROOM_PARTS = 3;

    private static final double SPARE_W = 300;
    private static final double STRONGER_W = 80;

    private double upgradeRoom(Unfinished it, Pair pair) {
        double sum =
                it.has(Slot.BOARD) ? boardRoom(it, (Board) it.part(Slot.BOARD)) : BOARD_ROOM_PARTS;
        if (pair == null) {
            return (sum + ROOM_PARTS - BOARD_ROOM_PARTS) / ROOM_PARTS;
        }
        int watts = it.has(Slot.SUPPLY) ? ((Supply) it.part(Slot.SUPPLY)).watts() : mostSupplyW;
        double sustainedW = Math.max(pair.sustainedW(), it.assessment().sustainedW());
        sum += spareShare(watts, sustainedW);
        sum += feedsNext(watts, sustainedW) && roomForNext(it) ? 1 : 0;
        return sum / ROOM_PARTS;
    }

    private double boardRoom(Unfinished it, Board board) {
        int modules =
                it.has(Slot.MEMORY)
                        ? ((Memory) it.part(Slot.MEMORY)).modules() * it.pieces(Slot.MEMORY)
                        : leastModules;
        boolean taken =
                it.has(Slot.DRIVE) ? ((Drive) it.part(Slot.DRIVE)).form().m2() : onlyM2Drives;
        return boardRoom((Processor) it.part(Slot.PROCESSOR), board, modules, taken);
    }

    /** The most that a board can have of its parts of the room to grow. */
    double boardRoom(Processor processor, Board board) {
        return boardRoom(processor, board, leastModules, onlyM2Drives);
    }

    private static double boardRoom(
            Processor processor, Board board, int modules, boolean m2Taken) {
        return clip((board.memorySlots() - modules) / 2.0)
                + clip((m2Places(board) - (m2Taken ? 1 : 0)) / 2.0)
                + (otherFamily(processor, board) ? 1 : 0);
    }

    int m2Places(Unfinished it) {
        return m2Places((Board) it.part(Slot.BOARD));
    }

    static int m2Places(Board board) {
        int places = 0;
        for (var slot : board.m2()) {
            places += slot.forWireless() ? 0 : 1;
        }
        return places;
    }

    /** Utility of the watts that a supply has to spare. */
    double spareShare(int supplyW, double sustainedW) {
        return clip(spareW(supplyW, sustainedW) / SPARE_W);
    }

    /** Whether a supply could feed the next card class too. */
    boolean feedsNext(int supplyW, double sustainedW) {
        double share = brief.headroom().supplySharePercent() / 100.0;
        return spareW(supplyW, sustainedW) - STRONGER_W / share >= 0;
    }

    /** Whether the supply that is decided could feed the next card class too, at best. */
    boolean supplyFeedsNext(Unfinished it) {
        return feedsNext(((Supply) it.part(Slot.SUPPLY)).watts(), it.pair().sustainedW());
    }

    private double spareW(int supplyW, double sustainedW) {
        return supplyW - sustainedW / (brief.headroom().supplySharePercent() / 100.0);
    }

    private static boolean otherFamily(Processor processor, Board board) {
        for (var support : board.families().or(List.of())) {
            if (!support.family().equals(processor.family())) {
                return true;
            }
        }
        return false;
    }

    private static boolean roomForNext(Unfinished it) {
        return !it.has(Slot.CASE)
                || takesNext((PcCase) it.part(Slot.CASE), (Graphics) it.part(Slot.GRAPHICS));
    }

    /** Whether a case leaves room for a card of the next class, at best. */
    static boolean takesNext(PcCase pcCase, Graphics card) {
        int have = pcCase.graphicsLength().map(l -> l.millimetres()).or(0);
        int length = card == null ? 240 : card.length().map(l -> l.millimetres()).or(1 << 20);
        return length + 30 <= have;
    }

    private double look(Unfinished it) {
        if (!it.has(Slot.CASE)) {
            return 1;
        }
        double sum = 0;
        for (Slot slot : LOOK.reads()) {
            sum += it.has(slot) ? LookGoal.share(it.build(), slot, brief) : 1;
        }
        return sum / LOOK.reads().size();
    }

    static double clip(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
