package rigbrief.search;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Foresight;
import rigbrief.assess.Prediction;
import rigbrief.brief.Brief;
import rigbrief.catalogue.TaskTime;
import rigbrief.goal.Goal;
import rigbrief.goal.QuietGoal;
import rigbrief.goal.WorkloadsGoal;
import rigbrief.part.Board;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Memory;
import rigbrief.part.PcCase;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;

/**
 * Points that a candidate of an open slot loses against the best one thinkable there, in the goals
 * that no slot decides alone; never positive.
 *
 * <p>Losses of several open slots may be added up: each is the least that its candidate loses
 * whatever the other slots hold, and no two of them count the same shortfall.
 */
final class Losses {
    private static final double FULL = Goal.FULL;

    private final Problem problem;
    private final Brief brief;
    private final Foresight foresight;
    private final Outlook outlook;
    private final double workloadsWeight;
    private final double quietWeight;
    private final double energyWeight;
    private final double roomWeight;
    private final Map<Slot, double[]> watts = new EnumMap<>(Slot.class);
    private final Map<Object, double[]> boards = new HashMap<>();
    private DriveRates driveRates;

    Losses(Problem problem, Foresight foresight, Outlook outlook) {
        this.problem = problem;
        this.brief = problem.assessor().valued();
        this.foresight = foresight;
        this.outlook = outlook;
        this.workloadsWeight = brief.wishes().weight("workloads") * FULL;
        this.quietWeight = brief.wishes().weight("quiet") * FULL;
        this.energyWeight = brief.wishes().weight("energy") * FULL;
        this.roomWeight = brief.wishes().weight("upgrade-room") * FULL / RoomOutlook.ROOM_PARTS;
    }

    /** What each candidate of a slot loses beside a processor and a card, by index. */
    double[] besidePair(Slot slot, Processor processor, Graphics card, Outlook.Pair pair) {
        return switch (slot) {
            case SUPPLY -> supplies(pair);
            case CASE -> cases(card, pair);
            case MEMORY -> memories(processor, card, pair);
            case DRIVE -> drives(processor, card);
            default -> watts(slot);
        };
    }

    /** What the watts of each candidate of a slot lose in energy, by index. */
    private double[] watts(Slot slot) {
        return watts.computeIfAbsent(
                slot,
                any ->
                        each(
                                slot,
                                candidate ->
                                        candidate.none()
                                                ? 0
                                                : energyLoss(
                                                        foresight.moreKwhPerYear(
                                                                Outlook.NOTHING.with(
                                                                        slot,
                                                                        candidate.partOrNull(),
                                                                        candidate.pieces())))));
    }

    /** What the watts of a candidate lose in energy. */
    double watts(Candidate candidate) {
        return watts(candidate.slot())[candidate.index()];
    }

    /** What a candidate loses whatever else is decided: its watts, where its slot has some. */
    double open(Candidate candidate) {
        return candidate.none() || !LoadOutlook.drawsOfItsOwn(candidate.slot())
                ? 0
                : watts(candidate);
    }

    private double energyLoss(double kwh) {
        return -energyWeight * kwh / outlook.referenceKwh();
    }

    private interface Loss {
        double of(Candidate candidate);
    }

    private double[] each(Slot slot, Loss loss) {
        List<Candidate> candidates = problem.candidates().of(slot);
        double[] losses = new double[candidates.size()];
        for (Candidate candidate : candidates) {
            losses[candidate.index()] = loss.of(candidate);
        }
        return losses;
    }

    /** A supply's share of energy, sound and spare watts. */
    private double[] supplies(Outlook.Pair pair) {
        double bestEnergy = outlook.energy(pair.bounds().kwhPerYear());
        double leastLevelDba = outlook.sound().openLevelDba(pair);
        double bestQuiet = quiet(leastLevelDba);
        double bestSpare =
                outlook.room().spareShare(outlook.room().mostSupplyW(), pair.sustainedW());
        return each(
                Slot.SUPPLY,
                candidate -> {
                    Supply supply = (Supply) candidate.partOrNull();
                    double loss = 0;
                    if (energyWeight > 0) {
                        double kwh = foresight.kwhPerYear(pair.bounds(), supply, Outlook.NOTHING);
                        loss += energyWeight * (outlook.energy(kwh) - bestEnergy);
                    }
                    if (quietWeight > 0) {
                        loss +=
                                quietWeight
                                        * (quiet(
                                                        foresight.withSupply(
                                                                leastLevelDba,
                                                                pair.bounds(),
                                                                supply,
                                                                outlook.sound().mostDampingDb()))
                                                - bestQuiet);
                    }
                    double spare = outlook.room().spareShare(supply.watts(), pair.sustainedW());
                    return Math.min(0, loss + roomWeight * (spare - bestSpare));
                });
    }

    /** A board's share of the room for memory, drives and other processors, by index. */
    double[] boards(Processor processor) {
        // What room a board leaves asks no more of a processor.
        return boards.computeIfAbsent(
                processor.family(),
                any ->
                        each(
                                Slot.BOARD,
                                candidate -> {
                                    Board board = (Board) candidate.partOrNull();
                                    return roomWeight
                                            * (outlook.room().boardRoom(processor, board)
                                                    - RoomOutlook.BOARD_ROOM_PARTS);
                                }));
    }

    /** A case that has no room for the next card; nothing where no supply could feed that card. */
    private double[] cases(Graphics card, Outlook.Pair pair) {
        boolean counts =
                roomWeight > 0
                        && outlook.room()
                                .feedsNext(outlook.room().mostSupplyW(), pair.sustainedW());
        return each(
                Slot.CASE,
                candidate ->
                        watts(candidate)
                                + (counts
                                                && !RoomOutlook.takesNext(
                                                        (PcCase) candidate.partOrNull(), card)
                                        ? -roomWeight
                                        : 0));
    }

    /** A kit's share of speed, with the fastest drive. */
    private double[] memories(Processor processor, Graphics card, Outlook.Pair pair) {
        Map<Kit, Double> known = new HashMap<>();
        return each(
                Slot.MEMORY,
                candidate -> {
                    Memory memory = (Memory) candidate.partOrNull();
                    int modules = memory.modules() * candidate.pieces();
                    int most = Math.min(memory.mts(), processor.memoryMts(memory.type()));
                    Kit kit =
                            new Kit(
                                    most * Math.min(modules, 2) / 2,
                                    memory.kitGb() * candidate.pieces());
                    double share =
                            known.computeIfAbsent(
                                    kit,
                                    any ->
                                            WorkloadsGoal.share(
                                                    foresight.atBestDrive(
                                                            processor, card, kit.mts(), kit.gb()),
                                                    brief));
                    double speed = share - pair.workloadsShare();
                    return watts(candidate) + workloadsWeight * Math.min(0, speed);
                });
    }

    /** What speed asks of memory: its rate in MT/s, halved for a single module, and its size. */
    private record Kit(int mts, int gb) {}

    /**
     * A drive's share of speed: a task's utility is no straight line in its seconds, so the loss is
     * the lesser of those at the quickest and at the slowest memory, workload by workload.
     */
    private double[] drives(Processor processor, Graphics card) {
        if (workloadsWeight == 0 || !outlook.drivesMatter()) {
            return watts(Slot.DRIVE);
        }
        List<Prediction> fastHigh = foresight.atMemory(processor, card, outlook.fastest(), true);
        List<Prediction> fastLow = foresight.atMemory(processor, card, outlook.fastest(), false);
        int[] classOf = driveClasses();
        double[] loss =
                driveRates.fastest().stream()
                        .mapToDouble(drive -> drive(processor, card, drive, fastHigh, fastLow))
                        .toArray();
        return each(Slot.DRIVE, candidate -> watts(candidate) + loss[classOf[candidate.index()]]);
    }

    /** Classes of drives that lose the same beside a pair but for their watts, by index. */
    int[] driveClasses() {
        if (driveRates == null) {
            driveRates = new DriveRates(problem.candidates().of(Slot.DRIVE));
        }
        return driveRates.classOf();
    }

    private double drive(
            Processor processor,
            Graphics card,
            Drive drive,
            List<Prediction> fastHigh,
            List<Prediction> fastLow) {
        List<Prediction> high = foresight.atMemory(processor, card, drive, true);
        List<Prediction> low = foresight.atMemory(processor, card, drive, false);
        double loss = 0;
        int weights = 0;
        for (int i = 0; i < high.size(); i++) {
            if (WorkloadsGoal.counts(high.get(i), brief)) {
                int weight = high.get(i).need().weight();
                weights += weight;
                // Frames don't ask for the drive.
                if (high.get(i).workload() instanceof TaskTime) {
                    double atHigh = one(high.get(i)) - one(fastHigh.get(i));
                    double atLow = one(low.get(i)) - one(fastLow.get(i));
                    loss += weight * Math.min(0, Math.max(atHigh, atLow));
                }
            }
        }
        return weights == 0 ? 0 : workloadsWeight * loss / weights;
    }

    private double one(Prediction prediction) {
        return WorkloadsGoal.share(List.of(prediction), brief);
    }

    /** What a kit loses on a board that is decided: its rate there, and the slots it takes. */
    double memory(Unfinished it, Candidate candidate) {
        Board board = (Board) it.part(Slot.BOARD);
        int modules = ((Memory) candidate.partOrNull()).modules() * candidate.pieces();
        double room =
                Outlook.clip((board.memorySlots() - modules) / 2.0)
                        - Outlook.clip((board.memorySlots() - outlook.room().leastModules()) / 2.0);
        double speed =
                WorkloadsGoal.share(outlook.withMemory(it, candidate), brief)
                        - it.pair().workloadsShare();
        return watts(candidate)
                + rateEnergy(it, candidate)
                + roomWeight * Math.min(0, room)
                + workloadsWeight * Math.min(0, speed);
    }

    /** What the power of processor and card at a kit's rate loses over that at the best rate. */
    private double rateEnergy(Unfinished it, Candidate candidate) {
        if (energyWeight == 0) {
            return 0;
        }
        Foresight.Pair least = it.pair().bounds();
        Foresight.Pair with =
                foresight.atRate(
                        least,
                        (Processor) it.part(Slot.PROCESSOR),
                        (Graphics) it.part(Slot.GRAPHICS),
                        outlook.rateWith(it, candidate));
        double moreW = with.processorW() + with.cardW() - least.processorW() - least.cardW();
        return energyLoss(foresight.moreKwhPerYear(moreW, 0));
    }

    /** The place that a drive takes on a board that is decided. */
    double driveRoom(Unfinished it, Candidate candidate) {
        return driveRoom(RoomOutlook.m2Places((Board) it.part(Slot.BOARD)), m2(candidate));
    }

    /** What a case loses but for its sound, once the supply is decided. */
    double caseAlone(Unfinished it, Candidate candidate, double besidePair) {
        return outlook.room().supplyFeedsNext(it) ? besidePair : watts(candidate);
    }

    /** What the best cooler for a case loses there in sound; minus infinity where none will do. */
    double caseSound(Unfinished it, Candidate candidate) {
        return quietWeight == 0 ? 0 : sound(it, outlook.sound().leastLevelInCase(it, candidate));
    }

    /** What a level loses in sound against the least beside the pair. */
    private double sound(Unfinished it, double level) {
        if (level == Double.POSITIVE_INFINITY) {
            return Double.NEGATIVE_INFINITY;
        }
        double more =
                quiet(outlook.sound().atSeat(it, level))
                        - quiet(outlook.sound().atSeat(it, it.pair().leastLevelDba()));
        return quietWeight * Math.min(0, more);
    }

    /** The place that a second drive takes on a board that is decided, beside the first one. */
    double secondRoom(Unfinished it, Candidate first, Candidate second) {
        return secondRoom(RoomOutlook.m2Places((Board) it.part(Slot.BOARD)), m2(first), m2(second));
    }

    /** The places that both drives take on a board that is decided. */
    double drivesRoom(Unfinished it, boolean firstInM2, boolean secondInM2) {
        int places = RoomOutlook.m2Places((Board) it.part(Slot.BOARD));
        int first = firstInM2 ? 1 : 0;
        return driveRoom(places, first) + secondRoom(places, first, secondInM2 ? 1 : 0);
    }

    private double driveRoom(int places, int taken) {
        int least = outlook.room().onlyM2Drives() ? 1 : 0;
        double room = Outlook.clip((places - taken) / 2.0) - Outlook.clip((places - least) / 2.0);
        return roomWeight * Math.min(0, room);
    }

    private double secondRoom(int places, int first, int second) {
        double room =
                Outlook.clip((places - first - second) / 2.0)
                        - Outlook.clip((places - first) / 2.0);
        return roomWeight * Math.min(0, room);
    }

    private static int m2(Candidate drive) {
        return !drive.none() && ((Drive) drive.partOrNull()).form().m2() ? 1 : 0;
    }

    /**
     * What a cooler loses in a case that is decided with the best fans; minus infinity where it
     * gets too hot or too loud.
     */
    double cooler(Unfinished it, Candidate candidate) {
        return cooler(it, candidate, outlook.sound().levelWithCooler(it, candidate));
    }

    /** The same without any fans added to those of the case. */
    double bareCooler(Unfinished it, Candidate candidate) {
        return cooler(it, candidate, outlook.sound().levelBare(it, candidate));
    }

    /** The same with a level of fans in the case. */
    double cooler(Unfinished it, Candidate candidate, double level) {
        if (level == Double.POSITIVE_INFINITY
                || outlook.sound().tooLoud(outlook.sound().atSeat(it, level))) {
            return Double.NEGATIVE_INFINITY;
        }
        return watts(candidate) + (quietWeight == 0 ? 0 : sound(it, level));
    }

    /**
     * What a level in a case that is decided loses beside every supply that sounds no less than one
     * and no more than another: utility is clipped at both ends, so that between the two it is
     * first falling and then rising with the supply's sound, and greatest at an end.
     */
    double between(Unfinished it, double level, Supply quietest, Supply loudest, double[] open) {
        if (level == Double.POSITIVE_INFINITY
                || outlook.sound().tooLoud(outlook.sound().atSeat(it, level, quietest))) {
            return Double.NEGATIVE_INFINITY;
        }
        if (quietWeight == 0) {
            return 0;
        }
        double beside = quiet(outlook.sound().atSeat(it, level, quietest)) - open[0];
        double besideLoudest = quiet(outlook.sound().atSeat(it, level, loudest)) - open[1];
        return quietWeight * Math.min(0, Math.max(beside, besideLoudest));
    }

    /** Utility of the least level beside the pair with each of two supplies, no case decided. */
    double[] open(Unfinished it, Supply quietest, Supply loudest) {
        double level = it.pair().leastLevelDba();
        return new double[] {
            quiet(outlook.sound().atSeat(it, level, quietest)),
            quiet(outlook.sound().atSeat(it, level, loudest))
        };
    }

    /** What fans lose in sound against the best ones, once all but drives is decided. */
    double fans(Unfinished it, Candidate candidate) {
        if (quietWeight == 0) {
            return watts(candidate);
        }
        double level = outlook.sound().levelWithFans(it, candidate);
        if (level == Double.POSITIVE_INFINITY
                || outlook.sound().tooLoud(outlook.sound().atSeat(it, level))) {
            return Double.NEGATIVE_INFINITY;
        }
        double more =
                quiet(outlook.sound().atSeat(it, level))
                        - quiet(outlook.sound().level(it, it.pair()));
        return watts(candidate) + quietWeight * Math.min(0, more);
    }

    private double quiet(double levelDba) {
        return Outlook.clip(QuietGoal.share(levelDba, brief));
    }
}
