package rigbrief.rule.fit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Screen;
import rigbrief.model.link.LinkResult;
import rigbrief.model.link.LinkStandard;
import rigbrief.part.Display;
import rigbrief.part.Port;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Margin;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * An output and an input of the screen carry the picture size, refresh rate and depth together, for
 * every screen.
 *
 * <p>The screen is the one on the order (its own size, at most the brief's refresh rate), else the
 * brief's. The excess is what the link of the last screen lacks, in Mbit/s. Compression is a note;
 * a call within 1 % on a link that packs its blanking is a caution either way, because only a mode
 * the makers declare settles it.
 */
public final class DisplayLinkRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "display-link",
                    "Link carries the picture at its refresh rate",
                    Unit.MEGABIT,
                    Source.standard(
                            "VESA CVT, DisplayPort, HDMI",
                            "CVT 1.2, DisplayPort 1.4 and 2.1, HDMI 2.1",
                            "timings and payload rates"));
    private static final Set<Slot> READS =
            Reads.of(Slot.PROCESSOR, Slot.BOARD, Slot.GRAPHICS, Slot.DISPLAY);

    private static final int LEAST_BITS_PER_COLOUR = 8;
    private static final long MEGA = 1_000_000;
    private final LinkBook book = new LinkBook();

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
        List<Port> outputs = ScreenOutputs.of(it.build());
        if (outputs.isEmpty() || !screenKnown(it)) {
            return Finding.MET;
        }
        List<Port> inputs = inputs(it);
        if (inputs.isEmpty()) {
            return Finding.caution(() -> Phrase.of("finding.display-link.inputs"));
        }
        int screens = Math.min(ScreenOutputs.screens(it), ScreenOutputs.count(outputs));
        return judged(outputs, inputs, mode(it), screens);
    }

    /** The link of the last screen; empty where there is none to judge. */
    public Optional<ScreenLink> link(Assessment it) {
        List<Port> outputs = ScreenOutputs.of(it.build());
        if (outputs.isEmpty() || !screenKnown(it) || inputs(it).isEmpty()) {
            return Optional.empty();
        }
        LinkBook.Mode mode = mode(it);
        int screens = Math.min(ScreenOutputs.screens(it), ScreenOutputs.count(outputs));
        return Optional.of(
                new ScreenLink(
                        mode.resolution(),
                        mode.refreshHz(),
                        mode.bitsPerColour(),
                        lastScreen(outputs, inputs(it), mode, screens)));
    }

    /** A display still to be bought is told by {@code display-wanted}. */
    private static boolean screenKnown(Assessment it) {
        return it.build().has(Slot.DISPLAY)
                || it.brief().screen().isPresent() && !it.brief().screen().get().buy();
    }

    private static List<Port> inputs(Assessment it) {
        return it.build().has(Slot.DISPLAY)
                ? it.build().display().inputs()
                : it.brief().screen().orElseThrow().inputs();
    }

    private static LinkBook.Mode mode(Assessment it) {
        Optional<Screen> screen = it.brief().screen();
        if (!it.build().has(Slot.DISPLAY)) {
            Screen own = screen.orElseThrow();
            return new LinkBook.Mode(own.resolution(), own.refreshHz(), own.bitsPerColour());
        }
        Display display = it.build().display();
        int refreshHz = display.refreshHz();
        int bits = display.bitsPerColour();
        if (screen.isPresent()) {
            refreshHz = Math.min(refreshHz, screen.get().refreshHz());
            bits = Math.min(bits, screen.get().bitsPerColour());
        }
        return new LinkBook.Mode(
                display.resolution(), refreshHz, Math.max(LEAST_BITS_PER_COLOUR, bits));
    }

    private Finding judged(List<Port> outputs, List<Port> inputs, LinkBook.Mode mode, int screens) {
        LinkResult last = lastScreen(outputs, inputs, mode, screens);
        Optional<Margin> margin = margin(last);
        if (last.needsDeclaredMode()) {
            return new Finding.Caution(
                    () -> Phrase.of("finding.display-link.near", words(last, mode)), margin);
        }
        if (!last.fits()) {
            return new Finding.Breach(LinkBook.lackingMbit(last), () -> words(last, mode), margin);
        }
        return last.carried() == LinkResult.Carried.COMPRESSED
                ? new Finding.Note(
                        () -> Phrase.of("finding.display-link.compressed", words(last, mode)),
                        margin)
                : new Finding.Met(margin);
    }

    /** Screens take the best outputs first; how the last one fares. */
    private LinkResult lastScreen(
            List<Port> outputs, List<Port> inputs, LinkBook.Mode mode, int screens) {
        int used = 0;
        int left = screens;
        LinkResult last = null;
        while (left > 0 || last == null) {
            int best = -1;
            for (int i = 0; i < outputs.size(); i++) {
                if ((used >> i & 1) == 0 && (best < 0 || better(outputs, inputs, mode, i, best))) {
                    best = i;
                }
            }
            used |= 1 << best;
            left -= outputs.get(best).count();
            last = book.best(outputs.get(best), inputs, mode);
        }
        return last;
    }

    private boolean better(
            List<Port> outputs, List<Port> inputs, LinkBook.Mode mode, int one, int other) {
        return LinkBook.rank(book.best(outputs.get(one), inputs, mode))
                < LinkBook.rank(book.best(outputs.get(other), inputs, mode));
    }

    private static Optional<Margin> margin(LinkResult result) {
        // Rounded to the side of the answer, so that the margin never contradicts it.
        long need = result.requiredBitsPerSecond() / MEGA;
        long have = result.availableBitsPerSecond() / MEGA;
        return Optional.of(
                new Margin(
                        have,
                        result.fits() ? need : have + LinkBook.lackingMbit(result),
                        Unit.MEGABIT));
    }

    private static Phrase words(LinkResult result, LinkBook.Mode mode) {
        return Phrase.of(
                "finding.display-link",
                mode.resolution(),
                mode.refreshHz(),
                mode.bitsPerColour(),
                result.requiredBitsPerSecond() / MEGA,
                result.timing().label(),
                result.standard()
                        .map(LinkStandard::id)
                        .map(Phrase::data)
                        .orElse(Phrase.of("finding.display-link.none")),
                result.availableBitsPerSecond() / MEGA);
    }
}
