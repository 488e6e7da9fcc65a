package rigbrief.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Looks;
import rigbrief.brief.Brief.Noise;
import rigbrief.brief.Brief.SizeNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.intake.Levels.Loudness;
import rigbrief.intake.Levels.Size;
import rigbrief.part.Colour;
import rigbrief.part.SidePanel;
import rigbrief.wording.Phrase;

/** How it may look, how loud and how large it may be. */
final class LookSteps {
    private static final String LOOKS = "looks";
    private static final String NOISE = "noise";
    private static final int LOWEST_DBA = 10;
    private static final int HIGHEST_DBA = 80;
    private static final int SMALLEST_L = 5;
    private static final int LARGEST_L = 500;

    private LookSteps() {}

    static List<Question> looks(Sheet sheet) {
        return List.of(
                Asking.about(LOOKS, "lights")
                        .choices(Levels.LIGHTING)
                        .usual(Levels.ANY)
                        .readChoice(
                                choice ->
                                        looks(
                                                sheet,
                                                LightingNeed.valueOf(
                                                        choice.word().toUpperCase(Locale.ROOT)))),
                Asking.about(LOOKS, "side")
                        .choices(Levels.SIDES)
                        .usual(Levels.ANY)
                        .readChoice(choice -> side(sheet, choice.word())),
                Asking.about(LOOKS, "colour")
                        .choices(Levels.COLOURS)
                        .usual(Levels.ANY)
                        .readChoice(choice -> colour(sheet, choice.word())));
    }

    private static Brief looks(Sheet sheet, LightingNeed lighting) {
        Looks old = sheet.brief().looks();
        return sheet.draft()
                .looks(new Looks(lighting, old.colour(), old.colourStrength(), old.side()))
                .toBrief();
    }

    private static Brief side(Sheet sheet, String word) {
        Looks old = sheet.brief().looks();
        Optional<SidePanel> side = Optional.empty();
        for (SidePanel panel : SidePanel.values()) {
            side = panel.word().equals(word) ? Optional.of(panel) : side;
        }
        return sheet.draft()
                .looks(new Looks(old.lighting(), old.colour(), old.colourStrength(), side))
                .toBrief();
    }

    private static Brief colour(Sheet sheet, String word) {
        Optional<Colour> found = Optional.empty();
        for (Colour colour : Colour.values()) {
            found = colour.word().equals(word) ? Optional.of(colour) : found;
        }
        return coloured(sheet, found, found.isPresent() ? Strength.WISH : Strength.NONE);
    }

    private static Brief coloured(Sheet sheet, Optional<Colour> colour, Strength strength) {
        Looks old = sheet.brief().looks();
        return sheet.draft()
                .looks(new Looks(old.lighting(), colour, strength, old.side()))
                .toBrief();
    }

    static List<Question> colourMust(Sheet sheet) {
        Optional<Colour> colour = sheet.brief().looks().colour();
        if (colour.isEmpty()) {
            return List.of();
        }
        return List.of(
                Asking.about(LOOKS, "colour-is-a-must")
                        .ask(Phrase.of("pick.colour." + colour.get().word()))
                        .choices(
                                List.of(
                                        Choice.of("colour-is-a-must", "wish"),
                                        Choice.of("colour-is-a-must", "must")))
                        .usual("wish")
                        .readChoice(
                                choice ->
                                        coloured(
                                                sheet,
                                                colour,
                                                Strength.valueOf(
                                                        choice.word().toUpperCase(Locale.ROOT)))));
    }

    static List<Question> noise(Sheet sheet) {
        return List.of(
                Asking.about(NOISE, "noise")
                        .choices(Levels.loudness())
                        .usual(Levels.ANY)
                        .read(typed -> noise(sheet, typed)));
    }

    private static Answer noise(Sheet sheet, String typed) throws NotUnderstood {
        String entry = typed.strip();
        if (entry.matches("[0-9]{2,3}")) {
            return limit(sheet, entry, Entries.whole(entry, LOWEST_DBA, HIGHEST_DBA));
        }
        Choice choice = Entries.choice(Levels.loudness(), typed);
        for (Loudness level : Levels.LOUDNESS) {
            if (level.word().equals(choice.word())) {
                return limit(sheet, level.word(), level.dba());
            }
        }
        return new Answer(choice.word(), sheet.brief(), Phrase.of("then.noise.any"));
    }

    private static Answer limit(Sheet sheet, String text, int dba) {
        Noise noise =
                new Noise(
                        OptionalInt.of(dba),
                        OptionalInt.empty(),
                        sheet.brief().noise().seatDistanceM());
        return new Answer(text, sheet.draft().noise(noise).toBrief(), Phrase.of("then.noise", dba));
    }

    static List<Question> noiseMust(Sheet sheet) {
        if (sheet.brief().noise().mustDba().isEmpty()
                && sheet.brief().noise().wishDba().isEmpty()) {
            return List.of();
        }
        return List.of(
                Asking.about(NOISE, "noise-is-a-must")
                        .choices(
                                List.of(
                                        Choice.of("noise-is-a-must", "must"),
                                        Choice.of("noise-is-a-must", "wish")))
                        .usual("must")
                        .readChoice(choice -> strength(sheet, choice.word().equals("must"))),
                Asking.about(NOISE, "place")
                        .choices(PLACES)
                        .usual("under")
                        .readChoice(choice -> distance(sheet, metres(choice.word()))));
    }

    /** Distance from the case to the ear; common practice. */
    static final List<Choice> PLACES =
            List.of(
                    Choice.of("place", "on"),
                    Choice.of("place", "under"),
                    Choice.of("place", "away"));

    static double metres(String place) {
        return switch (place) {
            case "on" -> 0.5;
            case "away" -> 2;
            default -> 0.8;
        };
    }

    private static Brief strength(Sheet sheet, boolean must) {
        Noise old = sheet.brief().noise();
        OptionalInt dba = old.mustDba().isPresent() ? old.mustDba() : old.wishDba();
        return sheet.draft()
                .noise(
                        new Noise(
                                must ? dba : OptionalInt.empty(),
                                must ? OptionalInt.empty() : dba,
                                old.seatDistanceM()))
                .toBrief();
    }

    private static Brief distance(Sheet sheet, double metres) {
        Noise old = sheet.brief().noise();
        return sheet.draft().noise(new Noise(old.mustDba(), old.wishDba(), metres)).toBrief();
    }

    static List<Question> size(Sheet sheet) {
        return List.of(
                Asking.about("size", "size")
                        .choices(Levels.sizes())
                        .usual(Levels.ANY)
                        .read(typed -> size(sheet, typed)));
    }

    private static Answer size(Sheet sheet, String typed) throws NotUnderstood {
        String entry =
                typed.strip().toLowerCase(Locale.ROOT).replaceFirst(" ?(l|litres?|liter)$", "");
        boolean own = entry.matches("[0-9]{1,3}") && Integer.parseInt(entry) >= SMALLEST_L;
        if (own) {
            return litres(sheet, entry, Entries.whole(entry, SMALLEST_L, LARGEST_L));
        }
        Choice choice = Entries.choice(Levels.sizes(), typed);
        for (Size size : Levels.SIZES) {
            if (size.word().equals(choice.word())) {
                return litres(sheet, size.word(), size.litres());
            }
        }
        return new Answer(choice.word(), sheet.brief(), Phrase.of("then.size.any"));
    }

    private static Answer litres(Sheet sheet, String text, int litres) {
        SizeNeed need =
                new SizeNeed(
                        OptionalInt.of(10 * litres),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        return new Answer(text, sheet.draft().size(need).toBrief(), Phrase.of("then.size", litres));
    }
}
