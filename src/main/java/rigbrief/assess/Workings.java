package rigbrief.assess;

import java.util.Optional;
import rigbrief.assess.Demand.Use;
import rigbrief.catalogue.FrameRate;
import rigbrief.model.heat.CoolingCase;
import rigbrief.model.heat.FanSpeedSolver;
import rigbrief.model.heat.Speeds;
import rigbrief.model.power.EcodesignEnergy;
import rigbrief.model.power.EfficiencyLevel;
import rigbrief.model.power.TypicalDraw;
import rigbrief.part.Slot;

/**
 * The values between parts and figures of a finished build, for whoever wants to redo a figure by
 * hand. Nothing here enters an assessment.
 */
public final class Workings {
    /** Thermal resistance from die to lid, in K/W. Common practice. */
    public static final double INSIDE_KW = ClimateModel.INSIDE_KW;

    /** How steeply a task slows down when memory is too small. Common practice. */
    public static final double TASK_OVERFLOW_PENALTY = TaskPredictor.OVERFLOW_PENALTY;

    /** Memory that the system and what runs unseen take, in GB. Common practice. */
    public static final double SYSTEM_MEMORY_GB = DemandModel.SYSTEM_MEMORY_GB;

    /** Drive space that the system takes, in GB. Common practice. */
    public static final double SYSTEM_DISK_GB = DemandModel.SYSTEM_DISK_GB;

    /** Share of a drive that data may fill. Common practice. */
    public static final double FILLED_SHARE = DemandModel.FILLED_SHARE;

    /** How busy one thread at work makes the processor as a whole. Common practice. */
    public static final double ONE_THREAD_USE = FramePredictor.ONE_THREAD_USE;

    /** Share of the time the processor works when the brief names no workload. Common practice. */
    public static final double OFFICE_PROCESSOR_USE = PowerModel.OFFICE_PROCESSOR_USE;

    /** Share of the time the card works when the brief names no workload. Common practice. */
    public static final double OFFICE_GRAPHICS_USE = PowerModel.OFFICE_GRAPHICS_USE;

    private Workings() {}

    /** A state in which heat and noise are worked out. */
    public enum State {
        IDLE,
        LOAD,
        FULL
    }

    /** What the choice of fan speeds is told. */
    public static CoolingCase coolingCase(Assessment it, State state) {
        return switch (state) {
            case IDLE -> ClimateModel.idleCase(it);
            case LOAD -> ClimateModel.loadCase(it);
            case FULL -> ClimateModel.fullCase(it);
        };
    }

    /** The fan speeds chosen, with what comes of them at the lid of the processor. */
    public static Speeds speeds(CoolingCase cooling) {
        return FanSpeedSolver.quietest(cooling);
    }

    /** Everything but processor, card and supply, in W. */
    public static double othersW(Assessment it, boolean working) {
        return PowerModel.othersW(it.build(), working);
    }

    /** The workload that draws most; empty when the brief names none. */
    public static Optional<Prediction> heaviest(Assessment it) {
        int cardW = it.build().has(Slot.GRAPHICS) ? it.build().graphics().boardPowerW() : 0;
        return Optional.ofNullable(
                PowerModel.heaviest(
                        it.predictions(), it.build().processor().sustainedPowerW(), cardW));
    }

    /** Energy of a year by the European Union's measure for desktop computers, in kWh. */
    public static double unionKwh(Assessment it) {
        return EcodesignEnergy.kwh(
                TypicalDraw.OFF_MAINS_W, TypicalDraw.SLEEP_MAINS_W, it.power().wallIdleW());
    }

    /** The supply's 80 PLUS level. */
    public static EfficiencyLevel efficiency(Assessment it) {
        return PowerModel.level(it.build().supply());
    }

    /** What the prediction of a frame rate is made from. */
    public static FrameSteps frames(Assessment it, Prediction prediction) {
        FrameRate workload = (FrameRate) prediction.workload();
        return new FramePredictor(it.brief(), new Use(prediction.need(), workload), workload)
                .steps(SpeedModel.rig(it));
    }
}
