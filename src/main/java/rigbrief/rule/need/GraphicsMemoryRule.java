package rigbrief.rule.need;

import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Graphics;
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
 * The card has the graphics memory that the greediest workload wants at its settings.
 *
 * <p>Without a card the processor's graphics borrow main memory, which counts as at most {@value
 * #SHARED_GB} GB (common practice: more is slow and is missed elsewhere). Whole GB, the demand
 * rounded up, equality allowed.
 */
public final class GraphicsMemoryRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "graphics-memory",
                    "Graphics memory is enough",
                    Unit.GB,
                    Source.brief("workloads and their settings"));
    private static final Set<Slot> READS = Reads.of(Slot.PROCESSOR, Slot.GRAPHICS);

    /** Main memory that integrated graphics may be counted to borrow, in GB. */
    public static final int SHARED_GB = 4;

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
                ? ((Processor) part).integratedGraphics()
                : asks((Graphics) part);
    }

    private static Object asks(Graphics card) {
        return List.of(card.vramGb(), card.upscaling().isPresent());
    }

    @Override
    public Finding check(Assessment it) {
        long need = WholeGb.of(neededGb(it));
        int have = haveGb(it.build());
        return Finding.atMost(
                need, have, Unit.GB, () -> Phrase.of("finding.graphics-memory", need, have));
    }

    private static double neededGb(Assessment it) {
        Build build = it.build();
        boolean upscales = build.has(Slot.GRAPHICS) && build.graphics().upscaling().isPresent();
        return upscales ? it.demand().vramGb() : it.demand().vramWithoutUpscalingGb();
    }

    private static int haveGb(Build build) {
        if (build.has(Slot.GRAPHICS)) {
            return build.graphics().vramGb();
        }
        return build.processor().integratedGraphics() ? SHARED_GB : 0;
    }
}
