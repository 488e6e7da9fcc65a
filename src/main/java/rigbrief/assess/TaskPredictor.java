package rigbrief.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Demand.Use;
import rigbrief.assess.Promise.Measure;
import rigbrief.brief.Brief;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.TaskTime;

/** Predicts the time of one task of a brief. */
final class TaskPredictor {
    /** How steeply a task slows down when memory is too small. Common practice. */
    static final double OVERFLOW_PENALTY = 6;

    private final Brief brief;
    private final Use use;
    private final TaskTime task;

    TaskPredictor(Brief brief, Use use, TaskTime task) {
        this.brief = brief;
        this.use = use;
        this.task = task;
    }

    Prediction predict(MachineRates machine) {
        TaskModel.Stages stages = TaskModel.stages(task, machine);
        double seconds = stages.seconds();
        if (!Double.isFinite(seconds)) {
            return prediction(Double.MAX_VALUE / 1e6, 0, 0);
        }
        // Heat builds over minutes, so the mean over the whole task counts, not its hottest second.
        return prediction(
                seconds,
                (stages.serialS() * FramePredictor.ONE_THREAD_USE + stages.parallelS())
                        * stages.overflow()
                        / seconds,
                stages.graphicsS() * stages.overflow() / seconds);
    }

    private Prediction prediction(double seconds, double processorUse, double graphicsUse) {
        List<Promise> promises = new ArrayList<>(2);
        add(promises, use.need().must(), true, seconds);
        add(promises, use.need().wish(), false, seconds);
        return new Prediction(
                use.valued(),
                task,
                0,
                0,
                seconds,
                Math.min(1, processorUse),
                Math.min(1, graphicsUse),
                task.vramGb(),
                "",
                promises);
    }

    private void add(
            List<Promise> promises, Optional<Target> target, boolean must, double seconds) {
        if (target.isPresent() && target.get().finishWithinS().isPresent()) {
            promises.add(
                    PromiseMaker.of(
                            brief,
                            use,
                            Measure.FINISH,
                            must,
                            seconds,
                            target.get().finishWithinS().getAsDouble()));
        }
    }
}
