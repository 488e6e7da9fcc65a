package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.proposal.front.Neighbourhood;
import rigbrief.proposal.solve.Solving;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.TwoStage;

/**
 * Builds to start a search from under a brief that a build known does not meet: what mends it in
 * single slots, and what lies on the front. A good start saves more steps than it takes to find.
 */
final class Starts {
    /** Builds judged around a broken one. */
    private static final long TRIES = 3_000;

    private Starts() {}

    /** A cheap build under a brief; nothing where none is near. */
    static List<Build> cheap(Solving solving, Brief brief, List<Build> broken, List<Build> others) {
        SearchSpace space = SearchSpace.of(brief, solving.catalogue());
        if (space.candidates().impossible()) {
            return List.of();
        }
        Problem problem = space.within(CeilingRule.limitMinor(brief));
        List<Standing> all = new ArrayList<>(near(solving, problem, broken));
        all.addAll(Solving.standings(problem, others));
        Standing cheapest = null;
        for (Standing standing : all) {
            cheapest = standing.betterThan(cheapest, Objective.leastMoney()) ? standing : cheapest;
        }
        return new TwoStage(1, 0, 1, solving.stop())
                        .polished(
                                problem,
                                Objective.leastMoney(),
                                Optional.ofNullable(cheapest).stream().toList())
                        .map(Standing::build)
                        .stream()
                        .toList();
    }

    /** The front of what mends a broken build, cheapest first. */
    static List<Standing> near(Solving solving, Problem problem, List<Build> broken) {
        return Neighbourhood.front(problem, Solving.placed(problem, broken), TRIES, solving.stop());
    }
}
