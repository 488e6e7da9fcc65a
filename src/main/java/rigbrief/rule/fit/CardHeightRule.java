package rigbrief.rule.fit;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Graphics;
import rigbrief.part.Part;
import rigbrief.part.PcCase;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/** The graphics card is no taller than the case allows; whole millimetres, equality allowed. */
public final class CardHeightRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "card-height",
                    "Graphics card is low enough for the case",
                    Unit.MILLIMETRE,
                    Source.makersSheet("case, tallest graphics card"));
    private static final Set<Slot> READS = Reads.of(Slot.GRAPHICS, Slot.CASE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public Object asks(Slot slot, Part part) {
        return slot == Slot.GRAPHICS
                ? ((Graphics) part).height()
                : ((PcCase) part).graphicsHeight();
    }

    @Override
    public Finding check(Assessment it) {
        Build build = it.build();
        if (!build.has(Slot.GRAPHICS)) {
            return Finding.MET;
        }
        return Finding.atMost(
                build.graphics().height(),
                build.pcCase().graphicsHeight(),
                () ->
                        Phrase.of(
                                "finding.card-height",
                                build.graphics().height().or(Length.mm(0)),
                                build.pcCase().graphicsHeight().or(Length.mm(0))));
    }
}
