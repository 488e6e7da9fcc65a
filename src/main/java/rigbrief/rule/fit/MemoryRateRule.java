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
 * Tells when the memory will run slower than its box says; never a breach.
 *
 * <p>The rate is the least of kit, board for that many modules, and processor.
 */
public final class MemoryRateRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "memory-rate",
                    "Memory runs at its own rate",
                    Unit.CONDITION,
                    Source.makersSheet("board, memory rate by modules; processor, memory rate"));
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
        int real = it.memoryMts();
        int stated = it.build().memory().mts();
        if (real == 0 || real >= stated) {
            return Finding.MET;
        }
        return Finding.note(
                () ->
                        Phrase.of(
                                "finding.memory-rate",
                                stated,
                                real,
                                it.build().board().memoryMts(it.build().memoryModules()),
                                it.build().memoryModules(),
                                it.build().processor().memoryMts(it.build().memory().type())));
    }
}
