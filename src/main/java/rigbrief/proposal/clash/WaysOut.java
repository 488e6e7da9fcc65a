package rigbrief.proposal.clash;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.proposal.need.Level;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.solve.Answer;
import rigbrief.proposal.solve.Least;
import rigbrief.proposal.solve.SideBySide;
import rigbrief.proposal.solve.Solving;

/**
 * Turns minimal corrections into ways out: each need that gives way does so as little as possible,
 * found by halving its looser values, and the rest is solved again for least money.
 *
 * <p>Where the ceiling gives way too, the other need is left as the cheapest build has it: how far
 * it gives way then has its price.
 */
final class WaysOut {
    private final Needs needs;
    private final List<Need> constraints;
    private final Solving solving;

    WaysOut(Needs needs, List<Need> constraints, Solving solving) {
        this.needs = needs;
        this.constraints = constraints;
        this.solving = solving;
    }

    /**
     * A way out per correction, fewest changes first, then the cheapest.
     *
     * @param known builds found on the way
     */
    List<WayOut> of(List<BitSet> corrections, List<Build> known) {
        List<WayOut> ways = new ArrayList<>();
        for (Optional<WayOut> way : SideBySide.map(corrections, one -> of(one, known))) {
            way.ifPresent(ways::add);
        }
        ways.sort(
                Comparator.<WayOut>comparingInt(way -> way.changes().size())
                        .thenComparingLong(WayOut::totalMinor));
        return ways;
    }

    private Optional<WayOut> of(BitSet correction, List<Build> known) {
        List<Need> givingWay = new ArrayList<>();
        Brief rest = needs.brief();
        for (int member : QuickXplain.members(correction)) {
            givingWay.add(constraints.get(member));
            rest = constraints.get(member).dropped().apply(rest);
        }
        boolean ceiling = givingWay.stream().anyMatch(need -> need.kind() == Need.Kind.CEILING);
        if (!ceiling) {
            for (Need need : givingWay) {
                rest = tightest(need, rest, known);
            }
        }
        Brief loosened = rest;
        Least least = solving.least(loosened, known);
        return least.best()
                .map(
                        best ->
                                new WayOut(
                                        changes(givingWay, best.build(), loosened),
                                        best.totalMinor(),
                                        least.proven(),
                                        best.build(),
                                        loosened));
    }

    /** The brief with the nearest value of a dropped need at which a build exists. */
    private Brief tightest(Need need, Brief dropped, List<Build> known) {
        List<Level> looser = need.looser();
        int low = 0;
        int high = looser.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            Brief tried = looser.get(middle).put().apply(dropped);
            if (solving.exists(tried, known) == Answer.YES) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low == looser.size() ? dropped : looser.get(low).put().apply(dropped);
    }

    private List<Change> changes(List<Need> givingWay, Build build, Brief loosened) {
        Assessment asked = new Assessor(needs.brief(), solving.catalogue()).assess(build);
        Assessment given = new Assessor(loosened, solving.catalogue()).assess(build);
        List<Change> changes = new ArrayList<>();
        for (Need need : givingWay) {
            // What a job is, such as its number of machines, no build tells by itself.
            Assessment it = need.kind() == Need.Kind.TERM ? given : asked;
            changes.add(new Change(need.name(), need.asked().words(), need.reached().apply(it)));
        }
        return changes;
    }
}
