package rigbrief.rule.need;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief.Strength;
import rigbrief.part.Board;
import rigbrief.part.Part;
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
 * No wireless card that nobody asks for, or beside a board that meets the need itself.
 *
 * <p>The client's own card passes.
 */
public final class IdleWirelessRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "idle-wireless",
                    "A wireless card is bought only where it is of use",
                    Unit.PIECE,
                    Source.commonPractice("a part without a use is money and trouble"));
    private static final Set<Slot> READS = Reads.of(Slot.BOARD, Slot.WIRELESS);

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
    public Object asks(Slot slot, Part part) {
        return slot == Slot.BOARD ? ((Board) part).wireless() : NOTHING;
    }

    @Override
    public Finding check(Assessment it) {
        boolean bought = it.build().has(Slot.WIRELESS) && !Owned.in(it, Slot.WIRELESS);
        if (!bought || !idle(it)) {
            return Finding.MET;
        }
        return Finding.caution(
                () -> Phrase.of("finding.idle-wireless", it.build().wireless().name()));
    }

    private static boolean idle(Assessment it) {
        return it.brief().wireless().strength() == Strength.NONE
                || it.build().board().wireless().ordinal()
                        >= WirelessRule.least(it.brief()).ordinal();
    }
}
