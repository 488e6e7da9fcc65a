package rigbrief.rule.fit;

import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Margin;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The modules have slots, and neither board nor processor is given more memory than it takes.
 *
 * <p>The excess is in modules: those without a slot, or those beyond the capacity, whichever are
 * more. A board's limit for one slot is its limit for all, shared out evenly (common practice).
 */
public final class MemorySlotsRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "memory-slots",
                    "Memory fits the slots and the limits",
                    Unit.PIECE,
                    Source.makersSheet(
                            "board, memory slots and most memory; processor, most memory"));
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
        Build build = it.build();
        int modules = build.memoryModules();
        int slots = build.board().memorySlots();
        int beyond = Math.max(Math.max(0, modules - slots), beyondCapacity(build));
        Optional<Margin> margin = Optional.of(new Margin(slots, modules, Unit.PIECE));
        return beyond == 0
                ? new Finding.Met(margin)
                : new Finding.Breach(
                        beyond, () -> words(build), modules > slots ? margin : Optional.empty());
    }

    private static int beyondCapacity(Build build) {
        int moduleGb = build.memory().moduleGb();
        if (moduleGb > perSlotGb(build)) {
            return build.memoryModules();
        }
        int overGb = build.memoryGb() - mostGb(build);
        return overGb <= 0 ? 0 : (overGb + moduleGb - 1) / moduleGb;
    }

    private static int perSlotGb(Build build) {
        return build.board().memoryMaxGb() / build.board().memorySlots();
    }

    private static int mostGb(Build build) {
        return Math.min(build.board().memoryMaxGb(), build.processor().memoryMaxGb());
    }

    private static Phrase words(Build build) {
        return Phrase.of(
                "finding.memory-slots",
                build.memoryModules(),
                build.memory().moduleGb(),
                build.board().memorySlots(),
                perSlotGb(build),
                mostGb(build));
    }
}
