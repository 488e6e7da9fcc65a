package rigbrief.proposal.budget;

/**
 * How hard to search.
 *
 * @param frontSteps most steps of the certifier for the front
 * @param goalSteps most steps for each least total
 */
public record BudgetLimits(long frontSteps, long goalSteps) {
    /** What suits a catalogue of ordinary size. */
    public static BudgetLimits usual() {
        return new BudgetLimits(8_000, 4_000);
    }
}
