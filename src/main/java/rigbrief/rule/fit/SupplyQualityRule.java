package rigbrief.rule.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Efficiency;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * Cautions about a supply without an efficiency label, with a short or unknown guarantee, or with
 * no usual size of reserve over the planned share. Never a breach.
 *
 * <p>The guarantee asked for is {@value #GOOD_YEARS} years.
 */
public final class SupplyQualityRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "supply-quality",
                    "Supply is one to trust",
                    Unit.CONDITION,
                    Source.commonPractice(
                            "the supply outlives the other parts and fails them all when it fails"));
    private static final Set<Slot> READS = Reads.ELECTRICAL;

    /** Guarantee in years that a good supply comes with. */
    public static final int GOOD_YEARS = 5;

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
        Supply supply = it.build().supply();
        boolean label = supply.efficiency() != Efficiency.NONE;
        boolean guarantee = supply.listing().warrantyYears().orElse(0) >= GOOD_YEARS;
        boolean reserve = supply.watts() >= SupplySizes.planned(SupplyLoadRule.neededW(it), 1);
        return label && guarantee && reserve
                ? Finding.MET
                : Finding.caution(() -> words(supply, label, guarantee, reserve));
    }

    private static Phrase words(Supply supply, boolean label, boolean guarantee, boolean reserve) {
        List<Phrase> words = new ArrayList<>();
        if (!label) {
            words.add(Phrase.of("finding.supply-quality.label"));
        }
        if (!guarantee) {
            words.add(
                    supply.listing().warrantyYears().isPresent()
                            ? Phrase.of(
                                    "finding.supply-quality.years",
                                    supply.listing().warrantyYears().getAsInt())
                            : Phrase.of("finding.supply-quality.guarantee"));
        }
        if (!reserve) {
            words.add(Phrase.of("finding.supply-quality.reserve"));
        }
        return Phrase.of("finding.supply-quality", supply.name(), Phrase.joined(", ", words));
    }
}
