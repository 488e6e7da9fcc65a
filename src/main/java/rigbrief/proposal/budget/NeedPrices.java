package rigbrief.proposal.budget;

import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.solve.Least;
import rigbrief.proposal.solve.Most;
import rigbrief.proposal.solve.Solving;
import rigbrief.search.Standing;

/** Sets what was found with musts changed against what was found with all as asked. */
final class NeedPrices {
    private final Needs needs;
    private final Solving solving;
    private final Least musts;
    private final List<Standing> front;
    private final long mostPoints;

    /**
     * Prices against a known answer.
     *
     * @param musts the least total with every must
     * @param front the front under the ceiling, cheapest first
     * @param mostPoints points of full utility
     */
    NeedPrices(Needs needs, Solving solving, Least musts, List<Standing> front, long mostPoints) {
        this.needs = needs;
        this.solving = solving;
        this.musts = musts;
        this.front = List.copyOf(front);
        this.mostPoints = mostPoints;
    }

    /**
     * The price of one must.
     *
     * @param eased most utility without it and with it softer; empty where there is none to compare
     *     with
     * @param least least total with it harder; empty where there is no harder step
     * @param most most utility with it harder
     */
    NeedPrice price(
            Prices.Leasts leasts,
            Optional<Utilities.Eased> eased,
            Optional<Least> least,
            Optional<Most> most) {
        Need need = leasts.need();
        String words = need.kind() == Need.Kind.OWN ? "bought anew" : "not asked for";
        return new NeedPrice(
                need,
                variant(
                        words,
                        needs.without(need),
                        leasts.free(),
                        eased.map(Utilities.Eased::without)),
                need.softer()
                        .map(
                                level ->
                                        variant(
                                                level.words(),
                                                needs.at(level),
                                                leasts.softer().get(),
                                                eased.flatMap(Utilities.Eased::softer))),
                need.harder()
                        .map(level -> variant(level.words(), needs.at(level), least.get(), most)));
    }

    private Variant variant(String words, Brief brief, Least least, Optional<Most> most) {
        long saved =
                least.best().isPresent() && musts.best().isPresent()
                        ? musts.totalMinor() - least.totalMinor()
                        : 0;
        return new Variant(words, least, saved, most.flatMap(it -> gain(brief, it)));
    }

    /** The best build found may also lie on the front, where prices are the same. */
    private Optional<Gain> gain(Brief brief, Most most) {
        if (front.isEmpty() || most.none()) {
            return Optional.empty();
        }
        long before = front.get(front.size() - 1).points();
        long found = most.best().map(Standing::points).orElse(-1L);
        boolean comparable = brief.buying().equals(needs.brief().buying());
        for (int i = front.size() - 1; comparable && i >= 0; i--) {
            Standing standing = front.get(i);
            if (standing.points() > found && solving.fits(standing.build(), brief)) {
                found = standing.points();
            }
        }
        return found < 0
                ? Optional.empty()
                : Optional.of(
                        new Gain(
                                found - before,
                                Math.max(0, Math.min(most.boundPoints(), mostPoints) - found)));
    }
}
