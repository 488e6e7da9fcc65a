package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.model.power.DesignGuide;
import rigbrief.model.power.SupplyExcursion;
import rigbrief.part.Guide;
import rigbrief.part.Plug;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.part.Tally;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The supply stands the peak that a graphics card makes for about a millisecond.
 *
 * <p>A supply of a guide without an excursion table is given no more than its rating. Loads are
 * rounded up to whole watts, allowances down.
 */
public final class SupplyPeakRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "supply-peak",
                    "Supply stands the card's short peaks",
                    Unit.WATT,
                    Source.standard(
                            "ATX Version 3 power supply design guide",
                            "document 336521, revision 2.1a",
                            "table 3-3"));
    private static final Set<Slot> READS = Reads.ELECTRICAL;

    private static final double PEAK_MS = 1;

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

    @Override
    public Finding check(Assessment it) {
        Supply supply = it.build().supply();
        long peakW = WholeWatts.load(it.peakW());
        boolean stated = supply.plugs().stated();
        boolean plug = supply.plugs().or(Tally.none()).of(Plug.PCIE16) > 0;
        long allowedW = allowedW(supply, plug);
        if (!stated && peakW > allowedW && peakW <= allowedW(supply, true)) {
            return Finding.unknown(supply.plugs());
        }
        return Finding.atMost(
                peakW,
                allowedW,
                Unit.WATT,
                () ->
                        Phrase.of(
                                "finding.supply-peak",
                                peakW,
                                supply.watts(),
                                Phrase.of("standard." + supply.guide().word()),
                                allowedW));
    }

    /**
     * Whether a supply may be drawn to a peak of 1 ms, by its plugs or, unstated, by the best they
     * could be.
     */
    public static boolean allows(Supply supply, double peakW) {
        boolean plug =
                !supply.plugs().stated() || supply.plugs().or(Tally.none()).of(Plug.PCIE16) > 0;
        return WholeWatts.load(peakW) <= allowedW(supply, plug);
    }

    private static long allowedW(Supply supply, boolean plug) {
        return WholeWatts.given(supply.watts() * factor(supply, plug));
    }

    /**
     * What a supply's guide allows for 1 ms, as a multiple of the rating.
     *
     * @param plug whether it has the 16-contact connector
     */
    public static double factor(Supply supply, boolean plug) {
        DesignGuide guide = guide(supply.guide());
        return SupplyExcursion.allowedW(guide, supply.watts(), plug, PEAK_MS) / supply.watts();
    }

    private static DesignGuide guide(Guide guide) {
        return switch (guide) {
            case ATX2 -> DesignGuide.ATX2;
            case ATX3_0 -> DesignGuide.ATX3_0;
            case ATX3_1 -> DesignGuide.ATX3_1;
        };
    }
}
