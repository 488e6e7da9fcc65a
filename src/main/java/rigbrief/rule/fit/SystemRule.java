package rigbrief.rule.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * Board or processor brings every firmware feature that the operating system requires; the excess
 * counts those that lack.
 */
public final class SystemRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "system",
                    "Operating system runs on this firmware",
                    Unit.PIECE,
                    Source.makersSheet(
                            "operating system, firmware required; board and processor, firmware features"));
    private static final Set<Slot> READS = Reads.of(Slot.PROCESSOR, Slot.BOARD, Slot.SYSTEM);

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
        if (!it.build().has(Slot.SYSTEM)) {
            return Finding.MET;
        }
        List<String> requires = it.build().system().requires();
        int lacking = 0;
        for (int i = 0; i < requires.size(); i++) {
            lacking += brings(it.build(), requires.get(i)) ? 0 : 1;
        }
        return Finding.unlessZero(lacking, () -> words(it.build()));
    }

    private static boolean brings(Build build, String feature) {
        return build.board().features().contains(feature)
                || build.processor().features().contains(feature);
    }

    private static Phrase words(Build build) {
        List<String> lacking = new ArrayList<>();
        for (String feature : build.system().requires()) {
            if (!brings(build, feature)) {
                lacking.add(feature);
            }
        }
        return Phrase.of("finding.system", build.system().name(), Phrase.joined(", ", lacking));
    }
}
