package rigbrief.assess;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import rigbrief.assess.PowerModel.Draw;
import rigbrief.assess.SpeedModel.Rig;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.model.air.AirDensity;
import rigbrief.model.heat.CoolingCase;
import rigbrief.model.heat.FanSpeedSolver;
import rigbrief.model.heat.Speeds;
import rigbrief.model.noise.SoundDistance;
import rigbrief.model.noise.SoundSum;
import rigbrief.model.power.DutyCycle;
import rigbrief.model.power.TypicalDraw;
import rigbrief.model.power.WallPower;
import rigbrief.model.power.YearlyEnergy;
import rigbrief.part.Cooler;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.PcCase;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;

/**
 * What no build with a given processor and card can do better than, whatever fills the other slots.
 *
 * <p>Each figure is a bound: speed at the best memory and drive, power at the least of every other
 * part, noise in open air at room temperature. The models are the same as for a whole build.
 */
public final class Foresight {
    private static final double SILENCE = Double.NEGATIVE_INFINITY;
    private static final double PLENTY_GB = 1 << 20;
    private static final int DAYS_A_YEAR = 365;
    private static final int HOURS_A_YEAR = 8_760;

    private final Assessor assessor;
    private final TreeSet<Integer> rates;
    private final Drive fastest;
    private final Drive slowest;
    private final List<Supply> supplies;
    private final Map<Processor, List<Integer>> reachable = new IdentityHashMap<>();
    private final double leastOthersW;
    private final double leastOthersIdleW;

    /**
     * A foresight.
     *
     * @param rates memory rates that some kit or board runs at, in MT/s
     * @param fastest a drive at least as fast as every candidate
     * @param slowest a drive at most as fast as every candidate
     * @param supplies every supply that may be chosen
     */
    public Foresight(
            Assessor assessor,
            List<Integer> rates,
            Drive fastest,
            Drive slowest,
            List<Supply> supplies) {
        this.assessor = assessor;
        this.rates = new TreeSet<>(rates);
        this.fastest = fastest;
        this.slowest = slowest;
        this.supplies = unlike(supplies);
        this.leastOthersW =
                TypicalDraw.BOARD_LOAD_W
                        + TypicalDraw.MODULE_LOAD_W
                        + TypicalDraw.SATA_DRIVE_LOAD_W
                        + TypicalDraw.ATTACHED_W;
        this.leastOthersIdleW =
                TypicalDraw.BOARD_IDLE_W
                        + TypicalDraw.MODULE_IDLE_W
                        + TypicalDraw.SATA_DRIVE_IDLE_W;
    }

    /** One supply of each rating and efficiency: the mains can't tell more of them apart. */
    private static List<Supply> unlike(List<Supply> supplies) {
        Map<List<Object>, Supply> unlike = new LinkedHashMap<>();
        for (Supply supply : supplies) {
            unlike.putIfAbsent(List.of(supply.watts(), supply.efficiency()), supply);
        }
        return List.copyOf(unlike.values());
    }

    /**
     * Bounds for a processor and a card.
     *
     * @param best predictions at the best memory and drive
     * @param processorW least power of the processor under the heaviest workload, in W
     * @param cardW least power of the card, in W
     * @param sustainedW least sustained load of the whole machine, in W
     * @param loadW least load of the whole machine under the heaviest workload, in W
     * @param idleW least load of the whole machine at idle, in W
     * @param kwhPerYear least energy a year with any supply
     */
    public record Pair(
            List<Prediction> best,
            double processorW,
            double cardW,
            double sustainedW,
            double loadW,
            double idleW,
            double kwhPerYear) {}

    /** Predictions for memory that is decided, at the quickest drive that is left. */
    public List<Prediction> atBestDrive(Assessment it) {
        int modules = Math.min(it.build().memoryModules(), 2);
        return assessor.speed()
                .predictions(
                        new Rig(
                                it.build().processor(),
                                it.build().has(Slot.GRAPHICS) ? it.build().graphics() : null,
                                it.memoryMts() * modules / 2,
                                it.build().memoryGb(),
                                fastest));
    }

    /** Predictions for a memory rate and size, at the quickest drive that is left. */
    public List<Prediction> atBestDrive(
            Processor processor, Graphics graphics, int mts, int memoryGb) {
        return assessor.speed().predictions(new Rig(processor, graphics, mts, memoryGb, fastest));
    }

    /** What the parts of a build other than processor, card and board draw at work, in W. */
    public double loadW(Build alone) {
        return PowerModel.othersW(alone, true) - PowerModel.othersW(Build.empty(), true);
    }

    /** What a pair's bounds count for such parts, in W. */
    public double countedW() {
        return TypicalDraw.MODULE_LOAD_W + TypicalDraw.SATA_DRIVE_LOAD_W;
    }

    /** A drive at least as fast as every candidate. */
    public Drive fastest() {
        return fastest;
    }

    /**
     * Predictions for a drive, with the quickest memory that the processor can see and plenty of
     * it, or with the slowest.
     */
    public List<Prediction> atMemory(
            Processor processor, Graphics graphics, Drive drive, boolean quickest) {
        List<Integer> reachable = reachable(processor);
        int mts = reachable.get(quickest ? reachable.size() - 1 : 0);
        return assessor.speed()
                .predictions(new Rig(processor, graphics, mts, (int) PLENTY_GB, drive));
    }

    /** The same bounds, with the power at a memory rate in MT/s, halved for a single module. */
    public Pair atRate(Pair pair, Processor processor, Graphics graphics, int mts) {
        List<Prediction> predictions =
                assessor.speed()
                        .predictions(new Rig(processor, graphics, mts, (int) PLENTY_GB, slowest));
        Draw draw =
                PowerModel.loadW(
                        predictions,
                        processor.sustainedPowerW(),
                        graphics == null ? 0 : graphics.boardPowerW());
        return new Pair(
                pair.best(),
                Math.max(pair.processorW(), draw.processorW()),
                Math.max(pair.cardW(), draw.cardW()),
                pair.sustainedW(),
                pair.loadW(),
                pair.idleW(),
                pair.kwhPerYear());
    }

    /**
     * Memory rates, in MT/s, halved for a single module.
     *
     * @param least least of them
     * @param most most of them
     */
    public record Rates(int least, int most) {}

    /** The same bounds, with the least power at any memory rate out of some. */
    public Pair atRates(Pair pair, Processor processor, Graphics graphics, Rates rates) {
        if (rates.least() == rates.most()) {
            return atRate(pair, processor, graphics, rates.least());
        }
        double processorW = Double.MAX_VALUE;
        double cardW = Double.MAX_VALUE;
        for (int mts : reachable(processor)) {
            if (rates.least() <= mts && mts <= rates.most()) {
                Pair at = atRate(pair, processor, graphics, mts);
                processorW = Math.min(processorW, at.processorW());
                cardW = Math.min(cardW, at.cardW());
            }
        }
        return processorW == Double.MAX_VALUE
                ? pair
                : new Pair(
                        pair.best(),
                        processorW,
                        cardW,
                        pair.sustainedW(),
                        pair.loadW(),
                        pair.idleW(),
                        pair.kwhPerYear());
    }

    /**
     * The least energy a year, in kWh, that so much more load takes, with any supply.
     *
     * @param moreLoadW more load at work, in W
     * @param moreIdleW more load at idle, in W
     */
    public double moreKwhPerYear(double moreLoadW, double moreIdleW) {
        Brief.Place place = assessor.brief().place();
        double hours = place.hoursPerDay() * place.loadShare() * DAYS_A_YEAR;
        double idle = Math.max(0, idleHours() - hours) * moreIdleW;
        return WallPower.LEAST_SLOPE * (idle + Math.min(hours, idleHours()) * moreLoadW) / 1_000;
    }

    /** As {@link #moreKwhPerYear}, for what a part draws beyond what an open slot is counted at. */
    public double moreKwhPerYear(Build alone) {
        Build nothing = Build.empty();
        return moreKwhPerYear(
                Math.max(0, othersW(alone, true) - othersW(nothing, true)),
                Math.max(0, othersW(alone, false) - othersW(nothing, false)));
    }

    /** Predictions for a processor and a card, null for none, at the best memory and drive. */
    public List<Prediction> best(Processor processor, Graphics graphics) {
        List<Integer> reachable = reachable(processor);
        int most = reachable.get(reachable.size() - 1);
        return assessor.speed()
                .predictions(new Rig(processor, graphics, most, (int) PLENTY_GB, fastest));
    }

    private List<Prediction> at(
            Processor processor, MachineRates.Picture picture, boolean quickest, Drive drive) {
        List<Integer> reachable = reachable(processor);
        int mts = reachable.get(quickest ? reachable.size() - 1 : 0);
        Rig rig = new Rig(processor, null, mts, (int) PLENTY_GB, drive);
        return assessor.speed().predictions(MachineRates.of(rig).with(picture));
    }

    /**
     * The bounds for a processor and any of some cards.
     *
     * <p>A card is busy for the least share of the time where it is quickest and the processor
     * slowest, and the other way round; the heaviest workload draws no less than any other one.
     *
     * @param ideal as good as the best of them in everything
     * @param worst as bad as the worst
     * @param boardPowerW least board power of any, in W
     */
    public Pair pair(
            Processor processor,
            MachineRates.Picture ideal,
            MachineRates.Picture worst,
            double boardPowerW) {
        List<Prediction> best = at(processor, ideal, true, fastest);
        List<Prediction> processorLeast = at(processor, worst, true, slowest);
        List<Prediction> cardLeast = at(processor, ideal, false, slowest);
        double sustained = processor.sustainedPowerW();
        double processorIdleW = TypicalDraw.processorIdleW(sustained);
        double cardIdleW = TypicalDraw.cardIdleW(boardPowerW);
        double busyW = 0;
        for (int i = 0; i < best.size(); i++) {
            busyW =
                    Math.max(
                            busyW,
                            processorLeast.get(i).processorUse() * sustained
                                    + cardLeast.get(i).graphicsUse() * boardPowerW);
        }
        if (best.isEmpty()) {
            busyW =
                    PowerModel.OFFICE_PROCESSOR_USE * sustained
                            + PowerModel.OFFICE_GRAPHICS_USE * boardPowerW;
        }
        // Of what a part draws when busy some is drawn at rest too, of a stronger card less of it.
        double overIdle =
                Math.min(overIdle(processorIdleW, sustained), overIdle(cardIdleW, boardPowerW));
        double idleW = processorIdleW + cardIdleW + leastOthersIdleW;
        double loadW = processorIdleW + cardIdleW + overIdle * busyW + leastOthersW;
        double sustainedW = sustained + boardPowerW + leastOthersW;
        return new Pair(best, 0, 0, sustainedW, loadW, idleW, leastKwh(sustainedW, loadW, idleW));
    }

    /** The bounds for a processor and a card, null for none. */
    public Pair pair(Processor processor, Graphics graphics) {
        List<Integer> reachable = reachable(processor);
        List<Prediction> best = best(processor, graphics);
        double sustained = processor.sustainedPowerW();
        double board = graphics == null ? 0 : graphics.boardPowerW();
        double processorW = Double.MAX_VALUE;
        double cardW = Double.MAX_VALUE;
        for (int mts : reachable) {
            List<Prediction> predictions =
                    assessor.speed()
                            .predictions(
                                    new Rig(processor, graphics, mts, (int) PLENTY_GB, slowest));
            Draw draw = PowerModel.loadW(predictions, sustained, board);
            processorW = Math.min(processorW, draw.processorW());
            cardW = Math.min(cardW, draw.cardW());
        }
        double sustainedW = sustained + board + leastOthersW;
        double loadW = processorW + cardW + leastOthersW;
        double idleW =
                TypicalDraw.processorIdleW(sustained)
                        + (graphics == null ? 0 : TypicalDraw.cardIdleW(board))
                        + leastOthersIdleW;
        return new Pair(
                best,
                processorW,
                cardW,
                sustainedW,
                loadW,
                idleW,
                leastKwh(sustainedW, loadW, idleW));
    }

    private static double overIdle(double idleW, double fullW) {
        return fullW > 0 ? 1 - idleW / fullW : 0;
    }

    /** Rates a processor can see, lowest first, each also halved for a single module. */
    private List<Integer> reachable(Processor processor) {
        return reachable.computeIfAbsent(processor, this::computeReachable);
    }

    private List<Integer> computeReachable(Processor processor) {
        int most = 0;
        for (var rate : processor.memory()) {
            most = Math.max(most, rate.mts());
        }
        TreeSet<Integer> seen = new TreeSet<>();
        for (int rate : rates) {
            for (var own : processor.memory()) {
                seen.add(Math.min(rate, own.mts()));
                seen.add(Math.min(rate, own.mts()) / 2);
            }
        }
        if (seen.isEmpty()) {
            seen.add(most);
        }
        return new ArrayList<>(seen);
    }

    private double leastKwh(double sustainedW, double loadW, double idleW) {
        double least = Double.MAX_VALUE;
        for (Supply supply : supplies) {
            if (supply.watts() >= sustainedW) {
                least = Math.min(least, kwh(supply, loadW, idleW));
            }
        }
        return least == Double.MAX_VALUE ? 0 : least;
    }

    /** The least energy a year with a supply, in kWh, given what else of the build is decided. */
    public double kwhPerYear(Pair pair, Supply supply, Build build) {
        double loadW = pair.processorW() + pair.cardW() + othersW(build, true);
        double idleW = pair.idleW() - leastOthersIdleW + othersW(build, false);
        return kwh(supply, loadW, idleW);
    }

    /**
     * The least that everything but processor and card draws: open slots count the least that could
     * fill them.
     */
    static double othersW(Build build, boolean working) {
        double sum = PowerModel.othersW(build, working);
        if (!build.has(Slot.MEMORY)) {
            sum += working ? TypicalDraw.MODULE_LOAD_W : TypicalDraw.MODULE_IDLE_W;
        }
        if (!build.has(Slot.DRIVE)) {
            sum += working ? TypicalDraw.SATA_DRIVE_LOAD_W : TypicalDraw.SATA_DRIVE_IDLE_W;
        }
        return sum;
    }

    private double kwh(Supply supply, double loadW, double idleW) {
        Brief brief = assessor.brief();
        return kwh(PowerModel.wallW(supply, brief, idleW), PowerModel.wallW(supply, brief, loadW));
    }

    private static double idleHours() {
        return (DutyCycle.VERSION_8.longIdlePercent() + DutyCycle.VERSION_8.shortIdlePercent())
                * HOURS_A_YEAR
                / 100.0;
    }

    private double kwh(double wallIdle, double wall) {
        Brief.Place place = assessor.brief().place();
        double hours = place.hoursPerDay() * place.loadShare() * DAYS_A_YEAR;
        double idleHours = idleHours();
        double restKwh =
                YearlyEnergy.kwh(
                        DutyCycle.VERSION_8,
                        TypicalDraw.OFF_MAINS_W,
                        TypicalDraw.SLEEP_MAINS_W,
                        0,
                        0);
        // With more hours of work than the cycle has idle ones, idling draws at most what work
        // draws.
        double watthours =
                hours <= idleHours
                        ? wallIdle * (idleHours - hours) + wall * hours
                        : wall * idleHours;
        return restKwh + watthours / 1_000;
    }

    /**
     * The least level at the seat with one cooler, in dB(A).
     *
     * @param cooler the cooler; null for the processor's own
     * @param dampingDb the most that any case left takes away, in dB
     */
    public double leastLevelDba(
            Pair pair, Processor processor, Graphics graphics, Cooler cooler, double dampingDb) {
        return openAir(pair.processorW(), pair.cardW(), processor, graphics, cooler, dampingDb)
                .levelDba();
    }

    /**
     * The least level at the seat, in dB(A), of a build of which processor, card, board, case,
     * cooler and fans are decided; plus infinity when even so some part gets too hot at sustained
     * power.
     */
    public double leastLevelDba(Pair pair, Assessment it) {
        return leastLevelDba(pair, it, ClimateModel.breath(it), othersW(it.build(), true));
    }

    /**
     * Coolers of one kind in a case.
     *
     * @param graphics the card; null for none
     * @param airs what the fans of the case may be with such a cooler
     * @param withFans whether fans may be added to those of the case
     */
    public CoolersInCase coolers(
            Pair pair,
            Processor processor,
            Graphics graphics,
            PcCase pcCase,
            CaseAirs airs,
            boolean withFans) {
        return new CoolersInCase(
                assessor,
                pair,
                processor,
                graphics,
                pcCase,
                airs,
                withFans ? airs.best() : List.of(airs.own()));
    }

    private double leastLevelDba(
            Pair pair, Assessment it, ClimateModel.Breath breath, double othersW) {
        double cardW = it.build().has(Slot.GRAPHICS) ? it.build().graphics().boardPowerW() : 0;
        double sustainedW = it.build().processor().sustainedPowerW();
        double excessK = ClimateModel.shelteredExcessK(it, sustainedW, cardW, othersW, breath);
        if (Climate.decikelvin(excessK) > 0) {
            return Double.POSITIVE_INFINITY;
        }
        return ClimateModel.sheltered(it, pair.processorW(), pair.cardW(), othersW, breath)
                .levelDba();
    }

    /**
     * A level at the seat with a supply's own sound added behind a damping in dB: sound energies
     * add up.
     */
    public double withSupply(double levelDba, Pair pair, Supply supply, double dampingDb) {
        double supplyDba =
                SoundDistance.atSeatDba(
                        supplyDba(pair, supply) - dampingDb,
                        assessor.brief().noise().seatDistanceM());
        return SoundSum.dba(levelDba, supplyDba);
    }

    /** Least sound of a supply at its own place, in dB(A), with a pair at work. */
    public double supplyDba(Pair pair, Supply supply) {
        return ClimateModel.leastSupplyDba(supply, pair.loadW());
    }

    /**
     * A level at the seat with a drive's sound added, 0 for a silent one, behind a damping in dB.
     */
    public double withDrive(double levelDba, double driveDba, double dampingDb) {
        return driveDba <= 0
                ? levelDba
                : SoundSum.dba(
                        levelDba,
                        SoundDistance.atSeatDba(
                                driveDba - dampingDb, assessor.brief().noise().seatDistanceM()));
    }

    /**
     * Whether a cooler keeps the processor under its limit at sustained power, were the case all
     * open.
     */
    public boolean coolEnough(Processor processor, Cooler cooler) {
        double excessK =
                openAir(processor.sustainedPowerW(), 0, processor, null, cooler, 0).excessK();
        return Climate.decikelvin(excessK) == 0;
    }

    private Speeds openAir(
            double processorW,
            double cardW,
            Processor processor,
            Graphics graphics,
            Cooler cooler,
            double dampingDb) {
        Brief brief = assessor.brief();
        Brief.Place place = brief.place();
        return FanSpeedSolver.quietest(
                new CoolingCase(
                        new CoolingCase.Air(
                                place.roomC(),
                                AirDensity.kgM3(place.roomC(), place.altitudeM()),
                                0,
                                1,
                                SILENCE),
                        ClimateModel.processor(processor, cooler, processorW),
                        graphics == null
                                ? CoolingCase.Card.NONE
                                : ClimateModel.card(
                                        graphics, cardW, assessor.catalogue().reference()),
                        SILENCE,
                        new CoolingCase.Seat(
                                dampingDb,
                                brief.noise().seatDistanceM(),
                                ClimateModel.ROOM_FLOOR_DBA),
                        brief.headroom().thermalMarginK()));
    }
}
