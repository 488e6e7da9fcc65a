package rigbrief.rule.need;

import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/** The side panel is the one asked for. */
public final class SideRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "side",
                    "Side panel is the one asked for",
                    Unit.CONDITION,
                    Source.brief("looks, side"));
    private static final Set<Slot> READS = Reads.of(Slot.CASE);

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
        Optional<SidePanel> wanted = it.brief().looks().side();
        SidePanel side = it.build().pcCase().side();
        return Finding.require(
                wanted.isEmpty() || wanted.get() == side,
                () ->
                        Phrase.of(
                                "finding.side",
                                Phrase.of("side-panel." + side.word()),
                                Phrase.of("side-panel." + wanted.orElseThrow().word())));
    }
}
