package rigbrief.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.brief.Kept;
import rigbrief.part.Bus;
import rigbrief.part.Drive;
import rigbrief.part.DriveCache;
import rigbrief.part.DriveForm;
import rigbrief.part.Efficiency;
import rigbrief.part.Fact;
import rigbrief.part.Guide;
import rigbrief.part.Lighting;
import rigbrief.part.Listing;
import rigbrief.part.Modularity;
import rigbrief.part.Part;
import rigbrief.part.Plug;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.part.SupplyForm;
import rigbrief.part.Tally;
import rigbrief.quantity.Length;
import rigbrief.wording.Phrase;

/**
 * Parts that are there already and stand in no catalogue, by the figures on their labels.
 *
 * <p>A power supply and a drive are what people keep most; others are described in the brief, under
 * {@code keep}.
 */
final class OwnSteps {
    /** What is typed among the parts kept for one that the catalogue does not know. */
    static final String SUPPLY = "other supply";

    static final String DRIVE = "other drive";

    /** The sorts that can be described here. */
    static final List<String> SORTS = List.of(SUPPLY, DRIVE);

    private static final String TOPIC = "own-part";
    private static final String UNKNOWN = "unknown";

    /** Levels of a usual supply at 20, 50 and 100 % of its load, in dB(A): those of a brief. */
    private static final double[] SUPPLY_DBA = {20, 24, 34};

    /** A disk at work, in dB(A). Common practice. */
    private static final double DISK_DBA = 28;

    private static final List<Choice> FORMS =
            List.of(
                    Choice.of("own-supply-form", "atx"),
                    Choice.of("own-supply-form", "sfx"),
                    Choice.of("own-supply-form", "sfx-l"));

    /** Efficiencies of the 80 PLUS programme at 115 V and half load. */
    private static final List<Choice> LABELS =
            List.of(
                    Choice.of("own-supply-efficiency", "none"),
                    label("80plus", "80 PLUS", 80),
                    label("bronze", "80 PLUS Bronze", 85),
                    label("silver", "80 PLUS Silver", 88),
                    label("gold", "80 PLUS Gold", 90),
                    label("platinum", "80 PLUS Platinum", 92),
                    label("titanium", "80 PLUS Titanium", 94));

    /** Speeds are those that drives of the sort reach at the least. Common practice. */
    private enum DriveSort {
        M2("m2", DriveForm.M2_2280, Bus.GEN3X4, 2_000),
        SSD("ssd", DriveForm.BAY_25, Bus.SATA, 500),
        DISK("disk", DriveForm.BAY_35, Bus.SATA, 150);

        private final Choice choice;
        private final DriveForm form;
        private final Bus bus;
        private final int speedMbs;

        DriveSort(String word, DriveForm form, Bus bus, int speedMbs) {
            this.choice = Choice.of("own-drive-sort", word);
            this.form = form;
            this.bus = bus;
            this.speedMbs = speedMbs;
        }
    }

    private OwnSteps() {}

    /** The sort that was typed, in whichever language. */
    static Optional<String> sort(String typed) {
        return SORTS.stream().filter(sort -> Entries.means(sort, typed)).findFirst();
    }

    /** What a sort is called. */
    static Phrase called(String sort) {
        return Phrase.of("word." + sort.replace(' ', '-'));
    }

    /** What a kind of part is called within a sentence. */
    static Phrase kind(Part part) {
        return Phrase.of("kind." + part.kind().word());
    }

    private static Choice label(String word, String name, int percent) {
        return new Choice(
                word, Phrase.data(name), Phrase.of("pick.own-supply-efficiency.means", percent));
    }

    /** The questions on each part that was said to be there. */
    static List<Question> described(Sheet sheet) {
        String kept = sheet.answers().getOrDefault(PartSteps.KEPT, "");
        List<Question> questions = new ArrayList<>();
        if (kept.contains(SUPPLY)) {
            questions.addAll(supply(sheet));
        }
        if (kept.contains(DRIVE)) {
            questions.addAll(drive(sheet));
        }
        return questions;
    }

    private static List<Question> supply(Sheet sheet) {
        return List.of(
                name(sheet, "own-supply-name", "Unknown supply"),
                Asking.about(TOPIC, "own-supply-watts")
                        .usual("500")
                        .read(typed -> whole(sheet, typed, 100, 3_000, "own-supply-watts")),
                Asking.about(TOPIC, "own-supply-form")
                        .choices(FORMS)
                        .usual("atx")
                        .readChoice(choice -> sheet.brief()),
                Asking.about(TOPIC, "own-supply-length")
                        .usual(UNKNOWN)
                        .read(typed -> length(sheet, typed)),
                Asking.about(TOPIC, "own-supply-efficiency")
                        .choices(LABELS)
                        .usual("none")
                        .readChoice(choice -> sheet.brief()),
                count(sheet, "own-supply-eps8", 0, 4, "1"),
                count(sheet, "own-supply-8pin", 0, 12, "2"),
                count(sheet, "own-supply-12v2x6", 0, 4, "0"),
                Asking.about(TOPIC, "own-supply-sata")
                        .whyAs("own-supply-plugs")
                        .usual("4")
                        .read(typed -> supply(sheet, typed)));
    }

    private static Question count(Sheet sheet, String id, int least, int most, String usual) {
        return Asking.about(TOPIC, id)
                .whyAs("own-supply-plugs")
                .usual(usual)
                .read(typed -> whole(sheet, typed, least, most, "own-supply-plugs"));
    }

    private static Question name(Sheet sheet, String id, String usual) {
        return Asking.about(TOPIC, id)
                .whyAs("own-name")
                .usual(usual)
                .read(
                        typed -> {
                            String name =
                                    Entries.text(typed, Phrase.of("expected.maker-and-model"));
                            if (!name.contains(" ")) {
                                throw NotUnderstood.of(name, "both-names");
                            }
                            return new Answer(
                                    name, sheet.brief(), Phrase.of("then.own-name", name));
                        });
    }

    private static Answer whole(Sheet sheet, String typed, int least, int most, String then)
            throws NotUnderstood {
        int number = Entries.whole(typed.strip(), least, most);
        return new Answer(
                Integer.toString(number), sheet.brief(), Phrase.of("then." + then, number));
    }

    private static Answer length(Sheet sheet, String typed) throws NotUnderstood {
        String plain = typed.strip().toLowerCase(Locale.ROOT).replaceFirst(" ?mm$", "");
        if (Entries.means(UNKNOWN, plain)) {
            return new Answer(UNKNOWN, sheet.brief(), Phrase.of("then.own-supply-length.unknown"));
        }
        return whole(sheet, plain, 80, 300, "own-supply-length");
    }

    private static Answer supply(Sheet sheet, String typed) throws NotUnderstood {
        int sata = Entries.whole(typed.strip(), 0, 24);
        Map<Plug, Integer> plugs = new EnumMap<>(Plug.class);
        plugs.put(Plug.ATX24, 1);
        put(plugs, Plug.EPS8, number(sheet, "own-supply-eps8"));
        put(plugs, Plug.PCIE8, number(sheet, "own-supply-8pin"));
        put(plugs, Plug.PCIE16, number(sheet, "own-supply-12v2x6"));
        put(plugs, Plug.SATA, sata);
        Listing listing = listing("owned-supply", sheet.answers().get("own-supply-name"));
        String length = sheet.answers().get("own-supply-length");
        Supply part =
                new Supply(
                        listing,
                        of(SupplyForm.values(), sheet.answers().get("own-supply-form")),
                        length.equals(UNKNOWN)
                                ? Fact.notStated(listing.id(), "length_mm")
                                : Fact.of(Length.mm(Integer.parseInt(length))),
                        number(sheet, "own-supply-watts"),
                        of(Efficiency.values(), sheet.answers().get("own-supply-efficiency")),
                        Guide.ATX2,
                        Fact.of(new Tally<>(plugs)),
                        Modularity.NONE,
                        SUPPLY_DBA[0],
                        SUPPLY_DBA[1],
                        SUPPLY_DBA[2]);
        return kept(sheet, Slot.SUPPLY, part, Integer.toString(sata));
    }

    private static void put(Map<Plug, Integer> plugs, Plug plug, int count) {
        if (count > 0) {
            plugs.put(plug, count);
        }
    }

    private static List<Question> drive(Sheet sheet) {
        List<Choice> sorts = new ArrayList<>();
        for (DriveSort sort : DriveSort.values()) {
            sorts.add(sort.choice);
        }
        return List.of(
                name(sheet, "own-drive-name", "Unknown drive"),
                Asking.about(TOPIC, "own-drive-sort")
                        .choices(sorts)
                        .usual("ssd")
                        .readChoice(choice -> sheet.brief()),
                Asking.about(TOPIC, "own-drive-gb")
                        .usual("1000")
                        .read(typed -> drive(sheet, typed)));
    }

    private static Answer drive(Sheet sheet, String typed) throws NotUnderstood {
        String plain = typed.strip().toLowerCase(Locale.ROOT).replaceFirst(" ?gb$", "");
        int gb = Entries.whole(plain, 16, 100_000);
        DriveSort sort = DriveSort.valueOf(word(sheet.answers().get("own-drive-sort")));
        Listing listing = listing("owned-drive", sheet.answers().get("own-drive-name"));
        Drive part =
                new Drive(
                        listing,
                        sort.form,
                        sort.bus,
                        gb,
                        sort.speedMbs,
                        sort.speedMbs,
                        Fact.notStated(listing.id(), "endurance_tbw"),
                        DriveCache.NONE,
                        sort == DriveSort.DISK ? DISK_DBA : 0);
        boolean first = sheet.brief().keep().stream().noneMatch(kept -> kept.slot() == Slot.DRIVE);
        // A disk hums and is slow: the system goes onto a drive that is bought.
        Slot slot = first && sort != DriveSort.DISK ? Slot.DRIVE : Slot.SECOND_DRIVE;
        return kept(sheet, slot, part, Integer.toString(gb));
    }

    private static Answer kept(Sheet sheet, Slot slot, Part part, String answer)
            throws NotUnderstood {
        List<Kept> kept = new ArrayList<>(sheet.brief().keep());
        if (kept.stream().anyMatch(other -> other.slot() == slot)) {
            throw new NotUnderstood(
                    part.name(),
                    Phrase.of("expected.no-further", kind(part)),
                    Phrase.of("advice.no-further.back"));
        }
        kept.add(new Kept(slot, part, 1));
        return new Answer(
                answer,
                sheet.draft().keep(kept).toBrief(),
                Phrase.of("then.parts-kept", part.name()));
    }

    private static int number(Sheet sheet, String question) {
        return Integer.parseInt(sheet.answers().get(question));
    }

    private static String word(String answer) {
        return answer.toUpperCase(Locale.ROOT);
    }

    private static <E extends Enum<E> & rigbrief.part.Word> E of(E[] values, String word) {
        for (E value : values) {
            if (value.word().equals(word)) {
                return value;
            }
        }
        throw new IllegalStateException("found no " + word + ", expected a word of the choices");
    }

    private static Listing listing(String id, String name) {
        int space = name.indexOf(' ');
        return new Listing(
                id,
                name.substring(0, space),
                name.substring(space + 1).strip(),
                "",
                "",
                Optional.empty(),
                Lighting.NONE,
                Fact.notStated(id, "mass_g"),
                OptionalInt.empty());
    }
}
