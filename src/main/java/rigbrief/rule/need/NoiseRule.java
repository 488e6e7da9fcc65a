package rigbrief.rule.need;

import java.util.Locale;
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
import rigbrief.rule.fit.CoolerHeatRule;

/**
 * The level at the seat under the heaviest workload is at most what the brief allows.
 *
 * <p>Hundredths of a dB(A), rounded half up once, equality allowed. A build without a cooler is
 * told by {@code complete}.
 */
public final class NoiseRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "noise",
                    "Machine is quiet enough at the seat",
                    Unit.CENTIDECIBEL,
                    Source.brief("noise, must and distance"));
    private static final Set<Slot> READS = Reads.ELECTRICAL;

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
        OptionalInt must = it.brief().noise().mustDba();
        if (must.isEmpty() || !CoolerHeatRule.cooled(it.build())) {
            return Finding.MET;
        }
        long level = Math.round(it.load().levelDba() * 100);
        long allowed = must.getAsInt() * 100L;
        return Finding.atMost(
                level,
                allowed,
                Unit.CENTIDECIBEL,
                () ->
                        String.format(
                                Locale.ROOT,
                                "%s at %.1f m under the heaviest workload, %s allowed",
                                Unit.CENTIDECIBEL.print(level),
                                it.brief().noise().seatDistanceM(),
                                Unit.CENTIDECIBEL.print(allowed)));
    }
}
