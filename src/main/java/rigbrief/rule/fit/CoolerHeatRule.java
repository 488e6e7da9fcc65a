package rigbrief.rule.fit;

import java.util.Locale;
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
                    () ->
                            "%s has no cooler in its box; add one"
                                    .formatted(build.processor().name()));
        }
        long excess = it.full().excessDecikelvin();
        if (excess > 0) {
            return Finding.breach(excess, () -> tooHot(it, excess));
        }
        int ratedW = ratedW(build);
        int powerW = build.processor().sustainedPowerW();
        return ratedW >= powerW
                ? Finding.MET
                : Finding.caution(
                        () ->
                                "cooler rated for %d W, processor may draw %d W for good"
                                        .formatted(ratedW, powerW));
    }

    private static int ratedW(Build build) {
        return build.has(Slot.COOLER)
                ? build.cooler().ratedHeatW()
                : build.processor().boxedCooler().map(BoxedCooler::ratedHeatW).orElse(0);
    }

    private static String tooHot(Assessment it, long excess) {
        return String.format(
                Locale.ROOT,
                "with all fans at full speed the processor is at %.0f °C and the card at %.0f °C: %s over the limit less %d K",
                it.full().processorC(),
                it.full().graphicsC(),
                Unit.DECIKELVIN.print(excess),
                it.brief().headroom().thermalMarginK());
    }
}
