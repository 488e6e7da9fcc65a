package rigbrief.rule.need;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Drive;
import rigbrief.part.Part;
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
 * No second drive where the first alone holds what the brief plans for.
 *
 * <p>The client's own drive passes.
 */
public final class IdleDriveRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "idle-drive",
                    "A second drive is bought only where one drive is not enough",
                    Unit.PIECE,
                    Source.commonPractice("a second drive pays when one is not enough"));
    private static final Set<Slot> READS = Reads.of(Slot.DRIVE, Slot.SECOND_DRIVE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** A builder may have a reason; the search never has one. */
    @Override
    public boolean forbids(Finding finding) {
        return !(finding instanceof Finding.Met);
    }

    @Override
    public Object asks(Slot slot, Part part) {
        return slot == Slot.DRIVE ? ((Drive) part).capacityGb() : NOTHING;
    }

    @Override
    public Finding check(Assessment it) {
        boolean idle =
                it.build().has(Slot.SECOND_DRIVE)
                        && !Owned.in(it, Slot.SECOND_DRIVE)
                        && ((Drive) it.build().part(Slot.DRIVE)).capacityGb()
                                >= WholeGb.of(it.demand().storageGb());
        return idle
                ? Finding.caution(
                        () ->
                                Phrase.of(
                                        "finding.idle-drive",
                                        it.build().part(Slot.SECOND_DRIVE).name()))
                : Finding.MET;
    }
}
