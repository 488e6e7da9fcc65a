package rigbrief.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.brief.Screen;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Cells;
import rigbrief.part.Display;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Port;
import rigbrief.part.Resolution;
import rigbrief.wording.Phrase;

/** The screen: there already, bought with the computer, or not known. */
final class ScreenSteps {
    static final String WHICH = "screen";
    static final String OWN = "own";
    static final String BUY = "buy";

    private static final String UNKNOWN = "unknown";
    private static final String TOPIC = "screen";
    private static final int BITS = 8;
    private static final int MOST_SCREENS = 4;
    private static final int SLOWEST_HZ = 24;
    private static final int FASTEST_HZ = 1_000;

    /** What a screen is until its picture is told. */
    private static final Screen UNTOLD =
            new Screen(new Resolution(1920, 1080), 60, BITS, List.of(), 1, false, Optional.empty());

    private ScreenSteps() {}

    static List<Question> which(Sheet sheet) {
        List<Choice> offered = new ArrayList<>();
        offered.add(Choice.of(WHICH, OWN));
        if (!sheet.catalogue().parts(Kind.DISPLAY).isEmpty()) {
            offered.add(Choice.of(WHICH, BUY));
        }
        offered.add(Choice.of(WHICH, UNKNOWN));
        return List.of(
                Asking.about(TOPIC, WHICH)
                        .choices(offered)
                        .usual(OWN)
                        .readChoice(
                                choice ->
                                        choice.word().equals(UNKNOWN)
                                                ? sheet.brief()
                                                : with(sheet, begun(choice))));
    }

    private static Screen begun(Choice choice) {
        return new Screen(
                UNTOLD.resolution(),
                UNTOLD.refreshHz(),
                BITS,
                List.of(),
                1,
                choice.word().equals(BUY),
                Optional.empty());
    }

    static List<Question> picture(Sheet sheet) {
        if (sheet.brief().screen().isEmpty()) {
            return List.of();
        }
        return List.of(resolution(sheet), refresh(sheet));
    }

    private static Question resolution(Sheet sheet) {
        boolean buy = sheet.brief().screen().get().buy();
        return Asking.about(TOPIC, "picture")
                .as(buy ? "picture-to-buy" : "picture")
                .choices(buy ? sold(sheet.catalogue()) : Levels.PICTURES)
                .usual(UNTOLD.resolution().toString())
                .read(
                        typed ->
                                resolution(
                                        sheet,
                                        typed,
                                        buy ? sold(sheet.catalogue()) : Levels.PICTURES));
    }

    /** The common pictures that some display of the catalogue shows. */
    private static List<Choice> sold(Catalogue catalogue) {
        List<Choice> sold = new ArrayList<>();
        for (Choice choice : Levels.PICTURES) {
            for (Part part : catalogue.parts(Kind.DISPLAY)) {
                if (((Display) part).resolution().toString().equals(choice.word())
                        && !sold.contains(choice)) {
                    sold.add(choice);
                }
            }
        }
        return sold.isEmpty() ? Levels.PICTURES : sold;
    }

    private static Answer resolution(Sheet sheet, String typed, List<Choice> offered)
            throws NotUnderstood {
        String plain = typed.strip().toLowerCase(Locale.ROOT).replace('×', 'x').replace(" ", "");
        String entry = Entries.find(offered, plain).map(Choice::word).orElse(plain);
        try {
            Resolution size = Resolution.read(entry);
            Screen old = sheet.brief().screen().get();
            return new Answer(
                    entry,
                    with(
                            sheet,
                            new Screen(
                                    size,
                                    old.refreshHz(),
                                    BITS,
                                    old.inputs(),
                                    old.count(),
                                    old.buy(),
                                    old.part())),
                    Phrase.of(
                            "then.picture",
                            Plain.figure(
                                    BigDecimal.valueOf(Math.round(size.megapixels() * 10), 1))));
        } catch (Cells.Malformed malformed) {
            throw NotUnderstood.of(typed.strip(), "picture");
        }
    }

    private static Question refresh(Sheet sheet) {
        return Asking.about(TOPIC, "refresh")
                .choices(Levels.REFRESH)
                .usual("60")
                .read(
                        typed -> {
                            String plain =
                                    typed.strip()
                                            .toLowerCase(Locale.ROOT)
                                            .replaceFirst(" ?hz$", "");
                            Optional<Choice> choice = Entries.find(Levels.REFRESH, plain);
                            int hz =
                                    choice.isPresent()
                                            ? Integer.parseInt(choice.get().word())
                                            : Entries.whole(plain, SLOWEST_HZ, FASTEST_HZ);
                            Screen old = sheet.brief().screen().get();
                            return new Answer(
                                    Integer.toString(hz),
                                    with(
                                            sheet,
                                            new Screen(
                                                    old.resolution(),
                                                    hz,
                                                    BITS,
                                                    old.inputs(),
                                                    old.count(),
                                                    old.buy(),
                                                    old.part())),
                                    Phrase.of("then.refresh", hz));
                        });
    }

    static List<Question> sockets(Sheet sheet) {
        if (sheet.brief().screen().isEmpty() || sheet.brief().screen().get().buy()) {
            return List.of();
        }
        return List.of(
                Asking.about(TOPIC, "sockets")
                        .choices(Levels.INPUTS)
                        .several()
                        .usual(Entries.NONE)
                        .read(
                                typed -> {
                                    List<Choice> named = Entries.choices(Levels.INPUTS, typed);
                                    List<Port> ports =
                                            named.stream()
                                                    .map(choice -> new Port(choice.word(), 1))
                                                    .toList();
                                    Screen old = sheet.brief().screen().get();
                                    return new Answer(
                                            Entries.words(named),
                                            with(
                                                    sheet,
                                                    new Screen(
                                                            old.resolution(),
                                                            old.refreshHz(),
                                                            BITS,
                                                            ports,
                                                            old.count(),
                                                            old.buy(),
                                                            old.part())),
                                            ports.isEmpty()
                                                    ? Phrase.of("then.sockets.none")
                                                    : Phrase.of("then.sockets"));
                                }));
    }

    static List<Question> count(Sheet sheet) {
        if (sheet.brief().screen().isEmpty()) {
            return List.of();
        }
        boolean buy = sheet.brief().screen().get().buy();
        return List.of(
                Asking.about(TOPIC, "screens")
                        .as(buy ? "screens-to-buy" : "screens")
                        .usual("1")
                        .read(
                                typed -> {
                                    int count = Entries.whole(typed, 1, MOST_SCREENS);
                                    Screen old = sheet.brief().screen().get();
                                    return new Answer(
                                            Integer.toString(count),
                                            with(
                                                    sheet,
                                                    new Screen(
                                                            old.resolution(),
                                                            old.refreshHz(),
                                                            BITS,
                                                            old.inputs(),
                                                            count,
                                                            old.buy(),
                                                            old.part())),
                                            Phrase.of("then.screens", count));
                                }));
    }

    private static Brief with(Sheet sheet, Screen screen) {
        return sheet.draft().screen(Optional.of(screen)).toBrief();
    }
}
