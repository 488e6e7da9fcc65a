package rigbrief.assess;

import rigbrief.catalogue.TaskTime;
import rigbrief.model.speed.FrameTime;
import rigbrief.model.speed.MemoryOverflow;
import rigbrief.model.speed.Roofline;

/**
 * The time of a task for the rates of a machine.
 *
 * <p>Formula: {@link rigbrief.model.speed.TaskTime}.
 */
public final class TaskModel {
    private static final double GIGA = 1_000;

    private TaskModel() {}

    /**
     * The stages of a task.
     *
     * @param serialS the processor's time on one thread, in s
     * @param parallelS its time on all threads, in s
     * @param graphicsS the card's time, in s; infinite when it lacks the means
     * @param readS the drive's time for reading, in s
     * @param writeS the drive's time for writing, in s
     * @param overflow factor on computing when memory is too small
     */
    public record Stages(
            double serialS,
            double parallelS,
            double graphicsS,
            double readS,
            double writeS,
            double overflow) {
        /** The whole task, in s; infinite for work without a rate. */
        public double seconds() {
            return computingS() + readS + writeS;
        }

        private double computingS() {
            return rigbrief.model.speed.TaskTime.seconds(
                    serialS + parallelS, graphicsS, 0, 1, overflow);
        }
    }

    /** The stages of a task on a machine. */
    public static Stages stages(TaskTime task, MachineRates machine) {
        return new Stages(
                FrameTime.processorS(task.serial(), machine.rateSingle(), 0, machine.rateAll()),
                FrameTime.processorS(0, machine.rateSingle(), task.parallel(), machine.rateAll()),
                Roofline.workSeconds(task.gflop(), machine.picture().tflops() * GIGA),
                Roofline.workSeconds(task.readGb() * GIGA, machine.readMbs()),
                Roofline.workSeconds(task.writeGb() * GIGA, machine.writeMbs()),
                MemoryOverflow.factor(
                        task.memoryGb() + DemandModel.SYSTEM_MEMORY_GB,
                        Math.max(1, machine.memoryGb()),
                        TaskPredictor.OVERFLOW_PENALTY));
    }
}
