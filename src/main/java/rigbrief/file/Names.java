package rigbrief.file;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Supplier;
import rigbrief.catalogue.Workload;
import rigbrief.diagnostic.Nearest;
import rigbrief.file.cell.Ids;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Text;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * Looks up what a file names; what a catalogue does not know is reported with the nearest name. Of
 * a catalogue that is not whole nothing is found, and nothing is said.
 */
final class Names {
    private final Catalogue catalogue;
    private final boolean whole;
    private final Map<String, Part> withdrawn = new TreeMap<>();
    private final boolean filed;

    Names(Known known) {
        this(known, List.of(), false);
    }

    private Names(Known known, List<Part> own, boolean filed) {
        this.catalogue = known.catalogue();
        this.whole = known.whole();
        this.filed = filed;
        own.forEach(part -> withdrawn.put(part.id(), part));
    }

    /**
     * Names for the brief in a build file, which may be older than the catalogue.
     *
     * @param own parts that the build file knows itself; they are found where the catalogue has
     *     lost them
     */
    static Names filed(Known known, List<Part> own) {
        return new Names(known, own, true);
    }

    private Optional<Part> find(String id) {
        return catalogue.part(id).or(() -> Optional.ofNullable(withdrawn.get(id)));
    }

    /** A workload of the catalogue. */
    Optional<Workload> workload(Text text) {
        Optional<Workload> workload = catalogue.workload(text.text());
        if (workload.isEmpty() && whole) {
            text.unknown(
                    "a workload of the catalogue",
                    catalogue.workloads().stream().map(Workload::id).toList());
        }
        return workload;
    }

    /** The ids of the workloads that a list names. */
    List<String> workloads(Keys keys, String key) {
        return keys.texts(key).stream()
                .map(this::workload)
                .flatMap(Optional::stream)
                .map(Workload::id)
                .toList();
    }

    /** A part of the catalogue, of whatever kind. */
    Optional<Part> part(Text text) {
        Optional<Part> part = find(text.text());
        if (part.isEmpty() && whole) {
            text.unknown("the id of a part in the catalogue", ids(Arrays.asList(Kind.values())));
        }
        return part;
    }

    /**
     * The ids of the parts that a list of parts to avoid names. In a filed brief one that the
     * catalogue has lost since is kept: it is avoided all the same.
     */
    List<String> avoided(Keys keys, String key) {
        return keys.texts(key).stream()
                .filter(text -> filed && Ids.wellFormed(text.text()) || part(text).isPresent())
                .map(Text::text)
                .toList();
    }

    /** A part of the catalogue that goes into a slot. */
    Optional<Part> part(Text text, Slot slot) {
        if (!whole) {
            return Optional.empty();
        }
        Optional<Part> part = find(text.text());
        if (part.isEmpty()) {
            text.unknown(
                    "the id of a %s in the catalogue".formatted(slot.kind().word()),
                    ids(List.of(slot.kind())));
        } else if (part.get().kind() != slot.kind()) {
            wrongKind(text, part.get(), slot);
            return Optional.empty();
        }
        return part;
    }

    private static void wrongKind(Text text, Part part, Slot slot) {
        text.fault(
                "a part of kind %s, and this is a %s"
                        .formatted(slot.kind().word(), part.kind().word()),
                "correct the slot or the part");
    }

    /** The ids of the suppliers that a list names. */
    List<String> suppliers(Keys keys, String key) {
        return keys.texts(key).stream().filter(this::supplier).map(Text::text).toList();
    }

    /** Whether a supplier is in the catalogue; reported if not. */
    boolean supplier(Text text) {
        if (!whole) {
            return false;
        }
        List<String> ids = catalogue.suppliers().stream().map(Supplier::id).toList();
        return among(text, "a supplier of the catalogue", ids);
    }

    /** Whether a name is one of several; reported if not. */
    static boolean among(Text text, String what, List<String> names) {
        if (!names.contains(text.text())) {
            text.unknown(what, names);
        }
        return names.contains(text.text());
    }

    /**
     * The makers that a list names. A maker without a part in the catalogue is no fault, unless it
     * looks like one misspelt.
     */
    List<String> makers(Keys keys, String key) {
        List<Text> texts = keys.texts(key);
        Map<String, String> byLowerCase = new TreeMap<>();
        if (!texts.isEmpty()) {
            all(Arrays.asList(Kind.values()))
                    .forEach(part -> byLowerCase.put(lower(maker(part)), maker(part)));
        }
        texts.forEach(text -> checkMaker(text, byLowerCase));
        return texts.stream().map(Text::text).toList();
    }

    private static void checkMaker(Text text, Map<String, String> byLowerCase) {
        String meant =
                Nearest.to(lower(text.text()), byLowerCase.keySet())
                        .map(byLowerCase::get)
                        .orElse(text.text());
        if (!meant.equals(text.text())) {
            text.fault(
                    "the name of a maker as the catalogue has it", "did you mean " + meant + "?");
        }
    }

    private static String maker(Part part) {
        return part.listing().maker();
    }

    private static String lower(String text) {
        return text.toLowerCase(java.util.Locale.ROOT);
    }

    private List<String> ids(List<Kind> kinds) {
        return all(kinds).stream().map(Part::id).toList();
    }

    private List<Part> all(List<Kind> kinds) {
        return kinds.stream().flatMap(kind -> catalogue.parts(kind).stream()).toList();
    }
}
