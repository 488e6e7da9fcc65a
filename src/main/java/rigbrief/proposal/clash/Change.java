package rigbrief.proposal.clash;

import rigbrief.wording.Phrase;

/**
 * One need that gives way.
 *
 * @param need the need as it was asked
 * @param from its value as asked
 * @param to what a real build reaches
 */
public record Change(Phrase need, Phrase from, Phrase to) {}
