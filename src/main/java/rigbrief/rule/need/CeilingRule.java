package rigbrief.rule.need;

import java.util.Currency;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Margin;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The order for all machines, all in, costs at most the ceiling and the overrun the brief allows.
 *
 * <p>Whole minor units, equality allowed; the overrun is rounded down. Over the ceiling but within
 * the overrun is a caution that says by how much.
 */
public final class CeilingRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "ceiling",
                    "Everything together stays under the ceiling",
                    Unit.MINOR_MONEY,
                    Source.brief("ceiling and overrun"));
    private static final Set<Slot> READS = Reads.ALL;

    private static final int WHOLE_BASIS_POINTS = 10_000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** The ceiling with its overrun, in minor units. */
    public static long limitMinor(Brief brief) {
        long ceiling = brief.ceiling().minorUnits();
        return ceiling + ceiling * brief.overrunBasisPoints() / WHOLE_BASIS_POINTS;
    }

    @Override
    public boolean decidesEarly() {
        return true;
    }

    @Override
    public Finding check(Assessment it) {
        long total = it.cost().totalMinor();
        long ceiling = it.brief().ceiling().minorUnits();
        if (total <= ceiling) {
            return Finding.atMost(total, ceiling, Unit.MINOR_MONEY, () -> Phrase.NONE);
        }
        long limit = limitMinor(it.brief());
        if (total > limit) {
            return Finding.atMost(total, limit, Unit.MINOR_MONEY, () -> words(it, total, limit));
        }
        return new Finding.Caution(
                () -> Phrase.of("finding.ceiling.overrun", words(it, total, ceiling)),
                Optional.of(new Margin(limit, total, Unit.MINOR_MONEY)));
    }

    private static Phrase words(Assessment it, long total, long limit) {
        Currency currency = it.brief().currency();
        return Phrase.of(
                "finding.ceiling",
                Money.ofMinor(total, currency),
                Money.ofMinor(total - limit, currency),
                Money.ofMinor(limit, currency));
    }
}
