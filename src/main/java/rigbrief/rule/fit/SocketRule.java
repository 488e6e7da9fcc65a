package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Board;
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

/** The processor fits the board's socket; names are compared as written. */
public final class SocketRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "socket",
                    "Processor fits the board's socket",
                    Unit.CONDITION,
                    Source.makersSheet("processor, socket; board, socket"));
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
        return slot == Slot.PROCESSOR ? ((Processor) part).socket() : ((Board) part).socket();
    }

    @Override
    public Finding check(Assessment it) {
        Processor processor = it.build().processor();
        Board board = it.build().board();
        return Finding.require(
                processor.socket().equals(board.socket()),
                () ->
                        Phrase.of(
                                "finding.socket",
                                processor.name(),
                                processor.socket(),
                                board.name(),
                                board.socket()));
    }
}
