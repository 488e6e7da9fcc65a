package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Fact;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * An air cooler is no taller than the clearance the case maker states, a fan raised over tall
 * memory counted in.
 *
 * <p>Whole millimetres, equality allowed. No tolerance is added: the stated figure already is the
 * limit.
 */
public final class CoolerHeightRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "cooler-height",
                    "Cooler fits under the side panel",
                    Unit.MILLIMETRE,
                    Source.makersSheet("case, tallest processor cooler"));
    private static final Set<Slot> READS = Reads.of(Slot.MEMORY, Slot.COOLER, Slot.CASE);

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
        if (!FanRaise.airCooler(build)) {
            return Finding.MET;
        }
        int raisedMm = FanRaise.raisedMm(build);
        Fact<Length> cooler = build.cooler().height();
        Fact<Length> height = raisedMm == 0 ? cooler : cooler.map(l -> l.plus(Length.mm(raisedMm)));
        return Finding.atMost(
                height, build.pcCase().coolerHeight(), () -> words(build, height, raisedMm));
    }

    private static Phrase words(Build build, Fact<Length> height, int raisedMm) {
        return Phrase.of(
                raisedMm == 0 ? "finding.cooler-height" : "finding.cooler-height.raised",
                height.or(Length.mm(0)),
                build.pcCase().coolerHeight().or(Length.mm(0)));
    }
}
