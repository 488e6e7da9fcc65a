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

/** Memory corrects errors when the brief says so. */
public final class MemoryEccRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "memory-ecc",
                    "Memory corrects errors where that is asked",
                    Unit.CONDITION,
                    Source.brief("memory, ecc"));
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
        return Finding.require(
                !it.brief().memory().ecc() || it.build().memory().ecc(),
                () -> Phrase.of("finding.memory-ecc", it.build().memory().name()));
    }
}
