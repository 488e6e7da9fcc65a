package rigbrief.explain;

import java.util.function.Supplier;

/**
 * A number that can be explained.
 *
 * @param name its name, as in the JSON of an audit with dots between
 * @param title what it is
 * @param explanation how it came about, worked out when asked for
 */
public record Topic(String name, String title, Supplier<Explanation> explanation) {}
