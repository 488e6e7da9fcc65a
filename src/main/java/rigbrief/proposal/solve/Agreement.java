package rigbrief.proposal.solve;

import rigbrief.audit.Audit;
import rigbrief.search.Standing;

/** The judge, who knows no solver, must see what the search saw. */
public final class Agreement {
    private Agreement() {}

    /**
     * Asks it of one build.
     *
     * @throws IllegalStateException when the two differ, which is a fault of the program
     */
    public static void between(Standing standing, Audit audit) {
        boolean same =
                audit.fits()
                        && audit.points() == standing.points()
                        && audit.cost().totalMinor() == standing.totalMinor();
        if (!same) {
            throw new IllegalStateException(
                    "audit found fits=%s points=%d total=%d, search claimed points=%d total=%d for %s; please report it"
                            .formatted(
                                    audit.fits(),
                                    audit.points(),
                                    audit.cost().totalMinor(),
                                    standing.points(),
                                    standing.totalMinor(),
                                    standing.build()));
        }
    }
}
