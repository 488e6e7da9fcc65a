package rigbrief.rule.need;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief.Strength;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Owned;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * No operating-system licence that nobody wants.
 *
 * <p>The client's own licence passes.
 */
public final class IdleLicenceRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "idle-licence",
                    "A licence is bought only where one is wanted",
                    Unit.PIECE,
                    Source.commonPractice("a part without a use is money and trouble"));
    private static final Set<Slot> READS = Reads.of(Slot.SYSTEM);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** A builder may have a reason; the search never has one. */
    @Override
    public boolean forbids(Finding finding) {
        return !(finding instanceof Finding.Met);
    }

    @Override
    public Finding check(Assessment it) {
        boolean idle =
                it.build().has(Slot.SYSTEM)
                        && !Owned.in(it, Slot.SYSTEM)
                        && it.brief().system().strength() == Strength.NONE;
        return idle
                ? Finding.caution(
                        () -> Phrase.of("finding.idle-licence", it.build().system().name()))
                : Finding.MET;
    }
}
