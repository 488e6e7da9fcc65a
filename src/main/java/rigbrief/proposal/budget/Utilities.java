package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.proposal.need.Level;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.need.Stretch;
import rigbrief.proposal.solve.Most;
import rigbrief.proposal.solve.Solving;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;

/**
 * Finds the most utility under the ceiling with musts let go of, softer or harder, by the goals of
 * the brief as it stands: only so do two briefs compare.
 *
 * <p>A search without several musts at once goes through every build with fewer of them let go of,
 * with one of them softer, and with any must harder, so its bound holds for all of those. Mostly it
 * finds no more than there is with all musts, and has answered for all. Where it finds more, the
 * build found tells which musts it broke, and the rest is asked about once more.
 */
final class Utilities {
    private final Needs needs;
    private final Solving solving;
    private final Most base;
    private final Brief valued;
    private final Map<Need, Long> caps = new HashMap<>();
    private final List<Build> better = new ArrayList<>();
    private long cap = Long.MAX_VALUE;

    /**
     * The same under one brief.
     *
     * @param base the most utility with every must as asked, under the ceiling
     */
    Utilities(Needs needs, Solving solving, Most base) {
        this.needs = needs;
        this.solving = solving;
        this.base = base;
        this.valued = Stretch.none(needs.brief());
    }

    /** Without a must, and with it a step softer. */
    record Eased(Most without, Optional<Most> softer) {}

    /** The same once it has let go of several musts at once, and then of fewer. */
    Utilities among(List<Need> priced) {
        List<Need> suspects = new ArrayList<>(priced.stream().filter(this::nested).toList());
        while (!suspects.isEmpty() && !solving.stop().getAsBoolean()) {
            SearchSpace space = space(needs.without(suspects), Rules.ALL_BUT_IDLE);
            Most most = solving.most(space, builds(base), Long.MAX_VALUE);
            suspects.forEach(need -> caps.merge(need, most.boundPoints(), Math::min));
            cap = Math.min(cap, most.boundPoints());
            if (most.best().isEmpty()
                    || base.best().isPresent() && most.points() <= base.points()) {
                break;
            }
            Build found = most.best().get().build();
            better.add(found);
            List<Need> broken = broken(found, suspects);
            if (broken.isEmpty()) {
                break;
            }
            suspects.removeAll(broken);
        }
        return this;
    }

    /**
     * Whether every build with a must is one without it, at the same price: terms of buying change
     * prices and suppliers, and to buy the client's own part anew is no less than to have it.
     */
    private boolean nested(Need need) {
        return need.kind() == Need.Kind.MUST
                && needs.without(need).buying().equals(needs.brief().buying());
    }

    /** The musts among some that a build meets only if nobody insists on them. */
    private List<Need> broken(Build build, List<Need> some) {
        List<Need> broken = new ArrayList<>();
        for (Need need : some) {
            List<Need> others = new ArrayList<>(some);
            others.remove(need);
            if (!solving.fits(build, needs.without(others))) {
                broken.add(need);
            }
        }
        return broken;
    }

    /** With nobody insisting on a must, or a step less of it. */
    Eased eased(Need need) {
        Most without = most(needs.without(need), better, caps.getOrDefault(need, Long.MAX_VALUE));
        return new Eased(without, need.softer().map(level -> softer(need, level, without)));
    }

    private Most softer(Need need, Level level, Most without) {
        long most = nested(need) ? caps.getOrDefault(need, Long.MAX_VALUE) : Long.MAX_VALUE;
        return most(needs.at(level), builds(without), most);
    }

    /** With a must a step harder. */
    Most harder(Need need, Level level) {
        return most(needs.at(level), List.of(), nested(need) ? cap : Long.MAX_VALUE);
    }

    /**
     * The most utility under a brief.
     *
     * @param known builds to start from, beside the best one as asked
     * @param atMost no build has more points
     */
    private Most most(Brief brief, List<Build> known, long atMost) {
        SearchSpace space = space(brief, Rules.ALL);
        if (space.candidates().impossible()) {
            return new Most(Optional.empty(), 0, true, 0);
        }
        List<Build> starts = new ArrayList<>(known);
        starts.addAll(builds(base));
        Problem problem = space.within(CeilingRule.limitMinor(brief));
        if (!base.proven() || Solving.standings(problem, starts).isEmpty()) {
            List<Standing> near = Starts.near(solving, problem, starts);
            near.stream().skip(Math.max(0, near.size() - 1)).forEach(it -> starts.add(it.build()));
        }
        // Where the search proves nothing with every must, it proves nothing with one less.
        return (base.proven() ? solving : solving.within(1)).most(space, starts, atMost);
    }

    private SearchSpace space(Brief brief, List<Rule> rules) {
        return SearchSpace.of(brief, valued, solving.catalogue(), rules);
    }

    private static List<Build> builds(Most most) {
        return most.best().map(Standing::build).stream().toList();
    }
}
