package rigbrief.rule.need;

import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.Strength;
import rigbrief.build.Build;
import rigbrief.part.Board;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.part.Wireless;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * There is a wireless network of the generation the brief must have, beside a wired port.
 *
 * <p>A wireless need never drops the wired port: a board without one is a breach too (common
 * practice). The excess counts the generations that lack and the missing port. A wish that is not
 * met is a caution.
 */
public final class WirelessRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "wireless",
                    "Wireless network is there, and the wired port stays",
                    Unit.CONDITION,
                    Source.brief("wireless"));
    private static final Set<Slot> READS = Reads.of(Slot.BOARD, Slot.WIRELESS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** The oldest generation that will do; any will where the brief names none. */
    static WirelessStandard least(Brief brief) {
        WirelessStandard least = brief.wireless().atLeast();
        return least == WirelessStandard.NONE ? WirelessStandard.WIFI5 : least;
    }

    @Override
    public Object asks(Slot slot, Part part) {
        return slot == Slot.BOARD ? asks((Board) part) : ((Wireless) part).standard();
    }

    private static Object asks(Board board) {
        return List.of(board.wireless(), board.lanGbps() > 0);
    }

    @Override
    public Finding check(Assessment it) {
        Strength strength = it.brief().wireless().strength();
        if (strength == Strength.NONE) {
            return Finding.MET;
        }
        int lacking = Math.max(0, least(it.brief()).ordinal() - best(it.build()).ordinal());
        if (strength == Strength.WISH) {
            return lacking == 0
                    ? Finding.MET
                    : Finding.caution(() -> Phrase.of("finding.wished", words(it, false)));
        }
        boolean wired = it.build().board().lanGbps() > 0;
        return Finding.unlessZero(lacking + (wired ? 0 : 1), () -> words(it, !wired));
    }

    private static WirelessStandard best(Build build) {
        WirelessStandard onBoard = build.board().wireless();
        if (!build.has(Slot.WIRELESS)) {
            return onBoard;
        }
        WirelessStandard card = build.wireless().standard();
        return card.ordinal() > onBoard.ordinal() ? card : onBoard;
    }

    private static Phrase words(Assessment it, boolean unwired) {
        return Phrase.of(
                unwired ? "finding.wireless.unwired" : "finding.wireless",
                told(best(it.build())),
                told(least(it.brief())));
    }

    private static Phrase told(WirelessStandard standard) {
        return standard == WirelessStandard.NONE
                ? Phrase.of("finding.wireless.none")
                : Phrase.of("standard." + standard.word());
    }
}
