package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.Comparator;
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
 * finds no more than there is with all musts, and has answered for all. Where there is more, the
 * build found tells which musts it broke, and the rest is asked about by itself; where a search
 * proves too little, each half is. What is left open by next to nothing is told as a gap.
 */
final class Utilities {
    /** A gap of up to this part of full utility is told and not searched: 0.002. */
    private static final long NOTHING = 500;

    /** Musts that no other search tells of leave much to go through: part of the steps. */
    private static final long APART_DIVISOR = 4;

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
        together(priced.stream().filter(this::nested).toList());
        return this;
    }

    private void together(List<Need> suspects) {
        if (suspects.isEmpty() || solving.stop().getAsBoolean()) {
            return;
        }
        SearchSpace space = space(needs.without(suspects), Rules.ALL_BUT_IDLE);
        List<Need> gained = gained(space, suspects);
        if (gained.isEmpty()) {
            search(space, suspects);
            return;
        }
        together(but(suspects, gained));
        List<Need> alone = new ArrayList<>();
        for (Need need : gained) {
            List<Need> one = List.of(need);
            if (!gained(space(needs.without(one), Rules.ALL_BUT_IDLE), one).isEmpty()) {
                alone.add(need);
            }
        }
        if (!alone.isEmpty()) {
            together(but(gained, alone));
        }
    }

    private void search(SearchSpace space, List<Need> suspects) {
        Most most = solving.most(space, builds(base), Long.MAX_VALUE);
        suspects.forEach(need -> caps.merge(need, most.boundPoints(), Math::min));
        cap = Math.min(cap, most.boundPoints());
        List<Need> gained = broken(most.best(), suspects);
        boolean open = base.proven() && most.boundPoints() > basePoints();
        if (gained.isEmpty() && open && suspects.size() > 1) {
            gained = suspects.subList(0, suspects.size() / 2);
            together(gained);
        }
        if (!gained.isEmpty()) {
            together(but(suspects, gained));
        }
    }

    private static List<Need> but(List<Need> all, List<Need> some) {
        List<Need> others = new ArrayList<>(all);
        others.removeAll(some);
        return others;
    }

    /** The musts without which there is more near the best build as asked, before any search. */
    private List<Need> gained(SearchSpace space, List<Need> suspects) {
        if (space.candidates().impossible()) {
            return List.of();
        }
        Problem problem = space.within(needs.brief().ceiling().minorUnits());
        List<Standing> near = Starts.near(solving, problem, builds(base));
        return broken(near.stream().skip(Math.max(0, near.size() - 1)).findFirst(), suspects);
    }

    /** The musts that a build breaks which is better than any with all of them. */
    private List<Need> broken(Optional<Standing> found, List<Need> suspects) {
        if (found.isEmpty() || found.get().points() <= basePoints()) {
            return List.of();
        }
        better.add(found.get().build());
        return broken(found.get().build(), suspects);
    }

    private long basePoints() {
        return base.best().map(Standing::points).orElse(-1L);
    }

    /**
     * Whether every build with a must is one without it, and no worse: with freer terms of buying
     * it costs less, but perhaps from more suppliers, and to buy the client's own part anew costs
     * more.
     */
    private boolean nested(Need need) {
        boolean simple = needs.brief().wishes().weight("simple-order") > 0;
        return need.kind() == Need.Kind.MUST
                && (!simple || needs.without(need).buying().equals(needs.brief().buying()));
    }

    /** The musts among some that a build meets only if nobody insists on them. */
    private List<Need> broken(Build build, List<Need> some) {
        List<Need> broken = new ArrayList<>();
        for (Need need : some) {
            Brief kept = needs.without(but(some, List.of(need)));
            if (!solving.fits(build, kept, Rules.ALL_BUT_IDLE)) {
                broken.add(need);
            }
        }
        return broken;
    }

    /** With nobody insisting on a must, or a step less of it. */
    Eased eased(Need need) {
        long atMost = caps.getOrDefault(need, Long.MAX_VALUE);
        Most without = most(need, needs.without(need), better, atMost);
        return new Eased(
                without,
                need.softer().map(level -> most(need, needs.at(level), builds(without), atMost)));
    }

    /** With a must a step harder. */
    Most harder(Need need, Level level) {
        return most(need, needs.at(level), List.of(), nested(need) ? cap : Long.MAX_VALUE);
    }

    /**
     * The most utility with one must changed.
     *
     * @param known builds to start from, beside the best one as asked
     * @param atMost no build has more points
     */
    private Most most(Need need, Brief changed, List<Build> known, long atMost) {
        SearchSpace space = space(changed, Rules.ALL);
        if (space.candidates().impossible()) {
            return new Most(Optional.empty(), 0, true, 0);
        }
        List<Build> starts = new ArrayList<>(known);
        starts.addAll(builds(base));
        Problem problem = space.within(CeilingRule.limitMinor(changed));
        List<Standing> sound = new ArrayList<>(Solving.standings(problem, starts));
        if (sound.isEmpty() || !base.proven()) {
            sound.addAll(Starts.near(solving, problem, starts));
        }
        Optional<Standing> best = sound.stream().max(Comparator.comparingLong(Standing::points));
        if (best.isPresent() && atMost - best.get().points() <= problem.mostPoints() / NOTHING) {
            return new Most(best, atMost, false, 0);
        }
        best.map(Standing::build).ifPresent(starts::add);
        return solving.within(steps(need)).most(space, starts, atMost);
    }

    /** Where the search proves nothing with every must, it proves nothing with one changed. */
    private long steps(Need need) {
        long steps = nested(need) ? solving.steps() : solving.steps() / APART_DIVISOR;
        return base.proven() ? Math.max(1, steps) : 1;
    }

    private SearchSpace space(Brief brief, List<Rule> rules) {
        return SearchSpace.of(brief, valued, solving.catalogue(), rules);
    }

    private static List<Build> builds(Most most) {
        return most.best().map(Standing::build).stream().toList();
    }
}
