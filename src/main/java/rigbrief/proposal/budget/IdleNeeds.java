package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * Finds what many musts cost with few searches.
 *
 * <p>To let go of a must can only lower the least total, and to let go of more of them can only
 * lower it further. So where the least total without several musts at once is proven to be what it
 * is with all of them, it is that without any one of them too, and with any of them softer. And
 * where the cheapest build without several breaks one of them alone, it is the cheapest without
 * that one.
 */
final class IdleNeeds {
    private final Needs needs;
    private final Solving solving;
    private final Least musts;
    private final Set<Need> idle = new LinkedHashSet<>();
    private final Map<Need, Least> without = new HashMap<>();

    IdleNeeds(Needs needs, Solving solving, Least musts) {
        this.needs = needs;
        this.solving = solving;
        this.musts = musts;
    }

    /** The same once it has looked among some musts. */
    IdleNeeds among(List<Need> priced) {
        if (musts.best().isPresent() && musts.proven()) {
            List<Need> suspects = new ArrayList<>();
            for (Need need : priced) {
                // To let go of the client's own part can cost more, so nothing follows from it.
                if (need.kind() == Need.Kind.MUST && !cheaperAtOnce(need)) {
                    suspects.add(need);
                }
            }
            while (suspects.size() > 1 && !solving.stop().getAsBoolean()) {
                suspects.removeAll(broken(suspects));
            }
        }
        return this;
    }

    /** Whether a must is proven to cost nothing; of others it is not known. */
    boolean idle(Need need) {
        return idle.contains(need);
    }

    /** The least total without a must, where the search for others told it. */
    Optional<Least> without(Need need) {
        return Optional.ofNullable(without.get(need));
    }

    /**
     * Those musts that the cheapest build without all of them breaks; all once nothing is learnt.
     */
    private List<Need> broken(List<Need> some) {
        List<Build> known = musts.best().stream().map(Standing::build).toList();
        Least least = solving.least(Stretch.boundless(needs.without(some)), known);
        if (least.best().isEmpty() || !least.proven()) {
            return List.copyOf(some);
        }
        if (least.totalMinor() == musts.totalMinor()) {
            idle.addAll(some);
            return List.copyOf(some);
        }
        List<Need> broken = new ArrayList<>();
        for (Need need : some) {
            List<Need> others = new ArrayList<>(some);
            others.remove(need);
            if (!solving.fits(
                    least.best().get().build(), Stretch.boundless(needs.without(others)))) {
                broken.add(need);
            }
        }
        if (broken.size() == 1 && fitsWithout(broken.get(0), least)) {
            without.put(broken.get(0), least);
        }
        return broken.isEmpty() ? List.copyOf(some) : broken;
    }

    private boolean fitsWithout(Need need, Least least) {
        return solving.fits(
                least.best().orElseThrow().build(), Stretch.boundless(needs.without(need)));
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
