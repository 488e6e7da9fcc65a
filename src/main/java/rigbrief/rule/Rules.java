package rigbrief.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.rule.fit.BoardPowerRule;
import rigbrief.rule.fit.BoardSizeRule;
import rigbrief.rule.fit.BraceRule;
import rigbrief.rule.fit.CardHeightRule;
import rigbrief.rule.fit.CardLengthRule;
import rigbrief.rule.fit.CardSlotsRule;
import rigbrief.rule.fit.CompleteRule;
import rigbrief.rule.fit.CoolerHeatRule;
import rigbrief.rule.fit.CoolerHeightRule;
import rigbrief.rule.fit.CoolerSocketRule;
import rigbrief.rule.fit.DisplayLinkRule;
import rigbrief.rule.fit.DrivePlaceRule;
import rigbrief.rule.fit.DriveSharesRule;
import rigbrief.rule.fit.FamilyRule;
import rigbrief.rule.fit.FanHeadersRule;
import rigbrief.rule.fit.FanPlaceRule;
import rigbrief.rule.fit.FrontPortsRule;
import rigbrief.rule.fit.MemoryRateRule;
import rigbrief.rule.fit.MemorySlotsRule;
import rigbrief.rule.fit.MemoryTypeRule;
import rigbrief.rule.fit.MemoryUnderCoolerRule;
import rigbrief.rule.fit.PictureRule;
import rigbrief.rule.fit.RadiatorPlaceRule;
import rigbrief.rule.fit.SlotPlaceRule;
import rigbrief.rule.fit.SocketRule;
import rigbrief.rule.fit.SupplyConnectorsRule;
import rigbrief.rule.fit.SupplyFormRule;
import rigbrief.rule.fit.SupplyLengthRule;
import rigbrief.rule.fit.SupplyLoadRule;
import rigbrief.rule.fit.SupplyPeakRule;
import rigbrief.rule.fit.SupplyQualityRule;
import rigbrief.rule.fit.SystemRule;
import rigbrief.rule.need.AvoidRule;
import rigbrief.rule.need.CeilingRule;
import rigbrief.rule.need.ColourRule;
import rigbrief.rule.need.DisplayWantedRule;
import rigbrief.rule.need.GraphicsMemoryRule;
import rigbrief.rule.need.IdleBraceRule;
import rigbrief.rule.need.IdleDriveRule;
import rigbrief.rule.need.IdleLicenceRule;
import rigbrief.rule.need.IdleWirelessRule;
import rigbrief.rule.need.InStockRule;
import rigbrief.rule.need.KeptRule;
import rigbrief.rule.need.LightingRule;
import rigbrief.rule.need.MassRule;
import rigbrief.rule.need.MemoryEccRule;
import rigbrief.rule.need.MemoryEnoughRule;
import rigbrief.rule.need.NoiseRule;
import rigbrief.rule.need.PromiseRule;
import rigbrief.rule.need.SideRule;
import rigbrief.rule.need.SizeRule;
import rigbrief.rule.need.StorageEnoughRule;
import rigbrief.rule.need.SuppliersRule;
import rigbrief.rule.need.SystemLicenceRule;
import rigbrief.rule.need.WirelessRule;

/** The rules, one line each: what fits together first, then what the brief needs. */
public final class Rules {
    /** All rules, in the order in which they are shown. */
    public static final List<Rule> ALL =
            List.of(
                    new CompleteRule(),
                    new SocketRule(),
                    new FamilyRule(),
                    new BoardSizeRule(),
                    new MemoryTypeRule(),
                    new MemorySlotsRule(),
                    new MemoryRateRule(),
                    new CardLengthRule(),
                    new CardHeightRule(),
                    new CardSlotsRule(),
                    new CoolerHeightRule(),
                    new CoolerSocketRule(),
                    new CoolerHeatRule(),
                    new MemoryUnderCoolerRule(),
                    new RadiatorPlaceRule(),
                    new SupplyFormRule(),
                    new SupplyLengthRule(),
                    new SupplyLoadRule(),
                    new SupplyPeakRule(),
                    new SupplyConnectorsRule(),
                    new BoardPowerRule(),
                    new DrivePlaceRule(),
                    new DriveSharesRule(),
                    new SlotPlaceRule(),
                    new FanPlaceRule(),
                    new FanHeadersRule(),
                    new FrontPortsRule(),
                    new PictureRule(),
                    new DisplayLinkRule(),
                    new SystemRule(),
                    new BraceRule(),
                    new SupplyQualityRule(),
                    new CeilingRule(),
                    new PromiseRule(),
                    new GraphicsMemoryRule(),
                    new MemoryEnoughRule(),
                    new MemoryEccRule(),
                    new StorageEnoughRule(),
                    new LightingRule(),
                    new ColourRule(),
                    new SideRule(),
                    new NoiseRule(),
                    new SizeRule(),
                    new MassRule(),
                    new WirelessRule(),
                    new AvoidRule(),
                    new InStockRule(),
                    new SuppliersRule(),
                    new KeptRule(),
                    new SystemLicenceRule(),
                    new DisplayWantedRule(),
                    new IdleWirelessRule(),
                    new IdleBraceRule(),
                    new IdleLicenceRule(),
                    new IdleDriveRule());

    /**
     * All rules but those that forbid the search what has no use. What a must asks for has none
     * once nobody asks, so only by these rules is every build under a brief one under a looser
     * brief.
     */
    public static final List<Rule> ALL_BUT_IDLE =
            ALL.stream().filter(rule -> !aboutIdleParts(rule)).toList();

    private static final Map<String, Rule> BY_ID = byIds();

    private Rules() {}

    /** The rule of an id. */
    public static Optional<Rule> byId(String id) {
        return Optional.ofNullable(BY_ID.get(id));
    }

    private static boolean aboutIdleParts(Rule rule) {
        return rule instanceof IdleWirelessRule
                || rule instanceof IdleBraceRule
                || rule instanceof IdleLicenceRule
                || rule instanceof IdleDriveRule;
    }

    private static Map<String, Rule> byIds() {
        Map<String, Rule> rules = new LinkedHashMap<>();
        for (Rule rule : ALL) {
            rules.put(rule.info().id(), rule);
        }
        return rules;
    }
}
