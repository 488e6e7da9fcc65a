package rigbrief.assembly;

import java.util.List;

/**
 * One step at the bench.
 *
 * @param id stable kebab-case name
 * @param title what is done, in a few words
 * @param actions what to do, one sentence or two each, in order
 */
public record Step(String id, String title, List<String> actions) {
    public Step {
        actions = List.copyOf(actions);
    }
}
