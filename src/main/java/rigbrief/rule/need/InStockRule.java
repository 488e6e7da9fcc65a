package rigbrief.rule.need;

import java.util.ArrayList;
import java.util.List;
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

/**
 * Every bought part is on offer from an allowed supplier, in the number wanted, within the lead
 * time; the excess counts parts that aren't.
 */
public final class InStockRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "in-stock",
                    "Every part can be had in the number wanted",
                    Unit.PIECE,
                    Source.brief("buying; quantity"));
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
    public boolean decidesEarly() {
        return true;
    }

    @Override
    public Finding check(Assessment it) {
        List<Slot> unavailable = it.cost().unavailable();
        return Finding.unlessZero(unavailable.size(), () -> words(it, unavailable));
    }

    private static Phrase words(Assessment it, List<Slot> unavailable) {
        List<Object> words = new ArrayList<>();
        for (Slot slot : unavailable) {
            words.add(
                    Phrase.of(
                            "finding.pieces",
                            it.build().pieces(slot) * it.brief().quantity(),
                            it.build().part(slot).name()));
        }
        return Phrase.of("finding.in-stock", Phrase.joined(", ", words));
    }
}
