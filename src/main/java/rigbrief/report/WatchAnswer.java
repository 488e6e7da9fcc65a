package rigbrief.report;

import rigbrief.proposal.replace.Watch;

/**
 * A watch with what it was asked for.
 *
 * @param name what the build is called
 * @param watch the answer
 */
public record WatchAnswer(String name, Watch watch) {}
