package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.CoolerType;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The case has a side that takes a radiator of that size and thickness.
 *
 * <p>A thickness that is not stated is a caution even where the usual one fits.
 */
public final class RadiatorPlaceRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "radiator-place",
                    "Radiator has a place in the case",
                    Unit.CONDITION,
                    Source.makersSheet(
                            "case, radiators by side; cooler, radiator size and thickness"));
    private static final Set<Slot> READS = Reads.of(Slot.BOARD, Slot.COOLER, Slot.CASE);

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
        if (!build.has(Slot.COOLER) || build.cooler().type() != CoolerType.LIQUID) {
            return Finding.MET;
        }
        if (!it.layout().radiatorFits()) {
            return Finding.breach(
                    1,
                    () ->
                            Phrase.of(
                                    "finding.radiator-place",
                                    build.pcCase().name(),
                                    build.cooler().radiatorMm(),
                                    build.cooler()
                                            .thickness()
                                            .<Object>map(each -> each)
                                            .or(Phrase.of("finding.radiator-place.thickness"))));
        }
        return build.cooler().thickness().stated()
                ? Finding.MET
                : Finding.unknown(build.cooler().thickness());
    }
}
