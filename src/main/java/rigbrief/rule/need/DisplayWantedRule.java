package rigbrief.rule.need;

import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Screen;
import rigbrief.part.Display;
import rigbrief.part.Resolution;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Owned;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * As many displays are on the order as the brief buys, each at least as good as it says; none when
 * it buys none.
 *
 * <p>The excess counts what lacks: the display or the right number, its size, refresh rate, depth,
 * the named part. A display the client keeps is no purchase.
 */
public final class DisplayWantedRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "display-wanted",
                    "Displays on the order are those asked for",
                    Unit.CONDITION,
                    Source.brief("display"));
    private static final Set<Slot> READS = Reads.of(Slot.DISPLAY);

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
        Optional<Screen> screen = it.brief().screen();
        if (screen.isPresent() && screen.get().buy()) {
            return bought(it, screen.get());
        }
        return Finding.require(
                !it.build().has(Slot.DISPLAY) || Owned.in(it, Slot.DISPLAY),
                () -> Phrase.of("finding.display-wanted.none"));
    }

    private static Finding bought(Assessment it, Screen screen) {
        if (!it.build().has(Slot.DISPLAY)) {
            return Finding.breach(
                    1, () -> Phrase.of("finding.display-wanted.lacks", screen.count()));
        }
        Display display = it.build().display();
        int lacking = it.build().pieces(Slot.DISPLAY) == screen.count() ? 0 : 1;
        lacking += smaller(display.resolution(), screen.resolution()) ? 1 : 0;
        lacking += display.refreshHz() < screen.refreshHz() ? 1 : 0;
        lacking += display.bitsPerColour() < screen.bitsPerColour() ? 1 : 0;
        lacking += screen.part().isEmpty() || screen.part().get().equals(display.id()) ? 0 : 1;
        return Finding.unlessZero(lacking, () -> words(it, screen));
    }

    private static boolean smaller(Resolution has, Resolution wanted) {
        return has.widthPx() < wanted.widthPx() || has.heightPx() < wanted.heightPx();
    }

    private static Phrase words(Assessment it, Screen screen) {
        Display display = it.build().display();
        return Phrase.of(
                "finding.display-wanted",
                it.build().pieces(Slot.DISPLAY),
                display.id(),
                display.resolution(),
                display.refreshHz(),
                display.bitsPerColour(),
                screen.count(),
                screen.part().map(Phrase::data).orElse(Phrase.of("finding.display-wanted.any")),
                screen.resolution(),
                screen.refreshHz(),
                screen.bitsPerColour());
    }
}
