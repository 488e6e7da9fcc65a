package rigbrief.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import rigbrief.wording.Phrase;

/** The everyday scales that questions and the form share, least first. */
final class Levels {
    /** No matter. */
    static final String ANY = "any";

    /**
     * How smoothly a game runs. What the words mean, here and below, is common practice.
     *
     * @param word word
     * @param averageFps pictures a second on average
     */
    record Smoothness(String word, int averageFps) {
        /** Two thirds of the average in the slowest moments: common practice. */
        static int low(int averageFps) {
            return averageFps * 2 / 3;
        }
    }

    static final List<Smoothness> SMOOTHNESS =
            List.of(
                    new Smoothness("calm", 30),
                    new Smoothness("smooth", 60),
                    new Smoothness("fluid", 90),
                    new Smoothness("swift", 120),
                    new Smoothness("fastest", 165));

    /**
     * How loud a computer may be.
     *
     * @param word word
     * @param dba sound level at the seat in dB(A)
     */
    record Loudness(String word, int dba) {}

    static final List<Loudness> LOUDNESS =
            List.of(
                    new Loudness("hushed", 28),
                    new Loudness("quiet", 33),
                    new Loudness("audible", 38),
                    new Loudness("plain", 43));

    /**
     * How large a case may be.
     *
     * @param word word
     * @param litres outer volume in litres
     */
    record Size(String word, int litres) {}

    static final List<Size> SIZES =
            List.of(new Size("shelf", 12), new Size("small", 20), new Size("middle", 45));

    /** Pictures that screens commonly have, by size; any other may be typed. */
    static final List<Choice> PICTURES =
            List.of(
                    Choice.of("picture", "1920x1080"),
                    Choice.of("picture", "2560x1440"),
                    Choice.of("picture", "3440x1440"),
                    Choice.of("picture", "3840x2160"));

    /** How often screens commonly redraw, in Hz; any other may be typed. */
    static final List<Choice> REFRESH =
            List.of(
                    Choice.of("refresh", "60"),
                    Choice.of("refresh", "100"),
                    Choice.of("refresh", "144"),
                    Choice.of("refresh", "240"));

    /** The sockets by which screens are connected, as briefs spell them. */
    static final List<Choice> INPUTS =
            List.of(
                    Choice.of("sockets", "hdmi1.4"),
                    Choice.of("sockets", "hdmi2.0"),
                    Choice.of("sockets", "hdmi2.1"),
                    Choice.of("sockets", "dp1.2"),
                    Choice.of("sockets", "dp1.4"),
                    Choice.of("sockets", "dp2.1"));

    /** Room for files beside what is installed, in GB. */
    static final List<Choice> STORAGE =
            List.of(
                    Choice.of("storage", "500"),
                    Choice.of("storage", "1000"),
                    Choice.of("storage", "2000"),
                    Choice.of("storage", "4000"));

    static final List<Choice> LIGHTING =
            List.of(
                    Choice.of("lights", ANY),
                    Choice.of("lights", "none"),
                    Choice.of("lights", "switchable"));

    static final List<Choice> COLOURS =
            List.of(
                    Choice.of("colour", ANY),
                    Choice.of("colour", "black"),
                    Choice.of("colour", "white"),
                    Choice.of("colour", "grey"),
                    Choice.of("colour", "silver"),
                    Choice.of("colour", "wood"),
                    Choice.of("colour", "red"),
                    Choice.of("colour", "blue"),
                    Choice.of("colour", "green"),
                    Choice.of("colour", "pink"));

    static final List<Choice> SIDES =
            List.of(
                    Choice.of("side", ANY),
                    Choice.of("side", "solid"),
                    Choice.of("side", "tinted"),
                    Choice.of("side", "clear"));

    static final List<Choice> WIRELESS =
            List.of(
                    Choice.of("wireless", "none"),
                    Choice.of("wireless", "wish"),
                    Choice.of("wireless", "must"));

    static final List<Choice> SYSTEM =
            List.of(Choice.of("system", "none"), Choice.of("system", "must"));

    static final List<Choice> FRONT_PORTS =
            List.of(
                    Choice.of("front-sockets", "usb3"),
                    Choice.of("front-sockets", "usb-c"),
                    Choice.of("front-sockets", "audio"));

    /** The soft goals a client may put first, as briefs spell them. */
    static final List<Choice> GOALS =
            List.of(
                    Choice.of("wishes", "value"),
                    Choice.of("wishes", "quiet"),
                    Choice.of("wishes", "upgrade-room"),
                    Choice.of("wishes", "look"),
                    Choice.of("wishes", "energy"),
                    Choice.of("wishes", "lifetime"),
                    Choice.of("wishes", "simple-order"));

    private Levels() {}

    /** Steps of a workload's own, such as presets, as choices. */
    static List<Choice> steps(Collection<String> names, String unmarked) {
        List<Choice> choices = new ArrayList<>();
        for (String name : names) {
            choices.add(
                    Choice.called(
                            name, name.equals(unmarked) ? Phrase.of("pick.usual") : Phrase.NONE));
        }
        return choices;
    }

    static List<Choice> loudness() {
        List<Choice> choices = new ArrayList<>();
        for (Loudness level : LOUDNESS) {
            choices.add(Choice.of("noise", level.word(), level.dba()));
        }
        choices.add(Choice.of("noise", ANY));
        return choices;
    }

    static List<Choice> sizes() {
        List<Choice> choices = new ArrayList<>();
        choices.add(Choice.of("size", ANY));
        for (Size size : SIZES) {
            choices.add(Choice.of("size", size.word(), size.litres()));
        }
        return choices;
    }

    static List<Choice> smoothness() {
        List<Choice> choices = new ArrayList<>();
        for (Smoothness level : SMOOTHNESS) {
            choices.add(Choice.of("smoothness", level.word(), level.averageFps()));
        }
        choices.add(Choice.of("smoothness", ANY));
        return choices;
    }
}
