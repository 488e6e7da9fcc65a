package rigbrief.proposal.budget;

/**
 * What another ceiling would change.
 *
 * @param moreMinor how much more it would be, in minor units; negative for less
 * @param from the best build found under the ceiling
 * @param to the best one found under the other ceiling; the same when nothing changes
 */
public record CeilingStep(long moreMinor, FrontStep from, FrontStep to) {
    /** Utility gained; negative when it is lost. */
    public double gained() {
        return to.utility() - from.utility();
    }
}
