package rigbrief.explain;

import java.util.List;
import rigbrief.assess.Assessment;

/** Explains one number or one family of numbers. */
interface Explainer {
    /** What there is to explain of a build, in the order of printing. */
    List<Topic> topics(Assessment it);

    /** Whether a part is needed in every required slot. */
    default boolean needsWholeBuild() {
        return true;
    }
}
