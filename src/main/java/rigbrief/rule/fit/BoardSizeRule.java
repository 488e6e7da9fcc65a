package rigbrief.rule.fit;

import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Board;
import rigbrief.part.BoardForm;
import rigbrief.part.Fact;
import rigbrief.part.Part;
import rigbrief.part.PcCase;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/** The case lists the board's size. */
public final class BoardSizeRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "board-size",
                    "Board fits the case",
                    Unit.CONDITION,
                    Source.makersSheet("case, board sizes"));
    private static final Set<Slot> READS = Reads.of(Slot.BOARD, Slot.CASE);

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
        return slot == Slot.BOARD ? ((Board) part).form() : ((PcCase) part).boards();
    }

    @Override
    public Finding check(Assessment it) {
        PcCase pcCase = it.build().pcCase();
        BoardForm form = it.build().board().form();
        if (!(pcCase.boards() instanceof Fact.Stated<List<BoardForm>> stated)) {
            return Finding.unknown(pcCase.boards());
        }
        return Finding.require(
                stated.value().contains(form),
                () ->
                        Phrase.of(
                                "finding.board-size",
                                pcCase.name(),
                                Phrase.of("standard." + form.word()),
                                it.build().board().name()));
    }
}
