package rigbrief.rule.fit;

import java.util.Set;
import java.util.StringJoiner;
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

    private static String words(Supply supply, boolean label, boolean guarantee, boolean reserve) {
        StringJoiner words = new StringJoiner(", ", supply.name() + ": ", "");
        if (!label) {
            words.add("no efficiency label");
        }
        if (!guarantee) {
            words.add(
                    supply.listing().warrantyYears().isPresent()
                            ? "guaranteed for %d years only"
                                    .formatted(supply.listing().warrantyYears().getAsInt())
                            : "no guarantee stated");
        }
        if (!reserve) {
            words.add("no usual size of reserve over the load");
        }
        return words.toString();
    }
}
