package rigbrief.assess;

import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Reference;
import rigbrief.model.air.AirDensity;
import rigbrief.model.air.OperatingPoint;
import rigbrief.model.heat.CardCooling;
import rigbrief.model.heat.CoolingCase;
import rigbrief.model.heat.FanSpeedSolver;
import rigbrief.model.heat.Speeds;
import rigbrief.model.noise.SoundSum;
import rigbrief.model.power.TypicalDraw;
import rigbrief.part.BoxedCooler;
import rigbrief.part.Cooler;
import rigbrief.part.Drive;
import rigbrief.part.Fan;
import rigbrief.part.Graphics;
import rigbrief.part.PcCase;
import rigbrief.part.Place;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;

/**
 * Heat and noise of a build: the case's operating point, then the quietest fan speeds that keep
 * processor and card under their limits.
 */
final class ClimateModel {
    /** A quiet room by day, in dB(A). Common practice. */
    static final double ROOM_FLOOR_DBA = 20;

    /**
     * A boxed cooler is made to hold its rated heat 60 K over the air it draws. Common practice.
     */
    static final double BOXED_COOLER_K = 60;

    /** How much quieter a disk is that only spins, in dB. Common practice. */
    private static final double DISK_IDLE_DB = 3;

    /**
     * Thermal resistance from die to lid, paste included, in K/W: the first two steps of the
     * thermal ladder, which no cooler's sheet contains. Common practice.
     */
    static final double INSIDE_KW = 0.10;

    /** Thermal resistance of a processor without a cooler, in K/W. Common practice. */
    private static final double BARE_LID_KW = 10;

    private static final double SILENCE = Double.NEGATIVE_INFINITY;

    private ClimateModel() {}

    static Climate idle(Assessment it) {
        Build build = it.build();
        return climate(it, processorIdleW(build), cardIdleW(build), false);
    }

    static Climate load(Assessment it) {
        return climate(it, PowerModel.processorLoadW(it), PowerModel.cardLoadW(it), true);
    }

    static Climate full(Assessment it) {
        Build build = it.build();
        return climate(it, build.processor().sustainedPowerW(), cardFullW(build), true);
    }

    /** The same cooling case as for {@link #idle}. */
    static CoolingCase idleCase(Assessment it) {
        return coolingCase(it, processorIdleW(it.build()), cardIdleW(it.build()), false);
    }

    /** The same cooling case as for {@link #load}. */
    static CoolingCase loadCase(Assessment it) {
        return coolingCase(it, PowerModel.processorLoadW(it), PowerModel.cardLoadW(it), true);
    }

    /** The same cooling case as for {@link #full}. */
    static CoolingCase fullCase(Assessment it) {
        Build build = it.build();
        return coolingCase(it, build.processor().sustainedPowerW(), cardFullW(build), true);
    }

    private static double processorIdleW(Build build) {
        return TypicalDraw.processorIdleW(build.processor().sustainedPowerW());
    }

    private static double cardIdleW(Build build) {
        return build.has(Slot.GRAPHICS) ? TypicalDraw.cardIdleW(build.graphics().boardPowerW()) : 0;
    }

    private static double cardFullW(Build build) {
        return build.has(Slot.GRAPHICS) ? build.graphics().boardPowerW() : 0;
    }

    /**
     * Speeds with at least so much heat, for a build of which only processor, card, board, case,
     * cooler and fans are decided, and with all its case fans standing for some: level and excess
     * are then no higher than with the rest.
     */
    static Speeds sheltered(
            Assessment it, double processorW, double cardW, double othersW, Breath breath) {
        return FanSpeedSolver.quietest(shelteredCase(it, processorW, cardW, othersW, breath));
    }

    /**
     * By how much a part is too hot, in K, with every fan flat out: if that is not cool enough, no
     * speeds are.
     */
    static double shelteredExcessK(
            Assessment it, double processorW, double cardW, double othersW, Breath breath) {
        return FanSpeedSolver.flatOutExcessK(shelteredCase(it, processorW, cardW, othersW, breath));
    }

    private static CoolingCase shelteredCase(
            Assessment it, double processorW, double cardW, double othersW, Breath breath) {
        Build build = it.build();
        return new CoolingCase(
                air(it, processorW, cardW, othersW, breath),
                processor(
                        build.processor(),
                        build.has(Slot.COOLER) ? build.cooler() : null,
                        processorW),
                build.has(Slot.GRAPHICS)
                        ? card(build.graphics(), cardW, it.catalogue().reference())
                        : CoolingCase.Card.NONE,
                SILENCE,
                seat(it),
                it.brief().headroom().thermalMarginK());
    }

    private static CoolingCase.Seat seat(Assessment it) {
        return new CoolingCase.Seat(
                it.build().pcCase().dampingDb(),
                it.brief().noise().seatDistanceM(),
                ROOM_FLOOR_DBA);
    }

    private static Climate climate(
            Assessment it, double processorW, double cardW, boolean working) {
        Speeds speeds = FanSpeedSolver.quietest(coolingCase(it, processorW, cardW, working));
        return new Climate(
                speeds.processorC() + insideK(processorW),
                speeds.cardC(),
                speeds.caseRiseK(),
                speeds.caseShare(),
                speeds.coolerShare(),
                speeds.levelDba(),
                speeds.excessK());
    }

    /** What the choice of fan speeds is told of a finished build in one state. */
    static CoolingCase coolingCase(
            Assessment it, double processorW, double cardW, boolean working) {
        Build build = it.build();
        double othersW = PowerModel.othersW(build, working);
        return new CoolingCase(
                air(it, processorW, cardW, othersW, breath(it)),
                processor(
                        build.processor(),
                        build.has(Slot.COOLER) ? build.cooler() : null,
                        processorW),
                build.has(Slot.GRAPHICS)
                        ? card(build.graphics(), cardW, it.catalogue().reference())
                        : CoolingCase.Card.NONE,
                constantDba(build, processorW + cardW + othersW, working),
                seat(it),
                it.brief().headroom().thermalMarginK());
    }

    /**
     * What all fans of a case move at full speed, and how loud they are then.
     *
     * @param flowM3h air through the case, in m3/h
     * @param levelDba their level, in dB(A); minus infinity without any
     */
    record Breath(double flowM3h, double levelDba) {}

    /** What the fans of a case move, those in the box and those added. */
    static Breath breath(Assessment it) {
        PcCase pcCase = it.build().pcCase();
        double free = 0;
        double perPressure = 0;
        double energy = 0;
        for (Layout.PlacedFans fans : it.layout().includedFans()) {
            free += fans.count() * pcCase.includedFanM3h();
            perPressure += fans.count() * pcCase.includedFanM3h() / pcCase.includedFanPa();
            energy += fans.count() * SoundSum.energy(pcCase.includedFanDba());
        }
        for (Layout.PlacedFans fans : it.layout().addedFans()) {
            Fan fan = it.build().fan();
            free += fans.count() * fan.flowM3h();
            perPressure += fans.count() * fan.flowM3h() / fan.pressurePa();
            energy += fans.count() * SoundSum.energy(fan.maxDba());
        }
        return new Breath(
                OperatingPoint.flowM3h(free, perPressure, pcCase.impedance()),
                energy > 0 ? SoundSum.levelDba(energy) : SILENCE);
    }

    private static CoolingCase.Air air(
            Assessment it, double processorW, double cardW, double othersW, Breath breath) {
        Brief.Place place = it.brief().place();
        double inside = cardW + othersW + (exhaustsOwnHeat(it) ? 0 : processorW);
        return new CoolingCase.Air(
                place.roomC(),
                AirDensity.kgM3(place.roomC(), place.altitudeM()),
                inside,
                breath.flowM3h(),
                breath.levelDba());
    }

    /** A radiator on top or behind blows the processor's heat straight out of the case. */
    static boolean exhaustsOwnHeat(Assessment it) {
        Place place = it.layout().radiator().orElse(null);
        return place == Place.TOP || place == Place.REAR;
    }

    /** The processor under its cooler, null for the boxed one. */
    static CoolingCase.Processor processor(Processor processor, Cooler cooler, double processorW) {
        double lidLimitC = processor.limitC() - insideK(processorW);
        if (cooler != null) {
            double dba = cooler.maxDba();
            return new CoolingCase.Processor(
                    processorW, lidLimitC, cooler.resistanceKw(), dba > 0 ? dba : SILENCE);
        }
        // Without any cooler the search still needs a slope: a bare lid gets rid of next to
        // nothing.
        double resistanceKw =
                processor
                        .boxedCooler()
                        .map(
                                boxed ->
                                        Math.max(
                                                0.01,
                                                BOXED_COOLER_K / boxed.ratedHeatW() - INSIDE_KW))
                        .orElse(BARE_LID_KW);
        double dba = processor.boxedCooler().map(BoxedCooler::maxDba).orElse(SILENCE);
        return new CoolingCase.Processor(processorW, lidLimitC, resistanceKw, dba);
    }

    /** How much hotter the die is than the lid the cooler sits on, in K. */
    private static double insideK(double processorW) {
        return processorW * INSIDE_KW;
    }

    /** A card under the catalogue's reference conditions. */
    static CoolingCase.Card card(Graphics card, double cardW, Reference reference) {
        return new CoolingCase.Card(
                cardW,
                reference.cardLimitC(),
                CardCooling.referenceKw(card.boardPowerW(), reference.inletC(), reference.cardC()),
                card.loadDba(),
                card.idleDba() > 0 ? card.idleDba() : SILENCE);
    }

    private static double constantDba(Build build, double dcW, boolean working) {
        double energy = SoundSum.energy(supplyDba(build.supply(), dcW));
        energy += driveEnergy(build, Slot.DRIVE, working);
        energy += driveEnergy(build, Slot.SECOND_DRIVE, working);
        return SoundSum.levelDba(energy);
    }

    private static double driveEnergy(Build build, Slot slot, boolean working) {
        double dba = build.has(slot) ? ((Drive) build.part(slot)).dba() : 0;
        return dba > 0 ? SoundSum.energy(working ? dba : dba - DISK_IDLE_DB) : 0;
    }

    /**
     * The least level of a supply that carries at least a load: its lowest stated one unless it
     * gets louder throughout.
     */
    static double leastSupplyDba(Supply supply, double leastDcW) {
        boolean louder = supply.dba20() <= supply.dba50() && supply.dba50() <= supply.dba100();
        return louder
                ? supplyDba(supply, leastDcW)
                : Math.min(supply.dba20(), Math.min(supply.dba50(), supply.dba100()));
    }

    /** Straight lines between the three stated levels; the lowest one below 20 % load. */
    private static double supplyDba(Supply supply, double dcW) {
        double share = dcW / supply.watts();
        if (share <= 0.2) {
            return supply.dba20();
        }
        if (share <= 0.5) {
            return supply.dba20() + (supply.dba50() - supply.dba20()) * (share - 0.2) / 0.3;
        }
        double over = Math.min(1, (share - 0.5) / 0.5);
        return supply.dba50() + (supply.dba100() - supply.dba50()) * over;
    }
}
