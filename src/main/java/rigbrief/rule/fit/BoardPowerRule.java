package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Board;
import rigbrief.part.Fact;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.quantity.Power;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The board's regulators sustain the processor's sustained power; whole watts, equality allowed.
 */
public final class BoardPowerRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "board-power",
                    "Board's regulators sustain the processor",
                    Unit.WATT,
                    Source.makersSheet(
                            "board, processor power sustained; processor, sustained power"));
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
        return slot == Slot.PROCESSOR
                ? ((Processor) part).sustainedPowerW()
                : ((Board) part).processorPower();
    }

    @Override
    public Finding check(Assessment it) {
        int powerW = it.build().processor().sustainedPowerW();
        if (!(it.build().board().processorPower() instanceof Fact.Stated<Power> stated)) {
            return Finding.unknown(it.build().board().processorPower());
        }
        return Finding.atMost(
                powerW,
                stated.value().watts(),
                Unit.WATT,
                () -> Phrase.of("finding.board-power", powerW, stated.value()));
    }
}
