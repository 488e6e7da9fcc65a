package rigbrief.proposal.front;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import rigbrief.search.Archive;
import rigbrief.search.Problem;
import rigbrief.search.Standing;

/** A quick front near known builds, without any proof. */
public final class Neighbourhood {
    private Neighbourhood() {}

    /**
     * The front of some builds and those that differ from them in single slots, cheapest first.
     *
     * @param starts builds to begin with, the best last; a broken one is only a place to look
     *     around
     * @param tries most builds to judge
     */
    public static List<Standing> front(
            Problem problem, List<Standing> starts, long tries, BooleanSupplier stop) {
        Archive archive = new Archive();
        archive.addAll(starts);
        ParetoClimb climb = new ParetoClimb(problem, archive, stop);
        List<Standing> broken = new ArrayList<>();
        for (Standing start : starts) {
            if (!start.sound()) {
                broken.add(0, start);
            }
        }
        climb.around(broken, tries / 2);
        climb.runOnes(tries / 2);
        return archive.standings();
    }
}
