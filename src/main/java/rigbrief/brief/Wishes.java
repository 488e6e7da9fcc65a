package rigbrief.brief;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Weights of the soft goals.
 *
 * @param weights weight by goal id, 0 to 5; a goal not named weighs nothing
 */
public record Wishes(Map<String, Integer> weights) {
    public Wishes {
        weights = Collections.unmodifiableMap(new LinkedHashMap<>(weights));
    }

    /** The weight of a goal. */
    public int weight(String goal) {
        return weights.getOrDefault(goal, 0);
    }
}
