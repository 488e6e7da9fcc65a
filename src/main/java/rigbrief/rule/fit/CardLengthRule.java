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
 * The graphics card is no longer than the case's room, less a front radiator with its fans.
 *
 * <p>Whole millimetres, equality allowed. No tolerance is added: the stated figure already is the
 * limit.
 */
public final class CardLengthRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "card-length",
                    "Graphics card is short enough for the case",
                    Unit.MILLIMETRE,
                    Source.makersSheet("case, longest graphics card"));
    private static final Set<Slot> READS =
            Reads.of(Slot.BOARD, Slot.GRAPHICS, Slot.COOLER, Slot.CASE);

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
        if (!build.has(Slot.GRAPHICS)) {
            return Finding.MET;
        }
        int takenMm = it.layout().cardLengthTakenMm();
        Fact<Length> whole = build.pcCase().graphicsLength();
        Fact<Length> room =
                takenMm == 0
                        ? whole
                        : whole.map(l -> Length.mm(Math.max(0, l.millimetres() - takenMm)));
        return Finding.atMost(build.graphics().length(), room, () -> words(build, takenMm));
    }

    private static Phrase words(Build build, int takenMm) {
        Length length = build.graphics().length().or(Length.mm(0));
        Length room = build.pcCase().graphicsLength().or(Length.mm(0));
        return takenMm == 0
                ? Phrase.of("finding.card-length", length, room)
                : Phrase.of("finding.card-length.radiator", length, room, takenMm);
    }
}
