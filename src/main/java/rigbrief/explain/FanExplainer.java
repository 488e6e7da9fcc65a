package rigbrief.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigbrief.assess.Assessment;
import rigbrief.assess.Workings;
import rigbrief.assess.Workings.State;

/** Explains the fan speeds behind temperatures and levels. */
final class FanExplainer implements Explainer {
    @Override
    public List<Topic> topics(Assessment it) {
        List<Topic> topics = new ArrayList<>();
        for (State state : State.values()) {
            String when =
                    switch (state) {
                        case IDLE -> " at idle";
                        case LOAD -> " under the heaviest workload";
                        case FULL -> " at full power";
                    };
            add(topics, it, state, FanExplanation.Fans.CASE, "Speed of the case fans" + when);
            add(topics, it, state, FanExplanation.Fans.COOLER, "Speed of the cooler's fans" + when);
            if (Double.isFinite(Workings.coolingCase(it, state).card().loadDba())) {
                add(topics, it, state, FanExplanation.Fans.CARD, "Speed of the card's fans" + when);
            }
        }
        return topics;
    }

    /** The topic of a set of fans. */
    static String name(State state, FanExplanation.Fans fans) {
        return "fans." + state.name().toLowerCase(Locale.ROOT) + "-" + fans.word();
    }

    private static void add(
            List<Topic> topics,
            Assessment it,
            State state,
            FanExplanation.Fans fans,
            String title) {
        String name = name(state, fans);
        topics.add(
                new Topic(name, title, () -> new FanExplanation(it, state).of(fans, name, title)));
    }
}
