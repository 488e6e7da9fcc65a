package rigbrief.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigbrief.measurement.tune.FrameCap;
import rigbrief.measurement.tune.HeldScenes;
import rigbrief.measurement.tune.MenuLine;
import rigbrief.measurement.tune.SceneLine;
import rigbrief.measurement.tune.SceneLine.Pace;
import rigbrief.measurement.tune.ScreenPace;
import rigbrief.measurement.tune.TunedTitle;
import rigbrief.measurement.tune.Tuning;

/** The sentences about settings and caps. */
final class TuningWords {
    private TuningWords() {}

    /** A cap's rate, with no more decimals than it needs. */
    static String fps(FrameCap cap) {
        return number(cap) + " fps";
    }

    static String number(FrameCap cap) {
        BigDecimal rate = BigDecimal.valueOf(cap.hundredthsFps(), 2).stripTrailingZeros();
        return (rate.scale() < 0 ? rate.setScale(0) : rate).toPlainString();
    }

    private static String rate(double fps) {
        return Rounded.asAsked(fps).toPlainString();
    }

    static List<String> outcome(Tuning tuning, TunedTitle title) {
        List<String> words = new ArrayList<>();
        String where = where(tuning.terms().heldIn(), title);
        String asked = rate(title.askedFps());
        String tuned = rate(title.tunedForFps());
        words.add(
                switch (title.outcome()) {
                    case HELD -> "Holds %s fps in %s.".formatted(asked, where);
                    case BELOW_BRIEF ->
                            "Holds %s fps in %s, but only with settings below the brief's own."
                                    .formatted(asked, where);
                    case LOWER_TARGET ->
                            "%s fps can't be held in %s at any settings; these hold %s fps."
                                    .formatted(asked, where, tuned);
                    case NOT_HELD ->
                            "%s fps can't be held in %s, nor any rate worth naming; these are the"
                                            .formatted(asked, where)
                                    + " fastest settings.";
                });
        if (!title.mustsHold()) {
            words.add(
                    "At these settings the average or 1 % low that the brief asks of this title"
                            + " does not hold.");
        }
        if (title.overflows()) {
            words.add(
                    "Caution: they want %s GB of graphics memory and there are %s: expect stutter,"
                                    .formatted(
                                            Rounded.print(1, title.vramGb(), ""),
                                            Rounded.print(1, title.vramThereGb(), ""))
                            + " and take the rates as a guess.");
        }
        return words;
    }

    private static String where(HeldScenes held, TunedTitle title) {
        if (title.scenes().size() == 1) {
            return "its one scene";
        }
        if (held.sharePercent().isEmpty()) {
            return "every scene but the slowest";
        }
        int share = held.sharePercent().getAsInt();
        return share == 100 ? "every scene" : share + " % of play time";
    }

    static String why(MenuLine line) {
        return switch (line.reason()) {
            case HIGHEST -> "";
            case TURNED_DOWN -> seen(line);
            case FEWER_PIXELS -> "draws fewer pixels";
            case RAYS_DRAW_IT -> "rays draw this better";
            case ASKED -> "as the brief asks";
            case MACHINE_CANNOT -> "the card can't";
        };
    }

    private static String seen(MenuLine line) {
        return switch (line.visible()) {
            case 0 -> "not seen";
            case 1 -> "hardly seen";
            case 2 -> "seen on looking";
            default -> "seen at once";
        };
    }

    /** What turning down saves of the work at the reference preset; nothing for nothing. */
    static String saved(double percent) {
        String rounded = Rounded.print(0, percent, "");
        return rounded.equals("0") ? "" : rounded + " %";
    }

    static List<String> cap(Tuning tuning, TunedTitle title) {
        List<String> words = new ArrayList<>();
        if (title.cap().isEmpty()) {
            words.add("No steady cap is held: leave the rate free.");
            return words;
        }
        FrameCap cap = title.cap().get();
        words.add("Cap the rate at " + fps(cap) + ": " + steady(cap, tuning.screen()) + ".");
        List<SceneLine> dips = dips(title, Pace.DIP);
        if (dips.isEmpty()) {
            words.add("It holds in every scene.");
        } else {
            words.add("It dips in " + list(dips) + ".");
        }
        List<SceneLine> hidden = dips(title, Pace.HIDDEN_DIP);
        if (!hidden.isEmpty()) {
            words.add(
                    "It misses the cap by under a tenth in "
                            + list(hidden)
                            + ", which a screen with variable refresh hides.");
        }
        title.fixedCap()
                .ifPresent(
                        fixed ->
                                words.add(
                                        "On a screen without variable refresh cap at "
                                                + fps(fixed)
                                                + " instead: "
                                                + steady(fixed, tuning.screen())
                                                + "."));
        return words;
    }

    private static List<SceneLine> dips(TunedTitle title, Pace pace) {
        return title.scenes().stream().filter(scene -> scene.pace() == pace).toList();
    }

    private static String list(List<SceneLine> scenes) {
        return scenes.stream()
                .map(
                        scene ->
                                "%s to %s (%s)"
                                        .formatted(
                                                scene.name(),
                                                Rounded.print(0, scene.fps(), ""),
                                                range(scene)))
                .collect(Collectors.joining(", "));
    }

    private static String steady(FrameCap cap, ScreenPace screen) {
        int refreshHz = screen.refreshHz().orElse(0);
        return switch (cap.steadyBy()) {
            case REFRESH -> "one frame at every refresh of the %d Hz screen".formatted(refreshHz);
            case DIVISOR ->
                    "one frame at every %s refresh of the %d Hz screen"
                            .formatted(ordinal(cap.refreshes()), refreshHz);
            case VARIABLE ->
                    "the screen waits for each frame, from %d Hz on"
                            .formatted(screen.variableFromHz().orElse(0));
            case USUAL -> "steady on a screen with variable refresh";
        };
    }

    private static String ordinal(int n) {
        return switch (n) {
            case 2 -> "second";
            case 3 -> "third";
            case 4 -> "fourth";
            case 5 -> "fifth";
            default -> n + "th";
        };
    }

    static String range(SceneLine line) {
        return Rounded.print(0, line.lowFps(), "") + " to " + Rounded.print(0, line.highFps(), "");
    }

    static String pace(SceneLine line) {
        return switch (line.pace()) {
            case UNCAPPED -> "no cap";
            case STEADY -> "steady";
            case HIDDEN_DIP -> "just under it";
            case DIP -> "dips to " + Rounded.print(0, line.fps(), " fps");
        };
    }

    static List<String> mix(TunedTitle title) {
        String uncapped =
                "Average %s fps, 1 %% low %s fps without the cap"
                        .formatted(
                                Rounded.print(0, title.uncapped().averageFps(), ""),
                                Rounded.print(0, title.uncapped().lowFps(), ""));
        String capped =
                title.cap().isEmpty()
                        ? "."
                        : ", %s and %s with it. Measure what was promised with the cap off."
                                .formatted(
                                        Rounded.print(0, title.capped().averageFps(), ""),
                                        Rounded.print(0, title.capped().lowFps(), ""));
        return List.of(
                uncapped + capped,
                "Average: all frames over all time. 1 % low: the rate at the 99th percentile of"
                        + " frame time, counted in frames.");
    }
}
