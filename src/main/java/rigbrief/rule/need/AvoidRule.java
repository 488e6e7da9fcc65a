package rigbrief.rule.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief.Avoid;
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
 * No bought part is one to avoid, or from a maker to avoid; upper and lower case are one.
 *
 * <p>The client's own parts pass. The excess counts parts.
 */
public final class AvoidRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "avoid",
                    "Nothing is bought that is to be avoided",
                    Unit.PIECE,
                    Source.brief("avoid"));
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
        Avoid avoid = it.brief().avoid();
        if (avoid.makers().isEmpty() && avoid.parts().isEmpty()) {
            return Finding.MET;
        }
        int count = 0;
        for (Slot slot : SLOTS) {
            count += avoided(it, slot) ? 1 : 0;
        }
        return Finding.unlessZero(count, () -> words(it));
    }

    private static boolean avoided(Assessment it, Slot slot) {
        if (!it.build().has(slot) || Owned.in(it, slot)) {
            return false;
        }
        Part part = it.build().part(slot);
        List<String> makers = it.brief().avoid().makers();
        for (int i = 0; i < makers.size(); i++) {
            if (makers.get(i).equalsIgnoreCase(part.listing().maker())) {
                return true;
            }
        }
        return it.brief().avoid().parts().contains(part.id());
    }

    private static Phrase words(Assessment it) {
        List<Object> words = new ArrayList<>();
        for (Slot slot : SLOTS) {
            if (avoided(it, slot)) {
                words.add(it.build().part(slot).name());
            }
        }
        return Phrase.of("finding.avoid", Phrase.joined(", ", words));
    }
}
