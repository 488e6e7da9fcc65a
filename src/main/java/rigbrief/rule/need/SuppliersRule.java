package rigbrief.rule.need;

import java.util.OptionalInt;
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

/** The order goes to no more suppliers than the brief allows. */
public final class SuppliersRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "suppliers",
                    "Order goes to few enough suppliers",
                    Unit.PIECE,
                    Source.brief("buying, at most suppliers"));
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
        OptionalInt allowed = it.brief().buying().atMostSuppliers();
        if (allowed.isEmpty()) {
            return Finding.MET;
        }
        int used = it.cost().suppliers();
        return Finding.atMost(
                used,
                allowed.getAsInt(),
                Unit.PIECE,
                () -> Phrase.of("finding.suppliers", used, allowed.getAsInt()));
    }
}
