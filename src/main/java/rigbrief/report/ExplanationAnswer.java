package rigbrief.report;

import java.util.List;
import java.util.Optional;
import rigbrief.explain.Explanation;
import rigbrief.explain.Topic;

/**
 * What is said about the numbers of a build.
 *
 * @param name what the build is called
 * @param brief name of the brief it was judged by
 * @param topics the numbers that can be explained
 * @param explanation the one asked for; empty when only the names are wanted
 */
public record ExplanationAnswer(
        String name, String brief, List<Topic> topics, Optional<Explanation> explanation) {
    public ExplanationAnswer {
        topics = List.copyOf(topics);
    }
}
