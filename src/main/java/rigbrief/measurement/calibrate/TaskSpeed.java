package rigbrief.measurement.calibrate;

import rigbrief.assess.TaskModel;
import rigbrief.catalogue.TaskTime;
import rigbrief.measurement.Rig;

/**
 * A task's time as the speed model sees it: computing on processor and card, which demands and
 * rates scale, and what the drive takes.
 *
 * @param graphicsS the card's share, s
 * @param processorS the processor's share, s
 * @param driveS the drive's share, s
 */
record TaskSpeed(double graphicsS, double processorS, double driveS) implements Speed {
    static TaskSpeed of(TaskTime task, Rig rig) {
        TaskModel.Stages stages = TaskModel.stages(task, RigRates.of(rig));
        return new TaskSpeed(
                stages.graphicsS() * stages.overflow(),
                (stages.serialS() + stages.parallelS()) * stages.overflow(),
                stages.readS() + stages.writeS());
    }

    @Override
    public boolean works(Channel channel) {
        return switch (channel) {
            case GRAPHICS -> graphicsS > 0;
            case RAYS -> false;
            case PROCESSOR -> processorS > 0;
        };
    }

    @Override
    public boolean possible() {
        return Double.isFinite(graphicsS + processorS + driveS);
    }

    @Override
    public double log(double graphics, double rays, double processor) {
        return Math.log(graphicsS * Math.exp(graphics) + processorS * Math.exp(processor) + driveS);
    }
}
