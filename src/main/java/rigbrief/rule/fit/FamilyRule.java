package rigbrief.rule.fit;

import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Board;
import rigbrief.part.Fact;
import rigbrief.part.FamilySupport;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The board's firmware knows the processor's family, or can be taught to before the first boot.
 *
 * <p>Breach when the board never supports the family, or only with newer firmware that nothing at
 * hand can write; caution when the update is possible without a working processor, or the builder
 * has a processor that boots the older firmware.
 */
public final class FamilyRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "family",
                    "Board's firmware knows the processor",
                    Unit.CONDITION,
                    Source.makersSheet("board, supported processor families with firmware"));
    private static final Set<Slot> READS = Reads.of(Slot.PROCESSOR, Slot.BOARD);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public Object asks(Slot slot, Part part) {
        return slot == Slot.PROCESSOR ? ((Processor) part).family() : asks((Board) part);
    }

    private static Object asks(Board board) {
        return List.of(board.families(), board.shippedFirmware(), board.firmwareWithoutProcessor());
    }

    @Override
    public Finding check(Assessment it) {
        Board board = it.build().board();
        String family = it.build().processor().family();
        if (!(board.families() instanceof Fact.Stated<List<FamilySupport>> stated)) {
            return Finding.unknown(board.families());
        }
        for (FamilySupport support : stated.value()) {
            if (support.family().equals(family)) {
                return known(it, board, support);
            }
        }
        return Finding.breach(
                1,
                () ->
                        Phrase.of(
                                "finding.family.never",
                                board.name(),
                                family,
                                it.build().processor().name()));
    }

    private static Finding known(Assessment it, Board board, FamilySupport support) {
        if (FamilySupport.atLeast(board.shippedFirmware(), support.firmware())) {
            return Finding.MET;
        }
        if (board.firmwareWithoutProcessor()) {
            return Finding.caution(() -> Phrase.of("finding.family.bare", update(it, support)));
        }
        if (it.brief().place().helperProcessor()) {
            return Finding.caution(() -> Phrase.of("finding.family.helper", update(it, support)));
        }
        return Finding.breach(1, () -> Phrase.of("finding.family.older", update(it, support)));
    }

    private static Phrase update(Assessment it, FamilySupport support) {
        Board board = it.build().board();
        return Phrase.of(
                "finding.family.update",
                board.name(),
                board.shippedFirmware(),
                it.build().processor().name(),
                support.firmware());
    }
}
