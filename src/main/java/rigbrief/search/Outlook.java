package rigbrief.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
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
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Memory;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.part.RateByModules;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Reads;

/**
 * Upper bounds on what any completion of an unfinished build can score, goal by goal.
 *
 * <p>A goal that this class does not know counts as fully met: slower to prove, never wrong.
 */
final class Outlook {
    private static final double FULL = Goal.FULL;

    /** Pairs whose losses are remembered. */
    private static final int MOST_LOSSES = 200;

    private final Problem problem;

    /** What the goals go by; musts are asked for where they are rules. */
    private final Brief brief;

    private final Foresight foresight;
    private final double referenceKwh;
    private final double unknownPoints;
    private final boolean drivesMatter;
    private final SoundOutlook sound;
    private final RoomOutlook room;
    private final LoadOutlook load;
    private final Losses losses;
    private final List<Pair> withLosses = new ArrayList<>();
    private final Map<Part, Map<Object, Pair>> pairs = new IdentityHashMap<>();

    Outlook(Problem problem) {
        this.problem = problem;
        this.brief = problem.assessor().valued();
        this.referenceKwh = EnergyGoal.referenceKwh(brief);
        this.foresight = foresight(problem);
        this.unknownPoints = unknownPoints();
        this.drivesMatter =
                problem.assessor().demand().uses().stream()
                        .anyMatch(use -> use.workload() instanceof TaskTime);
        this.sound = new SoundOutlook(problem, foresight, this);
        this.room = new RoomOutlook(problem);
        this.load = new LoadOutlook(problem, foresight);
        this.losses = new Losses(problem, foresight, this);
    }

    /** How loud and how hot. */
    SoundOutlook sound() {
        return sound;
    }

    /** The room to grow. */
    RoomOutlook room() {
        return room;
    }

    /** What supplies carry. */
    LoadOutlook load() {
        return load;
    }

    /** What candidates of open slots lose. */
    Losses losses() {
        return losses;
    }

    /** What each candidate of a slot loses beside a processor and a card that are decided. */
    double[] lossesBesidePair(Slot slot, Unfinished it) {
        Processor processor = (Processor) it.part(Slot.PROCESSOR);
        Graphics card = (Graphics) it.part(Slot.GRAPHICS);
        if (it.pair().losses.isEmpty()) {
            // Most pairs are looked at once or twice: what is forgotten is reckoned again.
            if (withLosses.size() >= MOST_LOSSES) {
                withLosses.forEach(pair -> pair.losses.clear());
                withLosses.clear();
            }
            withLosses.add(it.pair());
        }
        return it.pair().losses(slot, () -> losses.besidePair(slot, processor, card, it.pair()));
    }

    boolean drivesMatter() {
        return drivesMatter;
    }

    Drive fastest() {
        return foresight.fastest();
    }

    /** What a processor and a card together can reach at best. */
    static final class Pair {
        private final Foresight.Pair bounds;
        private final double workloadsShare;
        private double leastLevelDba;
        private boolean casesSeen;
        private final Map<Foresight.Rates, SoundOutlook.Levels> levels = new HashMap<>();
        private final boolean hopeless;
        private final Map<Foresight.Rates, Foresight.Pair> atRates = new HashMap<>();
        private final Map<Slot, double[]> losses = new EnumMap<>(Slot.class);
        private final Map<SoundOutlook.Shelter, Double> sheltered = new HashMap<>();

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

        /** Least levels in cases, by memory rates. */
        Map<Foresight.Rates, SoundOutlook.Levels> levels() {
            return levels;
        }

        /** Least levels in a case with a cooler, as far as they were asked for. */
        Map<SoundOutlook.Shelter, Double> sheltered() {
            return sheltered;
        }

        boolean casesSeen() {
            return casesSeen;
        }

        /** Takes up the least level in any case; what a supply adds to it is another thing then. */
        void casesSeen(double leastDba) {
            casesSeen = true;
            leastLevelDba = Math.max(leastLevelDba, leastDba);
            losses.remove(Slot.SUPPLY);
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
                DriveRates.withRates(any, read, write),
                DriveRates.withRates(any, slowRead, slowWrite),
                problem.candidates().of(Slot.SUPPLY).stream()
                        .map(candidate -> (Supply) candidate.partOrNull())
                        .toList());
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
        } else if (candidate.slot() == Slot.CABLES && candidate.none()) {
            gain -= weight("look") * NO_CABLES_LOSE;
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

    /** What a machine without a cable set loses in look, whatever the colour of its case. */
    private static final double NO_CABLES_LOSE =
            (1 - LookGoal.withoutCables()) / LOOK.reads().size();

    private static final List<Goal> DECIDED =
            List.of(new WorkloadsGoal(), new QuietGoal(), new EnergyGoal(), new UpgradeRoomGoal());

    /** The bounds for a processor and a card, null for none; computed once. */
    Pair pair(Processor processor, Graphics graphics) {
        Object card = graphics == null ? "none" : graphics;
        return pairs.computeIfAbsent(processor, any -> new IdentityHashMap<>())
                .computeIfAbsent(card, any -> compute(processor, graphics));
    }

    /**
     * Most that the workloads' utility can be with a processor and a card, null for none; below 0
     * when some must is missed.
     */
    double reach(Processor processor, Graphics graphics) {
        List<Prediction> best = foresight.best(processor, graphics);
        return missed(best) ? -1 : WorkloadsGoal.share(best, brief);
    }

    /**
     * The bounds for a processor and any card of a group; null when some must is missed with all of
     * them.
     */
    Pair pair(Processor processor, CardGroup cards) {
        double without = cards.none() ? reach(processor, (Graphics) null) : -1;
        if (cards.ideal() == null) {
            return without < 0 ? null : new Pair(ANYTHING, without, 0, false);
        }
        Foresight.Pair bounds =
                foresight.pair(processor, cards.ideal(), cards.worst(), cards.boardPowerW());
        boolean missed = missed(bounds.best());
        if (missed && without < 0) {
            return null;
        }
        double share = missed ? without : WorkloadsGoal.share(bounds.best(), brief);
        return new Pair(cards.none() ? ANYTHING : bounds, Math.max(share, without), 0, false);
    }

    /** Bounds that hold for anything. */
    private static final Foresight.Pair ANYTHING = new Foresight.Pair(List.of(), 0, 0, 0, 0, 0, 0);

    private Pair compute(Processor processor, Graphics graphics) {
        Foresight.Pair bounds = foresight.pair(processor, graphics);
        boolean hopeless = missed(bounds.best());
        double level = hopeless ? 0 : sound.leastLevelDba(bounds, processor, graphics);
        return new Pair(
                bounds,
                WorkloadsGoal.share(bounds.best(), brief),
                level,
                hopeless || level == SoundOutlook.NO_COOLER || sound.tooLoud(level));
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
        double level = pair == null ? 0 : sound.level(it, pair);
        if (workloads < 0 || level == Double.POSITIVE_INFINITY || sound.tooLoud(level)) {
            return Double.NEGATIVE_INFINITY;
        }
        double points = unknownPoints + weight("workloads") * workloads * FULL;
        points += weight("quiet") * clip(QuietGoal.share(level, brief)) * FULL;
        points += weight("energy") * energy(it, pair) * FULL;
        points += weight("upgrade-room") * room.share(it, pair) * FULL;
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
            return clip(pair == null ? it.reach() : pair.workloadsShare);
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

    double referenceKwh() {
        return referenceKwh;
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

    /** The pair's bounds; at the memory's own rate once that is decided, or at assumed ones. */
    Foresight.Pair bounds(Unfinished it, Pair pair) {
        Foresight.Rates rates = it.assumed();
        if (rates == null && it.has(Slot.BOARD) && it.has(Slot.MEMORY)) {
            int mts = rateWith(it, it.choices()[Slot.MEMORY.ordinal()]);
            rates = new Foresight.Rates(mts, mts);
        }
        return rates == null
                ? pair.bounds
                : pair.atRates.computeIfAbsent(
                        rates,
                        some ->
                                foresight.atRates(
                                        pair.bounds,
                                        (Processor) it.part(Slot.PROCESSOR),
                                        (Graphics) it.part(Slot.GRAPHICS),
                                        some));
    }

    /** Utility of a year's energy. */
    double energy(double kwhPerYear) {
        return clip(1 - kwhPerYear / referenceKwh);
    }

    private double look(Unfinished it) {
        if (!it.has(Slot.CASE)) {
            return 1;
        }
        double sum = 0;
        for (Slot slot : LOOK.reads()) {
            // That there are no cables is counted with the candidates.
            boolean counts = it.part(slot) != null || (it.has(slot) && slot != Slot.CABLES);
            sum += counts ? LookGoal.share(it.build(), slot, brief) : 1;
        }
        return sum / LOOK.reads().size();
    }

    static double clip(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
