package rigbrief.assess;

import java.util.List;
import rigbrief.brief.WorkloadNeed;
import rigbrief.catalogue.Workload;

/**
 * How one workload of the brief runs on one processor, card and memory rate.
 *
 * @param need the line of the brief; that which utility goes by, where two briefs are compared
 * @param workload the workload
 * @param averageFps middle prediction of the average rate; 0 where the workload draws no frames
 * @param lowFps middle prediction of the 1 % low: the rate at the 99th percentile of frame time; 0
 *     where it draws none
 * @param seconds middle prediction of the task's time; 0 where there is no task
 * @param processorUse share of the time in which the processor works, 0 to 1
 * @param graphicsUse share of the time in which the card works, 0 to 1
 * @param vramGb graphics memory wanted at these settings, in GB
 * @param slowestScene name of the scene that runs slowest; empty where there are none
 * @param promises one entry per figure asked for, musts first
 */
public record Prediction(
        WorkloadNeed need,
        Workload workload,
        double averageFps,
        double lowFps,
        double seconds,
        double processorUse,
        double graphicsUse,
        double vramGb,
        String slowestScene,
        List<Promise> promises) {
    public Prediction {
        promises = List.copyOf(promises);
    }
}
