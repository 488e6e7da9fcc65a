package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Owned;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The supply's rating is at least the planned one for the load with every part at its sustained
 * power.
 *
 * <p>Planned rating: load over the planned share, up to the next usual size, then as many sizes
 * further up as the brief says. A kept supply has to keep the share but not the sizes further up:
 * the reserve is for what is bought.
 */
public final class SupplyLoadRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "supply-load",
                    "Supply is rated for the load with the planned reserve",
                    Unit.WATT,
                    Source.commonPractice(
                            "at most 80 % of the rating in sustained use and one usual size up, both settable"));
    private static final Set<Slot> READS = Reads.ELECTRICAL;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** Every further part draws something. */
    @Override
    public Set<Slot> onlyWorsenedBy() {
        return Reads.FURTHER_LOAD;
    }

    /** The least rating in W that keeps the sustained load within the planned share. */
    static long neededW(Assessment it) {
        return neededW(it.sustainedW(), it.brief());
    }

    private static long neededW(double sustainedW, Brief brief) {
        return WholeWatts.load(sustainedW * 100 / brief.headroom().supplySharePercent());
    }

    /**
     * The rating in W that is planned for a sustained load when the supply is bought; never falls
     * as the load rises.
     */
    public static long plannedW(double sustainedW, Brief brief) {
        return SupplySizes.planned(neededW(sustainedW, brief), brief.headroom().supplySizesUp());
    }

    private static long plannedW(Assessment it) {
        return Owned.in(it, Slot.SUPPLY) ? neededW(it) : plannedW(it.sustainedW(), it.brief());
    }

    @Override
    public Finding check(Assessment it) {
        long plannedW = plannedW(it);
        int ratedW = it.build().supply().watts();
        return Finding.atMost(
                plannedW,
                ratedW,
                Unit.WATT,
                () ->
                        Phrase.of(
                                "finding.supply-load",
                                ratedW,
                                plannedW,
                                WholeWatts.load(it.sustainedW()),
                                it.brief().headroom().supplySharePercent()));
    }
}
