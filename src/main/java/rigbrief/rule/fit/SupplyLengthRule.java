package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Fact;
import rigbrief.part.PcCase;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The supply is no longer than its room, which a drive cage in use makes shorter.
 *
 * <p>Whole millimetres, equality allowed.
 */
public final class SupplyLengthRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "supply-length",
                    "Supply is short enough for the case",
                    Unit.MILLIMETRE,
                    Source.makersSheet("case, longest supply with and without the drive cage"));
    private static final Set<Slot> READS =
            Reads.of(Slot.BOARD, Slot.DRIVE, Slot.SECOND_DRIVE, Slot.SUPPLY, Slot.CASE);

    private static final Set<Slot> WORSENED_BY = Reads.of(Slot.DRIVE, Slot.SECOND_DRIVE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** A drive in the cage only takes room. */
    @Override
    public Set<Slot> onlyWorsenedBy() {
        return WORSENED_BY;
    }

    @Override
    public Finding check(Assessment it) {
        PcCase pcCase = it.build().pcCase();
        Finding bare = judged(it, pcCase.supplyLength(), "finding.supply-length");
        if (!it.layout().cageInUse()
                || bare instanceof Finding.Breach && !pcCase.supplyLengthWithCage().stated()) {
            return bare;
        }
        return judged(it, pcCase.supplyLengthWithCage(), "finding.supply-length.cage");
    }

    private static Finding judged(Assessment it, Fact<Length> room, String key) {
        Fact<Length> length = it.build().supply().length();
        return Finding.atMost(
                length, room, () -> Phrase.of(key, length.or(Length.mm(0)), room.or(Length.mm(0))));
    }
}
