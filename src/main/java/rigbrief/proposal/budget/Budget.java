package rigbrief.proposal.budget;

import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.Clash;
import rigbrief.proposal.solve.Least;

/**
 * What the goals of a brief cost.
 *
 * @param brief the brief
 * @param catalogue the catalogue
 * @param upToMinor how far the front was looked for, in minor units
 * @param musts the least total that meets every must, at any price
 * @param binding what holds that total up: the musts without which it would be less, by solving
 *     again without each, then the rules that turn cheaper parts away
 * @param wishesToo the least total that meets every must and every wish; empty without wishes
 * @param goals musts and wishes, one by one
 * @param prices what each must costs
 * @param ceilingSteps what other ceilings would change; empty when no build is under the ceiling
 * @param front the front, cheapest first
 * @param frontProven whether it is proven that no point is missing
 * @param leastGapMinor by how many minor units at most a build could be cheaper than the first
 *     point
 * @param mostPoints points of full utility in every goal
 * @param clash why no build meets the musts under the ceiling; empty when some do
 * @param partial whether the search was called off before all was answered
 */
public record Budget(
        Brief brief,
        Catalogue catalogue,
        long upToMinor,
        Least musts,
        List<String> binding,
        Optional<Least> wishesToo,
        List<GoalTotal> goals,
        List<NeedPrice> prices,
        List<CeilingStep> ceilingSteps,
        List<FrontStep> front,
        boolean frontProven,
        long leastGapMinor,
        long mostPoints,
        Optional<Clash> clash,
        boolean partial) {
    public Budget {
        binding = List.copyOf(binding);
        goals = List.copyOf(goals);
        prices = List.copyOf(prices);
        ceilingSteps = List.copyOf(ceilingSteps);
        front = List.copyOf(front);
    }
}
