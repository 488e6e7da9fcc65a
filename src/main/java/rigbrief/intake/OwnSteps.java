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

    private static final String TOPIC = "The part that is there";
    private static final String UNKNOWN = "unknown";

    /** Levels of a usual supply at 20, 50 and 100 % of its load, in dB(A): those of a brief. */
    private static final double[] SUPPLY_DBA = {20, 24, 34};

    /** A disk at work, in dB(A). Common practice. */
    private static final double DISK_DBA = 28;

    private static final List<Choice> FORMS =
            List.of(
                    new Choice("atx", "ATX", "the usual size, 150 mm wide and 86 mm high"),
                    new Choice("sfx", "SFX", "the small size, 125 mm wide"),
                    new Choice("sfx-l", "SFX-L", "the small size, longer"));

    /** Efficiencies of the 80 PLUS programme at 115 V and half load. */
    private static final List<Choice> LABELS =
            List.of(
                    new Choice("none", "none", "no 80 PLUS label on it"),
                    label("80plus", "80 PLUS", 80),
                    label("bronze", "80 PLUS Bronze", 85),
                    label("silver", "80 PLUS Silver", 88),
                    label("gold", "80 PLUS Gold", 90),
                    label("platinum", "80 PLUS Platinum", 92),
                    label("titanium", "80 PLUS Titanium", 94));

    /** Speeds are those that drives of the sort reach at the least. Common practice. */
    private enum DriveSort {
        M2(
                "m2",
                "bare stick, M.2",
                "plugs flat onto the board",
                DriveForm.M2_2280,
                Bus.GEN3X4,
                2_000),
        SSD("ssd", "flat box, 2.5 inches", "no noise, two cables", DriveForm.BAY_25, Bus.SATA, 500),
        DISK("disk", "heavy box, 3.5 inches", "hums, two cables", DriveForm.BAY_35, Bus.SATA, 150);

        private final Choice choice;
        private final DriveForm form;
        private final Bus bus;
        private final int speedMbs;

        DriveSort(
                String word, String label, String meaning, DriveForm form, Bus bus, int speedMbs) {
            this.choice = new Choice(word, label, meaning);
            this.form = form;
            this.bus = bus;
            this.speedMbs = speedMbs;
        }
    }

    private OwnSteps() {}

    private static Choice label(String word, String name, int percent) {
        return new Choice(word, name, "at half load %d %% of the power arrives".formatted(percent));
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
                name(sheet, "own-supply-name", "the power supply", "Unknown supply"),
                Asking.about(TOPIC, "own-supply-watts")
                        .ask("How many watts does the power supply's label state in all?")
                        .explain("The power it gives, the largest number of watts on its label.")
                        .usual("500")
                        .read(typed -> whole(sheet, typed, 100, 3_000, "It gives %d W.")),
                Asking.about(TOPIC, "own-supply-form")
                        .ask("Which size is the power supply?")
                        .explain("The case must take its body.")
                        .choices(FORMS)
                        .usual("atx")
                        .readChoice(choice -> sheet.brief()),
                Asking.about(TOPIC, "own-supply-length")
                        .ask("How long is it, in millimetres, without its plugs? Or unknown.")
                        .explain(
                                "Measured from the side with the switch to the side with the leads."
                                        + " Unknown leaves a caution that it has to be measured.")
                        .usual(UNKNOWN)
                        .read(typed -> length(sheet, typed)),
                Asking.about(TOPIC, "own-supply-efficiency")
                        .ask("Which efficiency label does it carry?")
                        .explain("80 PLUS labels say how much of the power is lost as heat.")
                        .choices(LABELS)
                        .usual("none")
                        .readChoice(choice -> sheet.brief()),
                count(sheet, "own-supply-eps8", "8-pin plugs for the processor", 0, 4, "1"),
                count(sheet, "own-supply-8pin", "6+2-pin plugs for graphics cards", 0, 12, "2"),
                count(sheet, "own-supply-12v2x6", "12V-2x6 plugs, flat with 16 pins", 0, 4, "0"),
                Asking.about(TOPIC, "own-supply-sata")
                        .ask("How many SATA power plugs, flat and L-shaped, does it have?")
                        .explain(PLUGS)
                        .usual("4")
                        .read(typed -> supply(sheet, typed)));
    }

    private static final String PLUGS =
            "Each part plugs into a lead of its own, so the plugs are counted. Count those on the"
                    + " leads that belong to it.";

    private static Question count(
            Sheet sheet, String id, String what, int least, int most, String usual) {
        return Asking.about(TOPIC, id)
                .ask("How many " + what + ", does it have?")
                .explain(PLUGS)
                .usual(usual)
                .read(typed -> whole(sheet, typed, least, most, "%d are counted on."));
    }

    private static Question name(Sheet sheet, String id, String what, String usual) {
        return Asking.about(TOPIC, id)
                .ask("Who made " + what + ", and what is it called? Maker and model.")
                .explain("As on its label; both stand on the proposal.")
                .usual(usual)
                .read(
                        typed -> {
                            String name = Entries.text(typed, "a maker and a model");
                            if (!name.contains(" ")) {
                                throw new NotUnderstood(
                                        name,
                                        "a maker and a model with a space between",
                                        "write both as on the label");
                            }
                            return new Answer(name, sheet.brief(), name + " is kept.");
                        });
    }

    private static Answer whole(Sheet sheet, String typed, int least, int most, String told)
            throws NotUnderstood {
        int number = Entries.whole(typed.strip(), least, most);
        return new Answer(Integer.toString(number), sheet.brief(), told.formatted(number));
    }

    private static Answer length(Sheet sheet, String typed) throws NotUnderstood {
        String plain = typed.strip().toLowerCase(Locale.ROOT).replaceFirst(" ?mm$", "");
        if (plain.equals(UNKNOWN)) {
            return new Answer(UNKNOWN, sheet.brief(), "It will have to be measured.");
        }
        return whole(sheet, plain, 80, 300, "It is %d mm long.");
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
                name(sheet, "own-drive-name", "the drive", "Unknown drive"),
                Asking.about(TOPIC, "own-drive-sort")
                        .ask("What does the drive look like?")
                        .explain("It tells where it goes and about how fast it is.")
                        .choices(sorts)
                        .usual("ssd")
                        .readChoice(choice -> sheet.brief()),
                Asking.about(TOPIC, "own-drive-gb")
                        .ask("How many gigabytes (GB) does it hold? 1 TB is 1000 GB.")
                        .explain("It stands on its label, and in the computer it comes from.")
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
                    "no further %s, since a computer has no place for it"
                            .formatted(part.kind().word()),
                    "go back and leave one out");
        }
        kept.add(new Kept(slot, part, 1));
        return new Answer(
                answer,
                sheet.draft().keep(kept).toBrief(),
                "%s will be used and not paid for.".formatted(part.name()));
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
