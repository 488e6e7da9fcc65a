package rigbrief.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;

/** Explains how fast each workload of the brief runs. */
final class WorkloadExplainer implements Explainer {
    @Override
    public List<Topic> topics(Assessment it) {
        Map<String, Topic> topics = new LinkedHashMap<>();
        for (Prediction prediction : it.predictions()) {
            for (Topic topic : topics(it, prediction)) {
                topics.putIfAbsent(topic.name(), topic);
            }
        }
        return new ArrayList<>(topics.values());
    }

    private static List<Topic> topics(Assessment it, Prediction prediction) {
        String name = "workload." + prediction.workload().id();
        String title = prediction.workload().title();
        List<Topic> busy = new BusyExplanation(it, prediction, name).topics();
        if (prediction.workload() instanceof FrameRate) {
            FrameExplanation frames = new FrameExplanation(it, prediction, name);
            return List.of(
                    new Topic(name + ".average", title + ", average", frames::average),
                    new Topic(name + ".low", title + ", 1 % low", frames::low),
                    busy.get(0),
                    busy.get(1));
        }
        if (prediction.workload() instanceof TaskTime) {
            TaskExplanation task = new TaskExplanation(it, prediction, name);
            return List.of(
                    new Topic(name + ".finish-within", title + ", time", task::seconds),
                    busy.get(0),
                    busy.get(1));
        }
        return List.of();
    }
}
