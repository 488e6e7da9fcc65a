package rigbrief.proposal.replace;

import rigbrief.assess.Settled;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;

/**
 * What of a filed build is ordered or here already, and so no longer a matter of today's offers.
 */
public final class Ordered {
    private Ordered() {}

    /** What is settled in a build; nothing when all of it is still wanted. */
    public static Settled of(BuildRecord filed, Catalogue catalogue) {
        return Situation.of(filed, Trouble.NONE, catalogue, Disturbance.usual(catalogue.currency()))
                .settled();
    }
}
