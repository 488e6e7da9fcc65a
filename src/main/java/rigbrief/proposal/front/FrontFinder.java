package rigbrief.proposal.front;

import java.util.List;
import java.util.function.BooleanSupplier;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.FrontPoint;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;

/** Finds the front of money and utility. */
public interface FrontFinder {
    /**
     * The front up to a limit on money.
     *
     * @param space the space of the brief; every rule of the brief is kept, so a limit over its
     *     ceiling finds nothing there
     * @param limitMinor most that a build may cost, in minor units
     * @param known builds of this space that other searches came across; broken ones are passed
     *     over
     */
    Front find(SearchSpace space, long limitMinor, List<Standing> known);

    /**
     * The front of a brief up to its ceiling, cheapest first; empty when no build is found.
     *
     * @param steps most steps of the certifier
     * @param stop asked now and then; true ends the search early
     */
    static List<FrontPoint> find(
            Brief brief, Catalogue catalogue, long steps, BooleanSupplier stop) {
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            return List.of();
        }
        return new SearchedFront(steps, stop)
                .find(space, brief.ceiling().minorUnits(), List.of())
                .points();
    }
}
