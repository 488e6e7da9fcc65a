package rigbrief.rule.fit;

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

/**
 * A picture comes out, on as many outputs as there are screens.
 *
 * <p>The outputs are the card's; without a card the board's, where the processor has graphics.
 */
public final class PictureRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "picture",
                    "There is an output for every screen",
                    Unit.PIECE,
                    Source.makersSheet(
                            "card and board, screen outputs; processor, integrated graphics"));
    private static final Set<Slot> READS =
            Reads.of(Slot.PROCESSOR, Slot.BOARD, Slot.GRAPHICS, Slot.DISPLAY);

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
        int outputs = ScreenOutputs.count(ScreenOutputs.of(it.build()));
        int screens = ScreenOutputs.screens(it);
        return Finding.atMost(
                screens,
                outputs,
                Unit.PIECE,
                () ->
                        outputs == 0
                                ? Phrase.of("finding.picture.none")
                                : Phrase.of("finding.picture", screens, outputs));
    }
}
