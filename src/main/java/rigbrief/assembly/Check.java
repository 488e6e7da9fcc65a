package rigbrief.assembly;

/**
 * One line of a list to tick off.
 *
 * @param what what to look at or do
 * @param expect what has to come out
 */
public record Check(String what, String expect) {}
