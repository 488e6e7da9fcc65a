package rigbrief.search;

/**
 * What all searches of one space use and none changes the meaning of: which candidates go together,
 * and what processors and cards can reach. Filled as it is asked; confined to the space's thread.
 */
public final class SharedTables {
    private PairTable pairs;
    private Refusals refusals;
    private Outlook outlook;
    private Subspace undominated;

    /** The same space without dominated candidates. */
    Subspace undominated(Problem problem) {
        undominated = undominated == null ? Subspace.undominated(problem) : undominated;
        return undominated;
    }

    PairTable pairs(Problem problem) {
        pairs = pairs == null ? new PairTable(problem) : pairs;
        return pairs;
    }

    Refusals refusals(Problem problem) {
        refusals = refusals == null ? new Refusals(problem) : refusals;
        return refusals;
    }

    Outlook outlook(Problem problem) {
        outlook = outlook == null ? new Outlook(problem) : outlook;
        return outlook;
    }
}
