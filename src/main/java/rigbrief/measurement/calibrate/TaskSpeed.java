package rigbrief.measurement.calibrate;

import rigbrief.assess.TaskModel;
import rigbrief.catalogue.TaskTime;
import rigbrief.measurement.Rig;

/**
 * A task's time as the speed model sees it: computing on processor and card and moving data on the
 * drive, which demands and rates scale.
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

    private double listedS(Channel channel) {
        return switch (channel) {
            case GRAPHICS -> graphicsS;
            case RAYS -> 0;
            case PROCESSOR -> processorS;
            case DRIVE -> driveS;
        };
    }

    @Override
    public boolean works(Channel channel) {
        return listedS(channel) > 0;
    }

    @Override
    public boolean possible() {
        return Double.isFinite(graphicsS + processorS + driveS);
    }

    @Override
    public double log(double... loads) {
        double seconds = 0;
        for (Channel channel : Channel.values()) {
            seconds += listedS(channel) * Math.exp(loads[channel.ordinal()]);
        }
        return Math.log(seconds);
    }
}
