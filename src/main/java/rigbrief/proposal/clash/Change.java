package rigbrief.proposal.clash;

/**
 * One need that gives way.
 *
 * @param need the need as it was asked
 * @param from its value as asked
 * @param to what a real build reaches
 */
public record Change(String need, String from, String to) {}
