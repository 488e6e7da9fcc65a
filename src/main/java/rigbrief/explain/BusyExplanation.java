package rigbrief.explain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.FrameSteps;
import rigbrief.assess.Prediction;
import rigbrief.assess.Workings;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.catalogue.TaskTime;
import rigbrief.part.Processor;

/** How much of the time processor and card work in a workload. */
final class BusyExplanation {
    private static final String SOURCE =
            "common practice: a part is busy for its share of the frame or of the task";

    private final Assessment it;
    private final Prediction prediction;
    private final String name;

    BusyExplanation(Assessment it, Prediction prediction, String name) {
        this.it = it;
        this.prediction = prediction;
        this.name = name;
    }

    /** The two topics; none of a workload that only has to fit. */
    List<Topic> topics() {
        if (!(prediction.workload() instanceof FrameRate)
                && !(prediction.workload() instanceof TaskTime)) {
            return List.of();
        }
        return List.of(topic("processor", false), topic("card", true));
    }

    private Topic topic(String part, boolean card) {
        String number = name + "." + part + "-use";
        String title = prediction.workload().title() + ", " + part + " busy";
        return new Topic(
                number, title, () -> of(new Derivation(number, title, FORMULA, SOURCE), card));
    }

    private static final String FORMULA =
            "the part's time / the time of the frame or task, work on one thread counted in part;"
                    + " of scenes the mean by their shares; at most 1";

    private Explanation of(Derivation how, boolean card) {
        return prediction.workload() instanceof FrameRate
                ? frames(how, card)
                : TaskExplanation.busy(it, prediction, how, card);
    }

    private Explanation frames(Derivation how, boolean card) {
        if (prediction.averageFps() == 0) {
            how.remark("the machine has no means to draw this workload at all");
            return how.gives(0, 4, "", "0");
        }
        FrameExplanation frames = new FrameExplanation(it, prediction, name);
        FrameSteps steps = frames.steps();
        List<FrameExplanation.Timed> scenes = frames.scenes(how);
        double busyMs = card ? frames.cardTimeMs() : processorMs(how, steps);
        double capMs = 1_000 / steps.capFps().orElse(Double.POSITIVE_INFINITY);
        how.given(
                "least time between frames", capMs, "ms", "1000 / the engine's cap, 0 without one");
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < scenes.size(); i++) {
            Scene scene = steps.scenes().get(i);
            values.add(scene.share());
            values.add(busyMs);
            values.add(card ? scene.graphics() : scene.processor());
            values.add(scenes.get(i).ms());
            values.add(capMs);
        }
        steps.scenes().forEach(scene -> values.add(scene.share()));
        return how.gives(
                card ? prediction.graphicsUse() : prediction.processorUse(),
                4,
                "",
                "min(1, ("
                        + sum("{} x {} x {} / max({}, {})", scenes.size())
                        + ") / ("
                        + sum("{}", scenes.size())
                        + "))",
                values.toArray());
    }

    private double processorMs(Derivation how, FrameSteps steps) {
        Processor processor = it.build().processor();
        how.given("one thread keeps busy", Workings.ONE_THREAD_USE, "", "common practice");
        return how.step(
                "processor at work, typical scene",
                (steps.serial() / processor.rateSingle() * Workings.ONE_THREAD_USE
                                + steps.parallel() / processor.rateAll())
                        * 1_000
                        * Math.pow(
                                steps.referenceMts() / Math.max(1, steps.mts()),
                                steps.memoryExponent()),
                "ms",
                "({} / {} x {} + {} / {}) x 1000 x ({} / {})^{}",
                steps.serial(),
                processor.rateSingle(),
                Workings.ONE_THREAD_USE,
                steps.parallel(),
                processor.rateAll(),
                steps.referenceMts(),
                steps.mts(),
                steps.memoryExponent());
    }

    private static String sum(String template, int times) {
        return String.join(" + ", Collections.nCopies(times, template));
    }
}
