package rigbrief.rule.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Kept;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Owned;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/** Every part the client keeps is in its slot; the excess counts those that aren't. */
public final class KeptRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo("kept", "Client's own parts are used", Unit.PIECE, Source.brief("keep"));
    private static final Set<Slot> READS = Reads.ALL;

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
        List<Kept> keep = it.brief().keep();
        int left = 0;
        for (int i = 0; i < keep.size(); i++) {
            left += Owned.fills(it, keep.get(i)) ? 0 : 1;
        }
        return Finding.unlessZero(left, () -> words(it));
    }

    private static Phrase words(Assessment it) {
        List<Object> words = new ArrayList<>();
        for (Kept kept : it.brief().keep()) {
            if (!Owned.fills(it, kept)) {
                words.add(kept.part().name());
            }
        }
        return Phrase.of("finding.kept", Phrase.joined(", ", words));
    }
}
