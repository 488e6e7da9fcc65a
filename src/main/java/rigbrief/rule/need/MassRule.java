package rigbrief.rule.need;

import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Fact;
import rigbrief.part.Slot;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The machine's parts together weigh at most what the brief allows.
 *
 * <p>Sums stated masses in whole grams, equality allowed; the display and the licence stay out. A
 * mass that is not stated is a caution, unless the others are too heavy already.
 */
public final class MassRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "mass", "Machine is light enough", Unit.GRAM, Source.brief("size, at most kg"));
    private static final Set<Slot> READS = Reads.ALL;

    private static final Slot[] SLOTS = Slot.values();

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public boolean decidesEarly() {
        return true;
    }

    @Override
    public Finding check(Assessment it) {
        Optional<Mass> allowed = it.brief().size().mass();
        if (allowed.isEmpty()) {
            return Finding.MET;
        }
        long most = allowed.get().grams();
        long sum = 0;
        Fact<Mass> empty = null;
        for (Slot slot : SLOTS) {
            if (slot != Slot.DISPLAY && slot != Slot.SYSTEM && it.build().has(slot)) {
                Fact<Mass> mass = it.build().part(slot).listing().mass();
                sum += (long) mass.or(Mass.g(0)).grams() * it.build().pieces(slot);
                empty = mass.stated() ? empty : mass;
            }
        }
        return judged(sum, most, empty);
    }

    private static Finding judged(long sum, long most, Fact<Mass> empty) {
        if (sum <= most && empty != null) {
            return Finding.unknown(empty);
        }
        return Finding.atMost(sum, most, Unit.GRAM, () -> Phrase.of("finding.mass", sum, most));
    }
}
