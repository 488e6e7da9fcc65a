package rigbrief.proposal.budget;

/** Told how far the work is; from any thread, one call at a time. */
@FunctionalInterface
public interface Progress {
    /** Nobody watches. */
    Progress NONE = (done, of) -> {};

    /** So many questions of so many are answered. */
    void at(int done, int of);
}
