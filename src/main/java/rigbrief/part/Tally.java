package rigbrief.part;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How many of each of a closed set of things there are; what is not named counts zero.
 *
 * @param counts positive counts, iterated in the order of the enum
 */
public record Tally<E extends Enum<E>>(Map<E, Integer> counts) {
    public Tally {
        if (counts.isEmpty()) {
            counts = Collections.emptyMap();
        } else {
            counts = Collections.unmodifiableMap(new EnumMap<E, Integer>(counts));
        }
    }

    /** Nothing at all. */
    public static <E extends Enum<E>> Tally<E> none() {
        return new Tally<E>(Collections.<E, Integer>emptyMap());
    }

    /** How many of one there are. */
    public int of(E thing) {
        return counts.getOrDefault(thing, 0);
    }
}
