package rigbrief.proposal.front;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import rigbrief.build.Build;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.solve.Solving;
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
     * The front of an answer's brief up to its ceiling, cheapest first; empty when no build is
     * found. What the answer proves of its tiers is not searched for again.
     *
     * @param steps most steps of the certifier
     * @param stop asked now and then; true ends the search early
     */
    static List<FrontPoint> find(Proposals answer, long steps, BooleanSupplier stop) {
        SearchSpace space = SearchSpace.of(answer.brief(), answer.catalogue());
        if (space.candidates().impossible()) {
            return List.of();
        }
        long ceiling = answer.brief().ceiling().minorUnits();
        SearchedFront search = new SearchedFront(steps, stop);
        List<Build> builds = new ArrayList<>();
        for (Proposal proposal : answer.proposals()) {
            builds.add(proposal.audit().build());
            boolean within = proposal.audit().cost().totalMinor() <= ceiling;
            if (proposal.proof().proven() && within) {
                switch (proposal.tier()) {
                    case LEAN -> search.knowingLeast(proposal.audit().cost().totalMinor());
                    case FULL -> search.knowingMost(proposal.audit().points());
                    case BALANCED -> {}
                }
            }
        }
        List<Standing> known = Solving.standings(space.within(ceiling), builds);
        return search.find(space, ceiling, known).points();
    }
}
