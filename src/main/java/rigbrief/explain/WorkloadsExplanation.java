package rigbrief.explain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.catalogue.TaskTime;
import rigbrief.goal.WorkloadsGoal;
import rigbrief.goal.WorkloadsGoal.Scale;

/** How the utility of speed came about, workload by workload. */
final class WorkloadsExplanation {
    private final Derivation how;
    private final Assessment it;
    private final List<Object> values = new ArrayList<>();
    private int weights;

    WorkloadsExplanation(Derivation how, Assessment it) {
        this.how = how;
        this.it = it;
    }

    Explanation gives(BigDecimal utility) {
        for (Prediction prediction : it.predictions()) {
            Optional<Scale> scale = WorkloadsGoal.scale(prediction, it.brief());
            scale.ifPresent(its -> add(prediction, its));
        }
        if (weights == 0) {
            how.remark("no workload asks for speed, so nothing is left to wish");
            return how.gives(utility, "", "1");
        }
        String sum =
                String.join(" + ", values.stream().map(any -> "{}").toList())
                        .replace("{} + {}", "{} x {}");
        values.add(weights);
        return how.gives(utility, "", "(" + sum + ") / {}", values.toArray());
    }

    private void add(Prediction prediction, Scale scale) {
        String id = prediction.workload().id();
        int weight = prediction.need().weight();
        boolean task = prediction.workload() instanceof TaskTime;
        String unit = task ? "1/s" : "fps";
        how.given("weight of " + id, weight, "", "brief, workloads");
        String from =
                task
                        ? "1 / number workload.%s.finish-within"
                        : "number workload.%s, before rounding";
        how.given(id + ", predicted", scale.value(), unit, from.formatted(id));
        how.given(id + ", base", scale.base(), unit, "the must, or what is usual");
        how.given(id + ", full at", scale.best(), unit, "the wish, the screen, or twice the base");
        values.add(weight);
        values.add(utility(id, scale));
        weights += weight;
    }

    private double utility(String id, Scale scale) {
        String name = "utility of " + id;
        if (scale.best() <= scale.base()) {
            boolean full = scale.value() >= scale.base();
            how.remark(id + ": the wish is no higher than the must, so it is all or nothing");
            return how.step(name, full ? 1 : 0, "", full ? "1" : "0");
        }
        if (!(scale.value() > scale.base())) {
            how.remark(id + ": not above its base");
            return how.step(name, 0, "", "0");
        }
        return how.step(
                name,
                Math.min(
                        1,
                        Math.log(scale.value() / scale.base())
                                / Math.log(scale.best() / scale.base())),
                "",
                "min(1, ln({} / {}) / ln({} / {}))",
                scale.value(),
                scale.base(),
                scale.best(),
                scale.base());
    }
}
