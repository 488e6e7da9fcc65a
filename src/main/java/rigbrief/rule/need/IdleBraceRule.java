package rigbrief.rule.need;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Owned;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.rule.fit.BraceRule;
import rigbrief.wording.Phrase;

/**
 * No brace without a card, beside the case's own bracket, or for a card known to carry itself.
 *
 * <p>The client's own brace passes.
 */
public final class IdleBraceRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "idle-brace",
                    "A brace is bought only where it is of use",
                    Unit.PIECE,
                    Source.commonPractice("a part without a use is money and trouble"));
    private static final Set<Slot> READS = Reads.of(Slot.GRAPHICS, Slot.CASE, Slot.BRACE);

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
        Build build = it.build();
        boolean bought = build.has(Slot.BRACE) && !Owned.in(it, Slot.BRACE);
        boolean idle =
                bought
                        && (!build.has(Slot.GRAPHICS)
                                || build.pcCase().cardBracket()
                                || BraceRule.carriesItself(build.graphics()));
        return idle
                ? Finding.caution(() -> Phrase.of("finding.idle-brace", build.brace().name()))
                : Finding.MET;
    }
}
