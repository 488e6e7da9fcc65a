package rigbrief.proposal.budget;

import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.solve.Solving;

/**
 * Finds what the goals of a brief cost: least totals, the front, the price of every must, and what
 * other ceilings would change.
 *
 * <p>Questions are answered on two threads. Each leans on answers that are named, waits for those,
 * and hears of no others, so that the answers do not depend on which comes first.
 */
public final class BudgetFinder {
    private final BudgetLimits limits;
    private final BooleanSupplier stop;
    private final Progress progress;

    /**
     * A finder.
     *
     * @param stop asked now and then; true ends the work early, with what is known by then
     */
    public BudgetFinder(BudgetLimits limits, BooleanSupplier stop, Progress progress) {
        this.limits = limits;
        this.stop = stop;
        this.progress = progress;
    }

    /**
     * What the goals of a brief cost.
     *
     * @param upToMinor how far to look for the front, in minor units
     * @param wanted which needs to look at; the front is found in any case
     */
    public Budget find(Brief brief, Catalogue catalogue, long upToMinor, Predicate<Need> wanted) {
        Solving solving = new Solving(catalogue, limits.goalSteps(), stop);
        Inquiry inquiry = new Inquiry(brief, solving, limits, upToMinor, wanted);
        return inquiry.answer(new Questions(stop, progress));
    }
}
