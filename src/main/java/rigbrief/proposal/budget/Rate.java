package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;

/**
 * What a build promises of one workload: the middle prediction.
 *
 * @param use id of the workload
 * @param title its title
 * @param value average frames per second, or seconds
 * @param unit "fps" or "s"
 */
public record Rate(String use, String title, double value, String unit) {
    /** The rates of a build, in the brief's order; workloads that only have to fit have none. */
    public static List<Rate> of(Assessment it) {
        List<Rate> rates = new ArrayList<>();
        for (Prediction prediction : it.predictions()) {
            String title = prediction.workload().title();
            if (prediction.workload() instanceof FrameRate) {
                rates.add(new Rate(prediction.need().use(), title, prediction.averageFps(), "fps"));
            } else if (prediction.workload() instanceof TaskTime) {
                rates.add(new Rate(prediction.need().use(), title, prediction.seconds(), "s"));
            }
        }
        return rates;
    }
}
