package rigbrief.proposal;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.catalogue.Catalogue;
import rigbrief.quantity.Money;

/**
 * Proposes an order in two variants for a brief that allows them, where no build can be had for all
 * machines.
 *
 * <p>One of two variants makes up at least half of the machines. So builds are proposed for half of
 * them, at half of the ceiling, and for each the best second variant is found; the mix that costs
 * least is given. That is a good mix, not a proven best one: a first variant dearer than its share
 * of the ceiling is not looked at.
 */
public final class VariantProposer {
    private final SearchLimits limits;

    /** A proposer that searches no harder than the limits say. */
    public VariantProposer(SearchLimits limits) {
        this.limits = limits;
    }

    /** The cheapest mix; empty when the brief allows none, is for one machine, or there is none. */
    public Optional<Mix> propose(Brief brief, Catalogue catalogue) {
        if (!brief.buying().variants() || brief.quantity() < 2) {
            return Optional.empty();
        }
        VariantFinder finder = new VariantFinder(brief, catalogue);
        return new Proposer(limits)
                .propose(half(brief), catalogue).proposals().stream()
                        .map(proposal -> finder.find(proposal.record().build()))
                        .flatMap(Optional::stream)
                        .min(Comparator.comparing(Mix::totalMinor));
    }

    /** The brief for half of the machines, all alike. */
    private static Brief half(Brief brief) {
        int machines = (brief.quantity() + 1) / 2;
        long share =
                BigInteger.valueOf(brief.ceiling().minorUnits())
                        .multiply(BigInteger.valueOf(machines))
                        .divide(BigInteger.valueOf(brief.quantity()))
                        .longValueExact();
        return new BriefDraft(brief)
                .quantity(machines)
                .ceiling(Money.ofMinor(Math.max(1, share), brief.currency()))
                .buying(brief.buying().with(false))
                .toBrief();
    }
}
