package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The last slot the graphics card covers still has an opening in the case.
 *
 * <p>Widths are rounded up to whole slots. A board without a slot for the card is told by {@code
 * slot-place}.
 */
public final class CardSlotsRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "card-slots",
                    "Case has an opening for every slot the card covers",
                    Unit.PIECE,
                    Source.makersSheet("case, openings for cards; card, width in slots"));
    private static final Set<Slot> READS = Reads.of(Slot.BOARD, Slot.GRAPHICS, Slot.CASE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public Finding check(Assessment it) {
        if (!it.build().has(Slot.GRAPHICS) || it.layout().cardFirst() < 0) {
            return Finding.MET;
        }
        int last = it.layout().cardLast();
        int openings = it.build().pcCase().expansionSlots();
        return Finding.atMost(
                last,
                openings,
                Unit.PIECE,
                () ->
                        Phrase.of(
                                "finding.card-slots",
                                it.build().graphics().slots(),
                                last,
                                openings));
    }
}
