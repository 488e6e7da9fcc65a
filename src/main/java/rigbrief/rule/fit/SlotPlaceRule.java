package rigbrief.rule.fit;

import java.util.Set;
import java.util.StringJoiner;
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

    private static String words(Assessment it, boolean card, boolean wireless) {
        StringJoiner words = new StringJoiner("; ");
        if (card) {
            words.add(
                    "%s has no x16 slot for the graphics card"
                            .formatted(it.build().board().name()));
        }
        if (wireless) {
            words.add(
                    "no free %s slot for %s%s"
                            .formatted(
                                    it.build().wireless().place().word(),
                                    it.build().wireless().name(),
                                    it.layout().cardLast() > 0
                                            ? "; the graphics card covers %d to %d"
                                                    .formatted(
                                                            it.layout().cardFirst(),
                                                            it.layout().cardLast())
                                            : ""));
        }
        return words.toString();
    }
}
