package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Fact;
import rigbrief.part.Graphics;
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

/**
 * The supply has a plug of its own for every socket of board, card, drives and fans.
 *
 * <p>The excess counts the plugs that lack. A shortage among the stated counts is a breach even
 * while another cell is empty.
 */
public final class SupplyConnectorsRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "supply-connectors",
                    "Supply has a plug for every socket",
                    Unit.PIECE,
                    Source.commonPractice(
                            "one cable per socket, no splitters: each plug carries the power of one socket"));
    private static final Set<Slot> READS =
            Reads.of(
                    Slot.BOARD,
                    Slot.GRAPHICS,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.SUPPLY,
                    Slot.FANS);

    private static final Set<Slot> WORSENED_BY = Reads.of(Slot.DRIVE, Slot.SECOND_DRIVE, Slot.FANS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** Drives and fans only want more plugs. */
    @Override
    public Set<Slot> onlyWorsenedBy() {
        return WORSENED_BY;
    }

    @Override
    public Finding check(Assessment it) {
        Build build = it.build();
        if (!(build.supply().plugs() instanceof Fact.Stated<Tally<Plug>> stated)) {
            return Finding.unknown(build.supply().plugs());
        }
        PlugNeeds lacking = PlugNeeds.of(build, stated.value());
        if (lacking.sum() > 0) {
            return Finding.breach(lacking.sum(), lacking::words);
        }
        if (!build.board().processorPlugs().stated()) {
            return Finding.unknown(build.board().processorPlugs());
        }
        return build.has(Slot.GRAPHICS) && !build.graphics().plugs().stated()
                ? Finding.unknown(build.graphics().plugs())
                : Finding.MET;
    }

    /** Whether a supply has the plugs a card alone needs; unstated plugs pass. */
    public static boolean feeds(Supply supply, Graphics card) {
        return !(supply.plugs() instanceof Fact.Stated<Tally<Plug>> stated)
                || PlugNeeds.cardLacks(card, stated.value()) == 0;
    }
}
