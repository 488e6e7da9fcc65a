package rigbrief.rule.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Board;
import rigbrief.part.CardPlace;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * Every card has a slot: the graphics card one of its width, a wireless card one that is neither
 * covered nor switched off.
 */
public final class SlotPlaceRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "slot-place",
                    "Every card has a free slot",
                    Unit.PIECE,
                    Source.makersSheet("board, expansion slots; case, openings"));
    private static final Set<Slot> READS =
            Reads.of(
                    Slot.BOARD,
                    Slot.GRAPHICS,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.CASE,
                    Slot.WIRELESS);

    private static final Set<Slot> WORSENED_BY = Reads.of(Slot.DRIVE, Slot.SECOND_DRIVE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** A drive can switch an expansion slot off, never on. */
    @Override
    public Set<Slot> onlyWorsenedBy() {
        return WORSENED_BY;
    }

    @Override
    public Finding check(Assessment it) {
        boolean card = it.layout().cardFirst() < 0;
        boolean wireless = wirelessHomeless(it);
        return Finding.unlessZero(
                (card ? 1 : 0) + (wireless ? 1 : 0), () -> words(it, card, wireless));
    }

    private static boolean wirelessHomeless(Assessment it) {
        if (!it.build().has(Slot.WIRELESS)) {
            return false;
        }
        return it.build().wireless().place() == CardPlace.X1
                ? it.layout().wirelessPosition() < 0
                : !hasKeyE(it.build().board());
    }

    private static boolean hasKeyE(Board board) {
        for (int i = 0; i < board.m2().size(); i++) {
            if (board.m2().get(i).forWireless()) {
                return true;
            }
        }
        return false;
    }

    private static Phrase words(Assessment it, boolean card, boolean wireless) {
        List<Phrase> words = new ArrayList<>();
        if (card) {
            words.add(Phrase.of("finding.slot-place.card", it.build().board().name()));
        }
        if (wireless) {
            words.add(
                    Phrase.of(
                            "finding.slot-place.wireless",
                            Phrase.of("standard." + it.build().wireless().place().word()),
                            it.build().wireless().name()));
            if (it.layout().cardLast() > 0) {
                words.add(
                        Phrase.of(
                                "finding.slot-place.covers",
                                it.layout().cardFirst(),
                                it.layout().cardLast()));
            }
        }
        return Phrase.joined("; ", words);
    }
}
