package rigbrief.intake;

import java.util.Currency;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Wishes;
import rigbrief.catalogue.Catalogue;
import rigbrief.quantity.Money;
import rigbrief.search.Certificate;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.TwoStage;

/**
 * Solves for the least money with the search that proposals come from, stopped by a count of steps:
 * the same answers are shown the same amounts on every machine.
 */
public final class LeanSearch implements LeastMoney {
    /** Enough to prove nearly every brief of the sample, and over in about a second at worst. */
    public static final long USUAL_STEPS = 20_000;

    /** No ceiling: what all the parts of the dearest order would not cost. */
    private static final long FAR_ABOVE_MINOR = 1_000_000_000_000L;

    private final Catalogue catalogue;
    private final long steps;
    // Asked by key only, never walked through.
    private final Map<Brief, Least> known = new HashMap<>();

    /** A search in a catalogue that gives up after so many steps. */
    public LeanSearch(Catalogue catalogue, long steps) {
        this.catalogue = catalogue;
        this.steps = steps;
    }

    @Override
    public Least of(Brief brief) {
        Brief boundless = boundless(brief);
        Least least = known.get(boundless);
        if (least == null) {
            least = solve(boundless);
            known.put(boundless, least);
        }
        return least;
    }

    /** Wishes and names don't move the least money, so that briefs which differ in them are one. */
    private static Brief boundless(Brief brief) {
        return new BriefDraft(brief)
                .name("least")
                .client("anybody")
                .ceiling(Money.ofMinor(FAR_ABOVE_MINOR, brief.currency()))
                .wishes(new Wishes(Map.of()))
                .toBrief();
    }

    private Least solve(Brief brief) {
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            return new Least.Impossible();
        }
        Problem problem = space.within(FAR_ABOVE_MINOR);
        TwoStage search = new TwoStage(1, 0, steps, () -> false);
        return least(search.best(problem, Objective.leastMoney()), brief.currency());
    }

    private static Least least(Certificate found, Currency currency) {
        Optional<Money> total =
                found.best().map(best -> Money.ofMinor(best.totalMinor(), currency));
        if (total.isEmpty()) {
            return found.complete() ? new Least.Impossible() : new Least.Unknown();
        }
        if (found.complete()) {
            return new Least.Known(total.get());
        }
        // The objective counts money saved, so its bound is the negative of an amount.
        long low = (long) Math.ceil(-found.bound() - 1e-6);
        return new Least.Between(Money.ofMinor(Math.max(0, low), currency), total.get());
    }
}
