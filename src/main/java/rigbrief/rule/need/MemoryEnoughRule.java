package rigbrief.rule.need;

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
 * Main memory holds what runs at the same time, and at least what the brief asks; whole GB, the
 * demand rounded up, equality allowed.
 */
public final class MemoryEnoughRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "memory-enough",
                    "Memory is enough",
                    Unit.GB,
                    Source.brief("memory at least; workloads at once"));
    private static final Set<Slot> READS = Reads.of(Slot.MEMORY);

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
        long need = Math.max(WholeGb.of(it.demand().memoryGb()), it.brief().memory().atLeastGb());
        int have = it.build().memoryGb();
        return Finding.atMost(
                need, have, Unit.GB, () -> Phrase.of("finding.memory-enough", need, have));
    }
}
