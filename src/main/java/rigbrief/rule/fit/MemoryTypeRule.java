package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Board;
import rigbrief.part.Memory;
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
 * The memory's generation and form are those of the board, and the processor takes that generation.
 *
 * <p>The excess counts what differs. Modules of another generation don't fit the slot at all.
 */
public final class MemoryTypeRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "memory-type",
                    "Memory is of the sort that board and processor take",
                    Unit.CONDITION,
                    Source.standard(
                            "JEDEC DDR4 and DDR5 SDRAM",
                            "JESD79-4 and JESD79-5",
                            "the notch differs by generation"));
    private static final Set<Slot> READS = Reads.of(Slot.PROCESSOR, Slot.BOARD, Slot.MEMORY);

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
        Memory memory = it.build().memory();
        Board board = it.build().board();
        Processor processor = it.build().processor();
        int differing = memory.type() == board.memoryType() ? 0 : 1;
        differing += memory.form() == board.moduleForm() ? 0 : 1;
        differing += processor.memoryMts(memory.type()) > 0 ? 0 : 1;
        return Finding.unlessZero(differing, () -> words(memory, board, processor));
    }

    private static Phrase words(Memory memory, Board board, Processor processor) {
        return Phrase.of(
                processor.memoryMts(memory.type()) > 0
                        ? "finding.memory-type"
                        : "finding.memory-type.not",
                memory.name(),
                Phrase.of("standard." + memory.type().word()),
                Phrase.of("standard." + memory.form().word()),
                board.name(),
                Phrase.of("standard." + board.memoryType().word()),
                Phrase.of("standard." + board.moduleForm().word()),
                processor.name());
    }
}
