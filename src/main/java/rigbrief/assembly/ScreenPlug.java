package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.brief.Screen;
import rigbrief.build.Build;
import rigbrief.model.link.DisplayLink;
import rigbrief.model.link.LinkResult;
import rigbrief.model.link.LinkStandard;
import rigbrief.part.Display;
import rigbrief.part.Port;
import rigbrief.part.Resolution;
import rigbrief.part.Slot;
import rigbrief.wording.Texts;

/**
 * Which output a screen is plugged into, by which of its inputs, and what then passes.
 *
 * @param screen number of the screen, from 1
 * @param card whether the output is the graphics card's; else the board's
 * @param output standard of the output, such as {@code dp1.4}
 * @param input standard of the screen's input; empty where the brief doesn't say which it has
 * @param resolution picture size; empty where no screen is known
 * @param refreshHz refresh rate in Hz; 0 where no screen is known
 * @param bitsPerColour bits per colour; 0 where no screen is known
 * @param link what the pair carries; empty where either end is not known
 */
public record ScreenPlug(
        int screen,
        boolean card,
        String output,
        Optional<String> input,
        Optional<Resolution> resolution,
        int refreshHz,
        int bitsPerColour,
        Optional<LinkResult> link) {
    private static final int LEAST_BITS_PER_COLOUR = 8;

    /** What a screen is to show. */
    private record Mode(Resolution resolution, int refreshHz, int bitsPerColour) {}

    /** A pair of ports with what it carries. */
    private record Pair(Port output, Port input, LinkResult link) {
        /** Less is better: uncompressed, compressed, then by what lacks, as the rule ranks. */
        long rank() {
            if (link.carried() == LinkResult.Carried.UNCOMPRESSED) {
                return 0;
            }
            return link.fits()
                    ? 1
                    : 1 + link.requiredBitsPerSecond() - link.availableBitsPerSecond();
        }
    }

    /**
     * One entry per screen, best outputs first, as rule {@code display-link} has it; empty when
     * there is no output at all.
     */
    public static List<ScreenPlug> of(Assessment it) {
        Build build = it.build();
        boolean card = build.has(Slot.GRAPHICS);
        List<Port> outputs = singles(card ? build.graphics().outputs() : boardOutputs(build));
        List<ScreenPlug> plugs = new ArrayList<>();
        Optional<Mode> mode = mode(it);
        List<Port> inputs = inputs(it);
        int screens = screens(it);
        for (int screen = 1; screen <= screens && !outputs.isEmpty(); screen++) {
            Optional<Pair> best = mode.flatMap(wanted -> best(outputs, inputs, wanted));
            Port output = best.map(Pair::output).orElse(outputs.get(0));
            outputs.remove(output);
            plugs.add(
                    new ScreenPlug(
                            screen,
                            card,
                            output.standard(),
                            best.map(pair -> pair.input().standard()),
                            mode.map(Mode::resolution),
                            mode.map(Mode::refreshHz).orElse(0),
                            mode.map(Mode::bitsPerColour).orElse(0),
                            best.map(Pair::link)));
        }
        return List.copyOf(plugs);
    }

    private static List<Port> boardOutputs(Build build) {
        return build.processor().integratedGraphics() ? build.board().outputs() : List.of();
    }

    /** A port that is there several times, that many times. */
    private static List<Port> singles(List<Port> ports) {
        List<Port> singles = new ArrayList<>();
        for (Port port : ports) {
            for (int i = 0; i < port.count(); i++) {
                singles.add(new Port(port.standard(), 1));
            }
        }
        return singles;
    }

    private static Optional<Pair> best(List<Port> outputs, List<Port> inputs, Mode mode) {
        Pair best = null;
        for (Port output : outputs) {
            for (Port input : inputs) {
                Pair pair = new Pair(output, input, carries(output, input, mode));
                best = best == null || pair.rank() < best.rank() ? pair : best;
            }
        }
        return Optional.ofNullable(best);
    }

    private static LinkResult carries(Port output, Port input, Mode mode) {
        return DisplayLink.carries(
                LinkStandard.of(output.standard()),
                LinkStandard.of(input.standard()),
                mode.resolution().widthPx(),
                mode.resolution().heightPx(),
                mode.refreshHz(),
                mode.bitsPerColour());
    }

    private static int screens(Assessment it) {
        return it.build().has(Slot.DISPLAY)
                ? it.build().pieces(Slot.DISPLAY)
                : it.brief().screen().map(Screen::count).orElse(1);
    }

    private static List<Port> inputs(Assessment it) {
        return it.build().has(Slot.DISPLAY)
                ? it.build().display().inputs()
                : it.brief().screen().map(Screen::inputs).orElse(List.of());
    }

    /** The screen on the order at the brief's rate at most; else the brief's own. */
    private static Optional<Mode> mode(Assessment it) {
        Optional<Screen> screen = it.brief().screen();
        if (!it.build().has(Slot.DISPLAY)) {
            return screen.map(
                    own -> new Mode(own.resolution(), own.refreshHz(), own.bitsPerColour()));
        }
        Display display = it.build().display();
        int refreshHz = Math.min(display.refreshHz(), screen.map(Screen::refreshHz).orElse(2_000));
        int bits = Math.min(display.bitsPerColour(), screen.map(Screen::bitsPerColour).orElse(12));
        return Optional.of(
                new Mode(display.resolution(), refreshHz, Math.max(LEAST_BITS_PER_COLOUR, bits)));
    }

    /** What the screen has to show, in words of a language; empty where no screen is known. */
    public String picture(Texts texts) {
        return resolution
                .map(
                        size ->
                                texts.text(
                                        "screen.picture",
                                        size.toString(),
                                        refreshHz,
                                        bitsPerColour))
                .orElse("");
    }

    /** From where to where, in words of a language. */
    public String path(Texts texts) {
        return texts.text(
                card ? "screen.path.card" : "screen.path.board",
                PortNames.of(output),
                input.map(standard -> texts.text("screen.input", PortNames.of(standard)))
                        .orElseGet(() -> texts.text("screen.any-input")));
    }
}
