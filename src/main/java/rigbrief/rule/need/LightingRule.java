package rigbrief.rule.need;

import java.util.Set;
import java.util.StringJoiner;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.build.Build;
import rigbrief.part.Lighting;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * No part is lit that the brief wants unlit.
 *
 * <p>Counts parts whose light is fixed, when the brief wants no light or one that can be switched.
 * A light that can be switched off satisfies "no lights"; a note says to do it.
 */
public final class LightingRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "lighting",
                    "Nothing is lit that should be dark",
                    Unit.PIECE,
                    Source.brief("looks, lighting"));
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
        LightingNeed need = it.brief().looks().lighting();
        if (need == LightingNeed.ANY) {
            return Finding.MET;
        }
        int fixed = count(it.build(), Lighting.FIXED);
        if (fixed > 0) {
            return Finding.breach(
                    fixed,
                    () -> Phrase.of("finding.lighting.fixed", names(it.build(), Lighting.FIXED)));
        }
        return need == LightingNeed.NONE && count(it.build(), Lighting.SWITCHABLE) > 0
                ? Finding.note(
                        () ->
                                Phrase.of(
                                        "finding.lighting.off",
                                        names(it.build(), Lighting.SWITCHABLE)))
                : Finding.MET;
    }

    private static int count(Build build, Lighting lighting) {
        int count = 0;
        for (Slot slot : SLOTS) {
            count += lit(build, slot, lighting) ? 1 : 0;
        }
        return count;
    }

    private static boolean lit(Build build, Slot slot, Lighting lighting) {
        return build.has(slot) && build.part(slot).listing().lighting() == lighting;
    }

    private static String names(Build build, Lighting lighting) {
        StringJoiner names = new StringJoiner(", ");
        for (Slot slot : SLOTS) {
            if (lit(build, slot, lighting)) {
                names.add(build.part(slot).name());
            }
        }
        return names.toString();
    }
}
