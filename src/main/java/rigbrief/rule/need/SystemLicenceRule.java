package rigbrief.rule.need;

import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.Brief.SystemNeed;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * An operating-system licence is on the order when the brief must have one, the named one where it
 * names one; an unmet wish is a caution.
 */
public final class SystemLicenceRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "system-licence",
                    "Operating-system licence is there where wanted",
                    Unit.CONDITION,
                    Source.brief("system"));
    private static final Set<Slot> READS = Reads.of(Slot.SYSTEM);

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
        SystemNeed need = it.brief().system();
        if (need.strength() == Strength.NONE || satisfied(it)) {
            return Finding.MET;
        }
        return need.strength() == Strength.MUST
                ? Finding.breach(1, () -> words(it))
                : Finding.caution(() -> Phrase.of("finding.wished", words(it)));
    }

    private static boolean satisfied(Assessment it) {
        Optional<String> named = it.brief().system().part();
        return it.build().has(Slot.SYSTEM)
                && (named.isEmpty() || named.get().equals(it.build().system().id()));
    }

    private static Phrase words(Assessment it) {
        return Phrase.of(
                "finding.system-licence",
                it.brief()
                        .system()
                        .part()
                        .map(Phrase::data)
                        .orElse(Phrase.of("finding.system-licence.any")));
    }
}
