package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.BoxedCooler;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Measured;
import rigbrief.wording.Phrase;

/**
 * Processor and card stay under their limits less the planned margin, every part at its sustained
 * power and all fans at full speed, in this case at the brief's room temperature.
 *
 * <p>A processor without any cooler counts as {@value #UNCOOLED_DECIKELVIN} tenths of a kelvin too
 * hot, so that any cooler is nearer to the mark. A cooler rated for less heat than the processor
 * may draw is a caution.
 */
public final class CoolerHeatRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "cooler-heat",
                    "Processor and card stay cool enough",
                    Unit.DECIKELVIN,
                    Source.makersSheet(
                            "processor, highest temperature; catalogue, highest card temperature planned"));
    private static final Set<Slot> READS = Reads.ELECTRICAL;

    /** What a processor without any cooler counts for, in tenths of a kelvin. */
    public static final int UNCOOLED_DECIKELVIN = 1_000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** Whether a cooler was bought or is in the processor's box. */
    public static boolean cooled(Build build) {
        return build.has(Slot.COOLER) || build.processor().boxedCooler().isPresent();
    }

    @Override
    public Finding check(Assessment it) {
        Build build = it.build();
        if (!cooled(build)) {
            return Finding.breach(
                    UNCOOLED_DECIKELVIN,
                    () -> Phrase.of("finding.cooler-heat.none", build.processor().name()));
        }
        long excess = it.full().excessDecikelvin();
        if (excess > 0) {
            return Finding.breach(excess, () -> tooHot(it, excess));
        }
        int ratedW = ratedW(build);
        int powerW = build.processor().sustainedPowerW();
        return ratedW >= powerW
                ? Finding.MET
                : Finding.caution(() -> Phrase.of("finding.cooler-heat.rated", ratedW, powerW));
    }

    private static int ratedW(Build build) {
        return build.has(Slot.COOLER)
                ? build.cooler().ratedHeatW()
                : build.processor().boxedCooler().map(BoxedCooler::ratedHeatW).orElse(0);
    }

    private static Phrase tooHot(Assessment it, long excess) {
        return Phrase.of(
                "finding.cooler-heat.hot",
                it.full().processorC(),
                it.full().graphicsC(),
                Measured.of(excess, Unit.DECIKELVIN),
                it.brief().headroom().thermalMarginK());
    }
}
