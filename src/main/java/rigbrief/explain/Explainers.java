package rigbrief.explain;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;

/** The explainers, one line each. */
public final class Explainers {
    static final List<Explainer> ALL =
            List.of(
                    new CostExplainer(),
                    new WorkloadExplainer(),
                    new PromiseExplainer(),
                    new DemandExplainer(),
                    new MemoryExplainer(),
                    new LinkExplainer(),
                    new PowerExplainer(),
                    new WallExplainer(),
                    new CircuitExplainer(),
                    new HeatExplainer(),
                    new NoiseExplainer(),
                    new FanExplainer(),
                    new CountExplainer(),
                    new GoalExplainer(),
                    new MarginExplainer());

    private Explainers() {}

    /** The numbers of a build that can be explained, in the order of printing. */
    public static List<Topic> topics(Brief brief, Catalogue catalogue, Build build) {
        return topics(new Assessor(brief, catalogue).assess(build));
    }

    static List<Topic> topics(Assessment it) {
        boolean whole = it.build().missing().isEmpty();
        List<Topic> topics = new ArrayList<>();
        for (Explainer explainer : ALL) {
            if (whole || !explainer.needsWholeBuild()) {
                topics.addAll(explainer.topics(it));
            }
        }
        return topics;
    }
}
