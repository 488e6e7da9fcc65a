package rigbrief.rule.need;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Drive;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * Both drives together hold what is installed with its growth and 15 % free, and at least what the
 * brief asks; whole GB, the demand rounded up, equality allowed.
 */
public final class StorageEnoughRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "storage-enough",
                    "Storage is enough",
                    Unit.GB,
                    Source.brief("storage at least, room for, years"));
    private static final Set<Slot> READS = Reads.of(Slot.DRIVE, Slot.SECOND_DRIVE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public Object asks(Slot slot, Part part) {
        return ((Drive) part).capacityGb();
    }

    @Override
    public Finding check(Assessment it) {
        long need = WholeGb.of(it.demand().storageGb());
        int have = gb(it.build(), Slot.DRIVE) + gb(it.build(), Slot.SECOND_DRIVE);
        return Finding.atMost(
                need, have, Unit.GB, () -> Phrase.of("finding.storage-enough", need, have));
    }

    private static int gb(Build build, Slot slot) {
        return build.has(slot) ? ((Drive) build.part(slot)).capacityGb() * build.pieces(slot) : 0;
    }
}
