package rigbrief.proposal.solve;

/** Whether a build exists. */
public enum Answer {
    /** One was found. */
    YES,
    /** It is proven that there is none. */
    NO,
    /** The step limit was reached before either. */
    NOT_KNOWN
}
