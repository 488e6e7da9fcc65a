package rigbrief.intake;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.Kept;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.Nearest;
import rigbrief.part.FrontPort;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;

/** What it has to have, what is there already, what is not wanted. */
final class PartSteps {
    private static final String FITTINGS = "What it has to have";
    private static final String OWN = "What is there already";

    /** Key of the parts kept. */
    static final String KEPT = "parts-kept";

    private static final int MOST_SHOWN = 5;
    private static final int MOST_GB = 200_000;

    private PartSteps() {}

    static List<Question> fittings(Sheet sheet) {
        return List.of(
                Asking.about(FITTINGS, "storage")
                        .ask(
                                "How much room for files, at the least? In gigabytes"
                                        + " (GB), of which each holds about 300 photographs; a"
                                        + " number of your own may be typed.")
                        .explain(
                                "One GB also holds about a quarter of an hour of"
                                        + " fine film. Room for the games and programs you chose"
                                        + " is reckoned as well; whichever is more counts.")
                        .choices(Levels.STORAGE)
                        .usual("500")
                        .read(typed -> storage(sheet, typed)),
                Asking.about(FITTINGS, "wireless")
                        .ask("Does it need Wi-Fi, the network without a cable?")
                        .explain(
                                "Without Wi-Fi a cable must run to the box that brings"
                                        + " the internet. Wi-Fi mostly brings Bluetooth along,"
                                        + " for headphones without a cable.")
                        .choices(Levels.WIRELESS)
                        .usual("wish")
                        .readChoice(choice -> wireless(sheet, choice)),
                Asking.about(FITTINGS, "front-sockets")
                        .ask(
                                "Which sockets shall be on the front of the case? Type"
                                        + " their numbers, or none.")
                        .explain(
                                "Sockets on the front are within reach; there are"
                                        + " always some at the back.")
                        .choices(Levels.FRONT_PORTS)
                        .several()
                        .usual(Entries.NONE)
                        .read(typed -> front(sheet, typed)),
                Asking.about(FITTINGS, "system")
                        .ask(
                                "Shall an operating system, the program that runs all"
                                        + " others, be bought with it?")
                        .explain(
                                "Without an operating system a computer does nothing."
                                        + " Some are free, others need a licence, a right of use,"
                                        + " for each computer.")
                        .choices(Levels.SYSTEM)
                        .usual(Entries.NONE)
                        .readChoice(
                                choice ->
                                        sheet.draft()
                                                .system(
                                                        new Brief.SystemNeed(
                                                                strength(choice), Optional.empty()))
                                                .toBrief()));
    }

    private static Answer storage(Sheet sheet, String typed) throws NotUnderstood {
        String plain = typed.strip().toLowerCase(Locale.ROOT).replaceFirst(" ?gb$", "");
        Optional<Choice> choice = Entries.find(Levels.STORAGE, plain);
        int gb =
                choice.isPresent()
                        ? Integer.parseInt(choice.get().word())
                        : Entries.whole(plain, 0, MOST_GB);
        Brief.StorageNeed old = sheet.brief().storage();
        return new Answer(
                Integer.toString(gb),
                sheet.draft()
                        .storage(new Brief.StorageNeed(gb, old.roomFor(), old.years()))
                        .toBrief(),
                "At least %d GB, and room for what was chosen with %d years of growth."
                        .formatted(gb, old.years()));
    }

    private static Strength strength(Choice choice) {
        return Strength.valueOf(choice.word().toUpperCase(Locale.ROOT));
    }

    private static Brief wireless(Sheet sheet, Choice choice) {
        Strength strength = strength(choice);
        WirelessStandard oldest =
                strength == Strength.NONE ? WirelessStandard.NONE : WirelessStandard.WIFI5;
        return sheet.draft().wireless(new Brief.Wireless(strength, oldest)).toBrief();
    }

    private static Answer front(Sheet sheet, String typed) throws NotUnderstood {
        List<Choice> named = Entries.choices(Levels.FRONT_PORTS, typed);
        List<FrontPort> ports = new ArrayList<>();
        for (FrontPort port : FrontPort.values()) {
            if (named.stream().anyMatch(choice -> choice.word().equals(port.word()))) {
                ports.add(port);
            }
        }
        return new Answer(
                Entries.words(named),
                sheet.draft().frontPorts(ports).toBrief(),
                ports.isEmpty()
                        ? "The front decides nothing."
                        : "Cases without them are left out, and the board must feed them.");
    }

    static List<Question> owned(Sheet sheet) {
        List<String> names =
                sheet.catalogue().parts(Kind.CASE).isEmpty() ? List.of() : named(sheet.catalogue());
        return List.of(
                Asking.about(OWN, KEPT)
                        .ask(
                                "Which parts are there already and shall be used? Type"
                                        + " their names with commas between them, or none.")
                        .explain(
                                "A part that is kept costs nothing, and everything"
                                        + " else is fitted to it. The names are on the parts and"
                                        + " on old bills; part of a name will do if it is plain"
                                        + " which is meant. For a power supply or a drive that"
                                        + " this catalogue does not know type other supply or other"
                                        + " drive: its figures are asked for next. Any other part is"
                                        + " described in the file later, under keep.")
                        .names(names)
                        .usual(Entries.NONE)
                        .read(typed -> keep(sheet, typed)));
    }

    static List<Question> avoided(Sheet sheet) {
        return List.of(
                Asking.about(OWN, "makers-avoided")
                        .ask(
                                "Are there makers whose parts you do not want? Type"
                                        + " their names with commas between them, or none.")
                        .explain("Parts of these makers are left out wherever they would stand.")
                        .names(makers(sheet.catalogue()))
                        .usual(Entries.NONE)
                        .read(typed -> avoid(sheet, typed)));
    }

    private static List<Part> parts(Catalogue catalogue) {
        List<Part> parts = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            parts.addAll(catalogue.parts(kind));
        }
        return parts;
    }

    /** What may be typed: every part, and the sorts that are described. */
    private static List<String> named(Catalogue catalogue) {
        List<String> named = new ArrayList<>(names(catalogue));
        named.addAll(OwnSteps.SORTS);
        return named;
    }

    private static List<String> names(Catalogue catalogue) {
        return parts(catalogue).stream().map(Part::name).distinct().toList();
    }

    static List<String> makers(Catalogue catalogue) {
        return parts(catalogue).stream()
                .map(part -> part.listing().maker())
                .distinct()
                .sorted()
                .toList();
    }

    private static Answer keep(Sheet sheet, String typed) throws NotUnderstood {
        List<Kept> kept = new ArrayList<>();
        Set<String> described = new LinkedHashSet<>();
        if (!Entries.none(typed)) {
            for (String entry : typed.split("[,;]")) {
                String plain = entry.strip().toLowerCase(Locale.ROOT);
                if (OwnSteps.SORTS.contains(plain)) {
                    described.add(plain);
                } else if (!entry.isBlank()) {
                    add(kept, part(sheet.catalogue(), entry.strip()));
                }
            }
        }
        List<String> names = kept.stream().map(each -> each.part().name()).toList();
        List<String> all = new ArrayList<>(ids(kept));
        all.addAll(described);
        String consequence =
                described.isEmpty()
                        ? "Everything is bought new."
                        : "You will be asked for its figures.";
        return new Answer(
                all.isEmpty() ? Entries.NONE : String.join(", ", all),
                sheet.draft().keep(kept).toBrief(),
                kept.isEmpty()
                        ? consequence
                        : "%s will be used and not paid for.".formatted(Plain.list(names)));
    }

    /** Each id as often as there are pieces, so that the answer reads back as it was meant. */
    private static List<String> ids(List<Kept> kept) {
        List<String> ids = new ArrayList<>();
        kept.forEach(each -> ids.addAll(Collections.nCopies(each.pieces(), each.part().id())));
        return ids;
    }

    /** Each part into the first free slot of its kind; the same part again is one piece more. */
    private static void add(List<Kept> kept, Part part) throws NotUnderstood {
        for (int i = 0; i < kept.size(); i++) {
            if (kept.get(i).part().id().equals(part.id())) {
                kept.set(i, new Kept(kept.get(i).slot(), part, kept.get(i).pieces() + 1));
                return;
            }
        }
        for (Slot slot : Slot.values()) {
            if (slot.kind() == part.kind()
                    && kept.stream().noneMatch(each -> each.slot() == slot)) {
                kept.add(new Kept(slot, part, 1));
                return;
            }
        }
        throw new NotUnderstood(
                part.name(),
                "no further %s, since a computer has no place for it".formatted(part.kind().word()),
                "leave one out");
    }

    private static Part part(Catalogue catalogue, String entry) throws NotUnderstood {
        String wanted = entry.toLowerCase(Locale.ROOT);
        List<Part> holding = new ArrayList<>();
        for (Part part : parts(catalogue)) {
            if (part.id().equals(wanted) || part.name().toLowerCase(Locale.ROOT).equals(wanted)) {
                return part;
            }
            if (part.name().toLowerCase(Locale.ROOT).contains(wanted)) {
                holding.add(part);
            }
        }
        if (holding.size() == 1) {
            return holding.get(0);
        }
        throw new NotUnderstood(entry, "the name of a part", meant(catalogue, holding, entry));
    }

    private static String meant(Catalogue catalogue, List<Part> holding, String entry) {
        if (holding.isEmpty()) {
            return Nearest.to(entry, names(catalogue))
                    .map(name -> "did you mean " + name + "?")
                    .orElse("leave it out, since the catalogue knows none of that name");
        }
        List<String> shown = holding.stream().limit(MOST_SHOWN).map(Part::name).toList();
        int more = holding.size() - shown.size();
        return "type more of the name: it may be %s%s"
                .formatted(String.join(", ", shown), more > 0 ? " or %d more".formatted(more) : "");
    }

    private static Answer avoid(Sheet sheet, String typed) throws NotUnderstood {
        Set<String> named = new LinkedHashSet<>();
        if (!Entries.none(typed)) {
            for (String entry : typed.split("[,;]")) {
                if (!entry.isBlank()) {
                    named.add(maker(makers(sheet.catalogue()), entry.strip()));
                }
            }
        }
        List<String> makers = List.copyOf(named);
        return new Answer(
                makers.isEmpty() ? Entries.NONE : String.join(", ", makers),
                sheet.draft().avoid(new Brief.Avoid(makers, List.of())).toBrief(),
                makers.isEmpty()
                        ? "Every maker will do."
                        : "Nothing of %s is chosen.".formatted(Plain.list(makers)));
    }

    private static String maker(List<String> makers, String entry) throws NotUnderstood {
        for (String maker : makers) {
            if (maker.equalsIgnoreCase(entry)) {
                return maker;
            }
        }
        throw new NotUnderstood(
                entry,
                "a maker in the catalogue",
                Nearest.to(entry, makers)
                        .map(maker -> "did you mean " + maker + "?")
                        .orElse("leave it out, since nothing of it is sold here"));
    }
}
