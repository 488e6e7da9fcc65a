package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.need.Stretch;
import rigbrief.proposal.solve.Least;
import rigbrief.proposal.solve.Solving;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;

/**
 * Finds the musts that cost nothing, many with one search.
 *
 * <p>To let go of a must can only lower the least total, and to let go of more of them can only
 * lower it further. So where the least total without several musts at once is proven to be what it
 * is with all of them, it is that without any one of them too, and with any of them softer.
 */
final class IdleNeeds {
    private final Needs needs;
    private final Solving solving;
    private final Least musts;

    IdleNeeds(Needs needs, Solving solving, Least musts) {
        this.needs = needs;
        this.solving = solving;
        this.musts = musts;
    }

    /** Musts that are proven to cost nothing; there may be more. */
    Set<Need> among(List<Need> priced) {
        Set<Need> idle = new LinkedHashSet<>();
        if (musts.best().isPresent() && musts.proven()) {
            List<Need> suspects = new ArrayList<>();
            for (Need need : priced) {
                // To let go of the client's own part can cost more, so nothing follows from it.
                if (need.kind() == Need.Kind.MUST && !cheaperAtOnce(need)) {
                    suspects.add(need);
                }
            }
            if (!together(suspects, idle) && suspects.size() > 2) {
                int half = suspects.size() / 2;
                together(suspects.subList(0, half), idle);
                together(suspects.subList(half, suspects.size()), idle);
            }
        }
        return idle;
    }

    private boolean together(List<Need> some, Set<Need> idle) {
        if (some.size() < 2 || solving.stop().getAsBoolean()) {
            return false;
        }
        List<Build> known = musts.best().stream().map(Standing::build).toList();
        Least without = solving.least(Stretch.boundless(needs.without(some)), known);
        boolean same =
                without.best().isPresent()
                        && without.proven()
                        && without.totalMinor() == musts.totalMinor();
        if (same) {
            idle.addAll(some);
        }
        return same;
    }

    private boolean cheaperAtOnce(Need need) {
        Brief brief = Stretch.boundless(needs.without(need));
        Build build = musts.best().orElseThrow().build();
        SearchSpace space = SearchSpace.of(brief, solving.catalogue());
        if (space.candidates().impossible()) {
            return false;
        }
        Problem problem = space.within(CeilingRule.limitMinor(brief));
        return Solving.standings(problem, List.of(build)).stream()
                .anyMatch(standing -> new BindingRules(problem, standing).cheaperFits());
    }
}
