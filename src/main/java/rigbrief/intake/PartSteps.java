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
import rigbrief.wording.Phrase;

/** What it has to have, what is there already, what is not wanted. */
final class PartSteps {
    private static final String FITTINGS = "fittings";
    private static final String OWN = "own";

    /** Key of the parts kept. */
    static final String KEPT = "parts-kept";

    private static final int MOST_SHOWN = 5;
    private static final int MOST_GB = 200_000;

    private PartSteps() {}

    static List<Question> fittings(Sheet sheet) {
        return List.of(
                Asking.about(FITTINGS, "storage")
                        .choices(Levels.STORAGE)
                        .usual("500")
                        .read(typed -> storage(sheet, typed)),
                Asking.about(FITTINGS, "wireless")
                        .choices(Levels.WIRELESS)
                        .usual("wish")
                        .readChoice(choice -> wireless(sheet, choice)),
                Asking.about(FITTINGS, "front-sockets")
                        .choices(Levels.FRONT_PORTS)
                        .several()
                        .usual(Entries.NONE)
                        .read(typed -> front(sheet, typed)),
                Asking.about(FITTINGS, "system")
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
                Phrase.of("then.storage", gb, old.years()));
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
                        ? Phrase.of("then.front-sockets.none")
                        : Phrase.of("then.front-sockets"));
    }

    static List<Question> owned(Sheet sheet) {
        List<String> names =
                sheet.catalogue().parts(Kind.CASE).isEmpty() ? List.of() : named(sheet.catalogue());
        return List.of(
                Asking.about(OWN, KEPT)
                        .names(names)
                        .usual(Entries.NONE)
                        .read(typed -> keep(sheet, typed)));
    }

    static List<Question> avoided(Sheet sheet) {
        return List.of(
                Asking.about(OWN, "makers-avoided")
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
        OwnSteps.SORTS.forEach(sort -> named.addAll(Plain.spoken(OwnSteps.called(sort))));
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
                Optional<String> sort = OwnSteps.sort(entry);
                if (sort.isPresent()) {
                    described.add(sort.get());
                } else if (!entry.isBlank()) {
                    add(kept, part(sheet.catalogue(), entry.strip()));
                }
            }
        }
        List<String> names = kept.stream().map(each -> each.part().name()).toList();
        List<String> all = new ArrayList<>(ids(kept));
        all.addAll(described);
        Phrase consequence =
                Phrase.of(
                        described.isEmpty() ? "then.parts-kept.none" : "then.parts-kept.described");
        return new Answer(
                all.isEmpty() ? Entries.NONE : String.join(", ", all),
                sheet.draft().keep(kept).toBrief(),
                kept.isEmpty() ? consequence : Phrase.of("then.parts-kept", Plain.list(names)));
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
                Phrase.of("expected.no-further", OwnSteps.kind(part)),
                Phrase.of("advice.no-further"));
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
        throw new NotUnderstood(
                entry, Phrase.of("expected.part"), meant(catalogue, holding, entry));
    }

    private static Phrase meant(Catalogue catalogue, List<Part> holding, String entry) {
        if (holding.isEmpty()) {
            return Nearest.to(entry, names(catalogue))
                    .map(Entries::meant)
                    .orElse(Phrase.of("advice.part"));
        }
        List<String> shown = holding.stream().limit(MOST_SHOWN).map(Part::name).toList();
        int more = holding.size() - shown.size();
        return Phrase.of("advice.part.more", String.join(", ", shown), more);
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
                        ? Phrase.of("then.makers-avoided.none")
                        : Phrase.of("then.makers-avoided", Plain.list(makers)));
    }

    private static String maker(List<String> makers, String entry) throws NotUnderstood {
        for (String maker : makers) {
            if (maker.equalsIgnoreCase(entry)) {
                return maker;
            }
        }
        throw new NotUnderstood(
                entry,
                Phrase.of("expected.maker"),
                Nearest.to(entry, makers).map(Entries::meant).orElse(Phrase.of("advice.maker")));
    }
}
