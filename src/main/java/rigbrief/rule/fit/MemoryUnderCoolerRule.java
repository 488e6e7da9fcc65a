package rigbrief.rule.fit;

import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Cooler;
import rigbrief.part.Fact;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Margin;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * The modules stand under the air cooler, or its front fan can be raised over them and still fits
 * the case.
 *
 * <p>A raised fan is a caution. The excess is what neither the cooler's raise nor the room under
 * the side panel makes good, in whole millimetres.
 */
public final class MemoryUnderCoolerRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "memory-under-cooler",
                    "Memory stands under the cooler",
                    Unit.MILLIMETRE,
                    Source.makersSheet("cooler, room for memory and fan raise"));
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
        Cooler cooler = build.cooler();
        int overMm = FanRaise.overMm(build);
        if (overMm == 0) {
            return Finding.atMost(
                    build.memory().height(), cooler.memoryClearance(), () -> Phrase.NONE);
        }
        return overMm > cooler.fanRaiseMm()
                ? tooTall(build, overMm, cooler.fanRaiseMm())
                : raised(build, overMm);
    }

    private static Finding raised(Build build, int overMm) {
        Fact<Length> cooler = build.cooler().height();
        Fact<Length> room = build.pcCase().coolerHeight();
        if (!cooler.stated() || !room.stated()) {
            return Finding.unknown(cooler.stated() ? room : cooler);
        }
        int spareMm = room.or(Length.mm(0)).millimetres() - cooler.or(Length.mm(0)).millimetres();
        if (overMm > spareMm) {
            return tooTall(build, overMm, Math.max(0, spareMm));
        }
        return new Finding.Caution(
                () -> Phrase.of("finding.memory-under-cooler.raise", overMm),
                margin(build, Math.min(spareMm, build.cooler().fanRaiseMm())));
    }

    private static Finding tooTall(Build build, int overMm, int raiseMm) {
        return new Finding.Breach(
                overMm - raiseMm,
                () ->
                        Phrase.of(
                                "finding.memory-under-cooler",
                                build.memory().height().or(Length.mm(0)),
                                build.cooler().memoryClearance().or(Length.mm(0)),
                                raiseMm),
                margin(build, raiseMm));
    }

    private static Optional<Margin> margin(Build build, int raiseMm) {
        int roomMm = build.cooler().memoryClearance().or(Length.mm(0)).millimetres();
        int heightMm = build.memory().height().or(Length.mm(0)).millimetres();
        return Optional.of(new Margin(roomMm + raiseMm, heightMm, Unit.MILLIMETRE));
    }
}
