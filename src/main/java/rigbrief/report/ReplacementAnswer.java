package rigbrief.report;

import rigbrief.proposal.replace.Replacement;

/**
 * A replacement with what it was asked for.
 *
 * @param name what the build is called
 * @param replacement the answer
 */
public record ReplacementAnswer(String name, Replacement replacement) {}
