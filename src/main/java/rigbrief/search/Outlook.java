package rigbrief.search;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Foresight;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.brief.Brief;
import rigbrief.goal.EnergyGoal;
import rigbrief.goal.Goal;
import rigbrief.goal.LifetimeGoal;
import rigbrief.goal.LookGoal;
import rigbrief.goal.QuietGoal;
import rigbrief.goal.UpgradeRoomGoal;
import rigbrief.goal.WorkloadsGoal;
import rigbrief.part.Board;
import rigbrief.part.Cooler;
import rigbrief.part.Drive;
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
    private final double mostDampingDb;
    private final int mostSupplyW;
    private final int leastModules;
    private final boolean onlyM2Drives;
    private final double referenceKwh;
    private final double unknownPoints;
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
    }

    /** What a processor and a card together can reach at best. */
    static final class Pair {
        private final Foresight.Pair bounds;
        private final double workloadsShare;
        private final double leastLevelDba;
        private final boolean hopeless;

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
        var alone = rigbrief.build.Build.empty();
        if (!candidate.none()) {
            alone = alone.with(candidate.slot(), candidate.partOrNull(), candidate.pieces());
        }
        return LookGoal.share(alone, candidate.slot(), brief) / LOOK.reads().size();
    }

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
        boolean kept = problem.assessor().pricing().kept(Slot.SUPPLY, supply);
        double extraW = card == null ? 0 : card.boardPowerW() * (card.peakFactor() - 1);
        return (kept || supply.watts() >= SupplyLoadRule.plannedW(pair.sustainedW(), brief))
                && SupplyPeakRule.allows(supply, pair.sustainedW() + extraW)
                && (card == null || SupplyConnectorsRule.feeds(supply, card));
    }

    /**
     * Points that a memory kit or a drive loses against the best of its kind, for a processor, a
     * card and a board that are decided; never positive.
     */
    double loss(Unfinished it, Candidate candidate) {
        Board board = (Board) it.part(Slot.BOARD);
        return candidate.slot() == Slot.MEMORY
                ? memoryLoss(it, board, candidate)
                : driveLoss(it, board, (Drive) candidate.partOrNull());
    }

    /** Whether some must is missed with this memory, whatever the drive. */
    boolean missesMust(Unfinished it, Candidate candidate) {
        return missed(withMemory(it, candidate));
    }

    private List<Prediction> withMemory(Unfinished it, Candidate candidate) {
        Board board = (Board) it.part(Slot.BOARD);
        Processor processor = (Processor) it.part(Slot.PROCESSOR);
        Memory memory = (Memory) candidate.partOrNull();
        int modules = memory.modules() * candidate.pieces();
        int mts =
                Math.min(
                        memory.mts(),
                        Math.min(board.memoryMts(modules), processor.memoryMts(memory.type())));
        return foresight.atBestDrive(
                processor,
                (Graphics) it.part(Slot.GRAPHICS),
                mts * Math.min(modules, 2) / 2,
                memory.kitGb() * candidate.pieces());
    }

    private double memoryLoss(Unfinished it, Board board, Candidate candidate) {
        int modules = ((Memory) candidate.partOrNull()).modules() * candidate.pieces();
        double room =
                clip((board.memorySlots() - modules) / 2.0)
                        - clip((board.memorySlots() - leastModules) / 2.0);
        double speed =
                WorkloadsGoal.share(withMemory(it, candidate), brief) - it.pair().workloadsShare;
        return FULL
                * (weight("upgrade-room") * Math.min(0, room) / 5
                        + weight("workloads") * Math.min(0, speed));
    }

    private double driveLoss(Unfinished it, Board board, Drive drive) {
        int places = 0;
        for (var slot : board.m2()) {
            places += slot.forWireless() ? 0 : 1;
        }
        int taken = drive.form().m2() ? 1 : 0;
        int least = onlyM2Drives ? 1 : 0;
        double room = clip((places - taken) / 2.0) - clip((places - least) / 2.0);
        double speed =
                WorkloadsGoal.share(
                                foresight.atBestMemory(
                                        (Processor) it.part(Slot.PROCESSOR),
                                        (Graphics) it.part(Slot.GRAPHICS),
                                        drive),
                                brief)
                        - it.pair().workloadsShare;
        return FULL
                * (weight("upgrade-room") * Math.min(0, room) / 5
                        + weight("workloads") * Math.min(0, speed));
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
        double level = levelWithoutSupply(it, pair);
        if (!it.has(Slot.SUPPLY) || level == Double.POSITIVE_INFINITY) {
            return level;
        }
        double damping =
                it.has(Slot.CASE) ? ((PcCase) it.part(Slot.CASE)).dampingDb() : mostDampingDb;
        return foresight.withSupply(level, pair.bounds, (Supply) it.part(Slot.SUPPLY), damping);
    }

    private double levelWithoutSupply(Unfinished it, Pair pair) {
        if (!it.has(Slot.COOLER) || !it.has(Slot.CASE)) {
            return pair.leastLevelDba;
        }
        if (it.has(Slot.FANS) && it.has(Slot.BOARD)) {
            return it.shelteredLevelDba(
                    () -> foresight.leastLevelDba(pair.bounds, it.assessment()));
        }
        return leastLevelDba(
                pair,
                (Processor) it.part(Slot.PROCESSOR),
                (Graphics) it.part(Slot.GRAPHICS),
                (Cooler) it.part(Slot.COOLER),
                (PcCase) it.part(Slot.CASE));
    }

    private double energy(Unfinished it, Pair pair) {
        if (pair == null) {
            return 1;
        }
        double kwh =
                it.has(Slot.SUPPLY)
                        ? foresight.kwhPerYear(
                                pair.bounds, (Supply) it.part(Slot.SUPPLY), it.build())
                        : pair.bounds.kwhPerYear();
        return clip(1 - kwh / referenceKwh);
    }

    private double upgradeRoom(Unfinished it, Pair pair) {
        double sum = 0;
        if (it.has(Slot.BOARD)) {
            Board board = (Board) it.part(Slot.BOARD);
            int modules =
                    it.has(Slot.MEMORY)
                            ? ((Memory) it.part(Slot.MEMORY)).modules() * it.pieces(Slot.MEMORY)
                            : leastModules;
            sum += clip((board.memorySlots() - modules) / 2.0);
            sum += clip(freeM2(it, board) / 2.0);
            sum += otherFamily(it, board) ? 1 : 0;
        } else {
            sum += 3;
        }
        if (pair == null) {
            return (sum + 2) / 5;
        }
        int watts = it.has(Slot.SUPPLY) ? ((Supply) it.part(Slot.SUPPLY)).watts() : mostSupplyW;
        double share = brief.headroom().supplySharePercent() / 100.0;
        double spare = watts - Math.max(pair.sustainedW(), it.assessment().sustainedW()) / share;
        sum += clip(spare / 300);
        sum += spare - 80 / share >= 0 ? nextCard(it) : 0;
        return sum / 5;
    }

    private int freeM2(Unfinished it, Board board) {
        int free = 0;
        for (var slot : board.m2()) {
            free += slot.forWireless() ? 0 : 1;
        }
        boolean taken =
                it.has(Slot.DRIVE) ? ((Drive) it.part(Slot.DRIVE)).form().m2() : onlyM2Drives;
        return taken ? free - 1 : free;
    }

    private static boolean otherFamily(Unfinished it, Board board) {
        String own = ((Processor) it.part(Slot.PROCESSOR)).family();
        for (var support : board.families().or(List.of())) {
            if (!support.family().equals(own)) {
                return true;
            }
        }
        return false;
    }

    private static double nextCard(Unfinished it) {
        if (!it.has(Slot.CASE)) {
            return 1;
        }
        int have = ((PcCase) it.part(Slot.CASE)).graphicsLength().map(l -> l.millimetres()).or(0);
        Graphics card = (Graphics) it.part(Slot.GRAPHICS);
        int length = card == null ? 240 : card.length().map(l -> l.millimetres()).or(1 << 20);
        return length + 30 <= have ? 1 : 0;
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

    private static double clip(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
