package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/** Every added fan has a place in the case; a side taken by the radiator has none. */
public final class FanPlaceRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "fan-place",
                    "Every fan has a place",
                    Unit.PIECE,
                    Source.makersSheet("case, fan positions"));
    private static final Set<Slot> READS = Reads.of(Slot.BOARD, Slot.COOLER, Slot.CASE, Slot.FANS);

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
        if (!it.build().has(Slot.FANS)) {
            return Finding.MET;
        }
        int unplaced = it.layout().unplacedFans();
        return Finding.unlessZero(
                unplaced,
                () ->
                        Phrase.of(
                                "finding.fan-place",
                                unplaced,
                                it.build().fanCount(),
                                it.build().fan().sizeMm(),
                                it.build().pcCase().name()));
    }
}
