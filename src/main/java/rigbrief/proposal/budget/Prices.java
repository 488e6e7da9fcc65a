package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.build.Build;
import rigbrief.proposal.need.Level;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.need.Stretch;
import rigbrief.proposal.solve.Least;
import rigbrief.proposal.solve.Solving;
import rigbrief.search.Standing;

/** Finds the least totals without a must and with it a step softer, at any price. */
final class Prices {
    private final Needs needs;
    private final Solving solving;
    private final Least musts;
    private final IdleNeeds idle;

    /**
     * Prices against a known answer.
     *
     * @param musts the least total with every must
     * @param idle musts that are proven to cost nothing
     */
    Prices(Needs needs, Solving solving, Least musts, IdleNeeds idle) {
        this.needs = needs;
        this.solving = solving;
        this.musts = musts;
        this.idle = idle;
    }

    /** The least totals without a must and with it softer. */
    record Leasts(Need need, Least free, Optional<Least> softer) {}

    /** The least totals without a must and with it softer. */
    Leasts leasts(Need need) {
        if (idle.idle(need)) {
            return new Leasts(need, musts, need.softer().map(level -> musts));
        }
        Least free =
                idle.without(need)
                        .orElseGet(
                                () ->
                                        solving.least(
                                                Stretch.boundless(needs.without(need)), known()));
        return new Leasts(need, free, need.softer().map(level -> softer(need, level, free)));
    }

    /** One step softer lies between the must as asked and none. */
    private Least softer(Need need, Level level, Least free) {
        boolean between = need.kind() == Need.Kind.MUST;
        if (between && unchanged(free)) {
            return musts;
        }
        List<Build> known = new ArrayList<>(known());
        free.best().map(Standing::build).ifPresent(known::add);
        return solving.least(
                Stretch.boundless(needs.at(level)), known, between ? free.boundMinor() : 0);
    }

    /** Whether letting go of a must is proven to change nothing. */
    private boolean unchanged(Least free) {
        return musts.best().isPresent()
                && musts.proven()
                && free.best().isPresent()
                && free.proven()
                && free.totalMinor() == musts.totalMinor();
    }

    private List<Build> known() {
        return musts.best().stream().map(Standing::build).toList();
    }
}
