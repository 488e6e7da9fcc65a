package rigbrief.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The everyday scales that questions and the form share, least first. */
final class Levels {
    /** No matter. */
    static final String ANY = "any";

    /**
     * How smoothly a game runs.
     *
     * @param word word
     * @param averageFps pictures a second on average
     * @param meaning in everyday words; common practice
     */
    record Smoothness(String word, int averageFps, String meaning) {
        /** Two thirds of the average in the slowest moments: common practice. */
        static int low(int averageFps) {
            return averageFps * 2 / 3;
        }
    }

    static final List<Smoothness> SMOOTHNESS =
            List.of(
                    new Smoothness("calm", 30, "enough where little moves: cards, building, turns"),
                    new Smoothness("smooth", 60, "even motion; most people ask for no more"),
                    new Smoothness("fluid", 90, "turning quickly stays clear"),
                    new Smoothness("swift", 120, "for fast contests against other people"),
                    new Smoothness("fastest", 165, "for contests on a fast screen"));

    /**
     * How loud a computer may be.
     *
     * @param word word
     * @param dba sound level at the seat in dB(A)
     * @param meaning in everyday words; common practice, as in tables of sound levels
     */
    record Loudness(String word, int dba, String meaning) {}

    static final List<Loudness> LOUDNESS =
            List.of(
                    new Loudness("hushed", 28, "heard only in a silent room at night"),
                    new Loudness("quiet", 33, "like a whisper a metre away"),
                    new Loudness("audible", 38, "like a refrigerator humming in the room"),
                    new Loudness("plain", 43, "like steady rain behind a closed window"));

    /**
     * How large a case may be.
     *
     * @param word word
     * @param litres outer volume in litres
     * @param meaning beside a thing everybody knows; common practice
     */
    record Size(String word, int litres, String meaning) {}

    static final List<Size> SIZES =
            List.of(
                    new Size("shelf", 12, "about a large bread bin"),
                    new Size("small", 20, "about a box of five reams of paper"),
                    new Size("middle", 45, "about a cabin suitcase"));

    /** Pictures that screens commonly have, by size; any other may be typed. */
    static final List<Choice> PICTURES =
            List.of(
                    new Choice("1920x1080", "1920x1080", "full HD: most ordinary screens"),
                    new Choice("2560x1440", "2560x1440", "finer: many 27-inch screens"),
                    new Choice("3440x1440", "3440x1440", "extra wide"),
                    new Choice("3840x2160", "3840x2160", "4K: very fine, four times full HD"));

    /** How often screens commonly redraw, in Hz; any other may be typed. */
    static final List<Choice> REFRESH =
            List.of(
                    new Choice("60", "60 times", "ordinary screens and televisions"),
                    new Choice("100", "100 times", "better office and home screens"),
                    new Choice("144", "144 times", "screens made for games"),
                    new Choice("240", "240 times", "screens made for contests"));

    /** The sockets by which screens are connected, as briefs spell them. */
    static final List<Choice> INPUTS =
            List.of(
                    new Choice("hdmi1.4", "HDMI 1.4", "flat with slanted ends; older screens"),
                    new Choice("hdmi2.0", "HDMI 2.0", "the same shape; about 2015 to 2021"),
                    new Choice("hdmi2.1", "HDMI 2.1", "the same shape; newest and fastest"),
                    new Choice("dp1.2", "DisplayPort 1.2", "one slanted corner; older screens"),
                    new Choice("dp1.4", "DisplayPort 1.4", "one slanted corner; most of today's"),
                    new Choice("dp2.1", "DisplayPort 2.1", "one slanted corner; newest"));

    /** Room for files beside what is installed, in GB. */
    static final List<Choice> STORAGE =
            List.of(
                    new Choice("500", "500 GB", "letters, some photographs"),
                    new Choice("1000", "1000 GB", "years of photographs, some films"),
                    new Choice("2000", "2000 GB", "large photographs and films of one's own"),
                    new Choice("4000", "4000 GB", "work with films"));

    static final List<Choice> LIGHTING =
            List.of(
                    new Choice(ANY, "no matter", "Lit parts may be used or not."),
                    new Choice("none", "no lights", "No part glows, or its light is off."),
                    new Choice(
                            "switchable",
                            "lights with a switch",
                            "Lit parts can be switched off."));

    static final List<Choice> COLOURS =
            List.of(
                    new Choice(ANY, "no matter", "The colour decides nothing."),
                    new Choice("black", "black", "Parts in sight should be black."),
                    new Choice("white", "white", "Parts in sight should be white."),
                    new Choice("grey", "grey", "Parts in sight should be grey."),
                    new Choice("silver", "silver", "Parts in sight should be silver."),
                    new Choice("wood", "wood", "Parts in sight should show wood."),
                    new Choice("red", "red", "Parts in sight should be red."),
                    new Choice("blue", "blue", "Parts in sight should be blue."),
                    new Choice("green", "green", "Parts in sight should be green."),
                    new Choice("pink", "pink", "Parts in sight should be pink."));

    static final List<Choice> SIDES =
            List.of(
                    new Choice(ANY, "no matter", "Any case will do."),
                    new Choice("solid", "closed", "Nothing inside can be seen."),
                    new Choice("tinted", "dark glass", "The inside shows a little."),
                    new Choice("clear", "clear glass", "The inside is on show."));

    static final List<Choice> WIRELESS =
            List.of(
                    new Choice("none", "no", "A network cable reaches the place, or none is used."),
                    new Choice("wish", "would be nice", "Taken when it costs little."),
                    new Choice("must", "yes", "Every machine proposed will have it."));

    static final List<Choice> SYSTEM =
            List.of(
                    new Choice("none", "no", "A licence is there already, or a free one is used."),
                    new Choice("must", "yes", "The licence is part of the price."));

    static final List<Choice> FRONT_PORTS =
            List.of(
                    new Choice("usb3", "USB 3", "the flat socket, for sticks and cameras"),
                    new Choice("usb-c", "USB-C", "the small oval socket, for newer phones"),
                    new Choice("audio", "headphones", "the round socket"));

    /** The soft goals a client may put first, as briefs spell them. */
    static final List<Choice> GOALS =
            List.of(
                    new Choice("value", "good value", "spend only where it shows"),
                    new Choice("quiet", "quietness", "below the limit, as quiet as can be"),
                    new Choice("upgrade-room", "room to grow", "more can be added later"),
                    new Choice("look", "looks", "parts that go together"),
                    new Choice("energy", "low power bills", "draws little from the wall"),
                    new Choice("lifetime", "long life", "long guarantees, cool parts"),
                    new Choice("simple-order", "a simple order", "few shops, few parcels"));

    private Levels() {}

    /** Steps of a workload's own, such as presets, as choices. */
    static List<Choice> steps(Collection<String> names, String unmarked) {
        List<Choice> choices = new ArrayList<>();
        for (String name : names) {
            choices.add(new Choice(name, name, name.equals(unmarked) ? "the usual" : ""));
        }
        return choices;
    }

    static List<Choice> loudness() {
        List<Choice> choices = new ArrayList<>();
        for (Loudness level : LOUDNESS) {
            choices.add(
                    new Choice(
                            level.word(),
                            level.word() + ", " + level.dba() + " dB(A)",
                            level.meaning()));
        }
        choices.add(new Choice(ANY, "no limit", "noise decides nothing"));
        return choices;
    }

    static List<Choice> sizes() {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(ANY, "no limit", "size decides nothing"));
        for (Size size : SIZES) {
            choices.add(
                    new Choice(
                            size.word(),
                            size.word() + ", " + size.litres() + " litres",
                            size.meaning()));
        }
        return choices;
    }

    static List<Choice> smoothness() {
        List<Choice> choices = new ArrayList<>();
        for (Smoothness level : SMOOTHNESS) {
            choices.add(
                    new Choice(
                            level.word(),
                            level.word() + ", " + level.averageFps() + " a second",
                            level.meaning()));
        }
        choices.add(new Choice(ANY, "no demand", "it only has to fit and start"));
        return choices;
    }
}
