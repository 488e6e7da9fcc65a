package rigbrief.rule.fit;

import java.util.ArrayList;
import java.util.EnumSet;
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
 * Every required slot is filled and the processor has a cooler, bought or boxed.
 *
 * <p>Asked of every build, however unfinished; the excess counts what is missing.
 */
public final class CompleteRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "complete",
                    "Nothing a machine needs is missing",
                    Unit.PIECE,
                    Source.commonPractice("no machine starts without these parts"));
    private static final Set<Slot> READS = Reads.NOTHING;

    private static final Slot[] REQUIRED =
            EnumSet.allOf(Slot.class).stream().filter(Slot::required).toArray(Slot[]::new);

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
        Build build = it.build();
        int missing = hot(build) ? 1 : 0;
        for (int i = 0; i < REQUIRED.length; i++) {
            missing += build.has(REQUIRED[i]) ? 0 : 1;
        }
        return Finding.unlessZero(missing, () -> words(build));
    }

    private static boolean hot(Build build) {
        return build.has(Slot.PROCESSOR) && !CoolerHeatRule.cooled(build);
    }

    private static Phrase words(Build build) {
        List<Phrase> names = new ArrayList<>();
        for (Slot slot : build.missing()) {
            names.add(Phrase.of("slot.name." + slot.word()));
        }
        if (hot(build)) {
            names.add(Phrase.of("finding.complete.cooler"));
        }
        return Phrase.of("finding.complete", Phrase.joined(", ", names));
    }
}
