package rigbrief.proposal.replace;

import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;

/**
 * The answer to trouble with a build.
 *
 * @param filed the build as it was filed
 * @param trouble what happened
 * @param brief the brief by which it was solved anew
 * @param catalogue the catalogue with today's offers
 * @param disturbance the assumptions about giving up what is here
 * @param ways ways out, the least change first; empty when there is none
 * @param proven whether, when there is none, that is proven
 * @param why why there is none, in sentences; empty when there is one
 * @param remarks what else to tell
 * @param sets sets of slots that were searched for the least change
 * @param steps steps the certifier took for it
 */
public record Replacement(
        BuildRecord filed,
        Trouble trouble,
        Brief brief,
        Catalogue catalogue,
        Disturbance disturbance,
        List<Way> ways,
        boolean proven,
        List<String> why,
        List<String> remarks,
        int sets,
        long steps) {
    public Replacement {
        ways = List.copyOf(ways);
        why = List.copyOf(why);
        remarks = List.copyOf(remarks);
    }

    /** Whether there is no way out. */
    public boolean impossible() {
        return ways.isEmpty();
    }

    /** Whether the build can stay as it is. */
    public boolean nothingToDo() {
        return !ways.isEmpty() && ways.get(0).changes().isEmpty();
    }
}
