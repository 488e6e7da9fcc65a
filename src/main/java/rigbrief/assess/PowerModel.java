package rigbrief.assess;

import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.model.power.DutyCycle;
import rigbrief.model.power.EfficiencyLevel;
import rigbrief.model.power.MainsColumn;
import rigbrief.model.power.TypicalDraw;
import rigbrief.model.power.UtilisationDraw;
import rigbrief.model.power.WallPower;
import rigbrief.model.power.YearlyEnergy;
import rigbrief.part.CoolerType;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;

/**
 * Electrical load of a build: data-sheet power of processor and card, typical draw of the rest.
 *
 * <p>Energy of a year: the ENERGY STAR version 8 desktop duty cycle, plus the brief's hours under
 * load.
 */
final class PowerModel {
    /**
     * How the processor and the card are used when the brief names no workload: office work. Common
     * practice.
     */
    static final double OFFICE_PROCESSOR_USE = 0.4;

    static final double OFFICE_GRAPHICS_USE = 0.1;
    private static final int DAYS_A_YEAR = 365;

    private PowerModel() {}

    static Power of(Assessment it) {
        Build build = it.build();
        Processor processor = build.processor();
        double others = othersW(build, true);
        double sustained = it.sustainedW();
        double peak = it.peakW();
        double load = processorLoadW(it) + cardLoadW(it) + others;
        double idle =
                TypicalDraw.processorIdleW(processor.sustainedPowerW())
                        + (build.has(Slot.GRAPHICS) ? TypicalDraw.cardIdleW(cardW(build)) : 0)
                        + othersW(build, false);
        double wall = wallW(it, load);
        double wallIdle = wallW(it, idle);
        double kwh =
                YearlyEnergy.kwh(
                                DutyCycle.VERSION_8,
                                TypicalDraw.OFF_MAINS_W,
                                TypicalDraw.SLEEP_MAINS_W,
                                wallIdle,
                                wallIdle)
                        + YearlyEnergy.addedByLoadKwh(wall, wallIdle, loadHours(it));
        return new Power(
                sustained,
                peak,
                load,
                idle,
                wall,
                wallIdle,
                sustained / build.supply().watts(),
                kwh);
    }

    /** Every part at its sustained figure, in W; of an unfinished build, what is decided so far. */
    static double sustainedW(Build build) {
        return build.processor().sustainedPowerW() + cardW(build) + othersW(build, true);
    }

    /** Processor power under the heaviest workload, in W. */
    static double processorLoadW(Assessment it) {
        return loadW(it).processorW();
    }

    /** Card power under the heaviest workload, in W; 0 without a card. */
    static double cardLoadW(Assessment it) {
        return loadW(it).cardW();
    }

    private static Draw loadW(Assessment it) {
        return loadW(it.predictions(), it.build().processor().sustainedPowerW(), cardW(it.build()));
    }

    /**
     * What processor and card draw under the heaviest of some workloads.
     *
     * @param sustainedW the processor's sustained power, in W
     * @param boardPowerW the card's power, in W; 0 without a card
     */
    static Draw loadW(List<Prediction> predictions, double sustainedW, double boardPowerW) {
        Prediction heaviest = heaviest(predictions, sustainedW, boardPowerW);
        double processorUse = heaviest == null ? OFFICE_PROCESSOR_USE : heaviest.processorUse();
        double graphicsUse = heaviest == null ? OFFICE_GRAPHICS_USE : heaviest.graphicsUse();
        return new Draw(
                UtilisationDraw.watts(
                        TypicalDraw.processorIdleW(sustainedW), sustainedW, processorUse),
                boardPowerW == 0
                        ? 0
                        : UtilisationDraw.watts(
                                TypicalDraw.cardIdleW(boardPowerW), boardPowerW, graphicsUse));
    }

    /**
     * Power of the two parts that matter.
     *
     * @param processorW the processor's, in W
     * @param cardW the card's, in W
     */
    record Draw(double processorW, double cardW) {}

    /** Everything but processor, card and supply, in W; slots that are still open count nothing. */
    static double othersW(Build build, boolean working) {
        double sum = working ? TypicalDraw.BOARD_LOAD_W : TypicalDraw.BOARD_IDLE_W;
        sum +=
                build.memoryModules()
                        * (working ? TypicalDraw.MODULE_LOAD_W : TypicalDraw.MODULE_IDLE_W);
        sum += driveW(build, Slot.DRIVE, working) + driveW(build, Slot.SECOND_DRIVE, working);
        int fans = build.fanCount();
        if (build.has(Slot.CASE)) {
            for (var included : build.pcCase().includedFans()) {
                fans += included.fans().count();
            }
        }
        sum += fans * (working ? TypicalDraw.FAN_FULL_W : TypicalDraw.FAN_FULL_W / 4);
        if (build.has(Slot.COOLER) && build.cooler().type() == CoolerType.LIQUID) {
            sum += TypicalDraw.PUMP_W;
        }
        if (build.has(Slot.WIRELESS)) {
            sum += TypicalDraw.WIRELESS_W;
        }
        return working ? sum + TypicalDraw.ATTACHED_W : sum;
    }

    private static double driveW(Build build, Slot slot, boolean working) {
        if (!build.has(slot)) {
            return 0;
        }
        Drive drive = (Drive) build.part(slot);
        if (drive.form().m2()) {
            return working ? TypicalDraw.M2_DRIVE_LOAD_W : TypicalDraw.M2_DRIVE_IDLE_W;
        }
        if (drive.dba() > 0) {
            return working ? TypicalDraw.DISK_LOAD_W : TypicalDraw.DISK_IDLE_W;
        }
        return working ? TypicalDraw.SATA_DRIVE_LOAD_W : TypicalDraw.SATA_DRIVE_IDLE_W;
    }

    private static double cardW(Build build) {
        return build.has(Slot.GRAPHICS) ? build.graphics().boardPowerW() : 0;
    }

    static double cardPeakExtraW(Build build) {
        if (!build.has(Slot.GRAPHICS)) {
            return 0;
        }
        Graphics card = build.graphics();
        return card.boardPowerW() * (card.peakFactor() - 1);
    }

    /** The workload that draws most; null when there is none. */
    static Prediction heaviest(
            List<Prediction> predictions, double sustainedW, double boardPowerW) {
        Prediction heaviest = null;
        double most = -1;
        for (Prediction prediction : predictions) {
            double draw =
                    prediction.processorUse() * sustainedW + prediction.graphicsUse() * boardPowerW;
            if (draw > most) {
                most = draw;
                heaviest = prediction;
            }
        }
        return heaviest;
    }

    private static double wallW(Assessment it, double dcW) {
        return wallW(it.build().supply(), it.brief(), dcW);
    }

    /**
     * What a supply draws from the brief's mains for an output, in W; never falls as the output
     * rises.
     */
    static double wallW(Supply supply, Brief brief, double dcW) {
        return WallPower.acW(
                dcW, supply.watts(), level(supply), MainsColumn.forMains(brief.place().mainsV()));
    }

    static EfficiencyLevel level(Supply supply) {
        return switch (supply.efficiency()) {
            case NONE -> EfficiencyLevel.NONE;
            case WHITE -> EfficiencyLevel.WHITE;
            case BRONZE -> EfficiencyLevel.BRONZE;
            case SILVER -> EfficiencyLevel.SILVER;
            case GOLD -> EfficiencyLevel.GOLD;
            case PLATINUM -> EfficiencyLevel.PLATINUM;
            case TITANIUM -> EfficiencyLevel.TITANIUM;
        };
    }

    private static double loadHours(Assessment it) {
        return it.brief().place().hoursPerDay() * it.brief().place().loadShare() * DAYS_A_YEAR;
    }
}
