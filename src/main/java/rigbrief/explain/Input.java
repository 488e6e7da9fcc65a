package rigbrief.explain;

/**
 * One value that an explanation starts from.
 *
 * @param name what it is
 * @param value the value with its unit
 * @param from where it comes from: part and column, line of the brief, catalogue, model, or common
 *     practice
 */
public record Input(String name, String value, String from) {}
