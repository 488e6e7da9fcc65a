package rigbrief.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.Expectation;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/** Reads a plain list of part ids. */
final class PartsList {
    private static final int MOST_PIECES = 16;
    private static final Pattern ENTRY = Pattern.compile("[^;,]+");
    private static final Pattern COUNTED = Pattern.compile("(.*\\S)\\s+x([0-9]{1,4})");

    private final SourceText source;
    private final Catalogue catalogue;
    private final boolean whole;
    private final Faults faults;
    private final Map<Slot, Filled> slots = new EnumMap<>(Slot.class);
    private boolean any;

    PartsList(SourceText source, Known known, Faults faults) {
        this.source = source;
        this.catalogue = known.catalogue();
        this.whole = known.whole();
        this.faults = faults;
    }

    private record Filled(Part part, int pieces) {}

    /** An id and where it stands. */
    private record Entry(String id, int pieces, int line, int column) {}

    /** Whether a text is a list: its first line that says anything has neither colon nor brace. */
    static boolean looksLikeOne(String text) {
        return text.lines()
                .map(PartsList::withoutRemark)
                .filter(line -> !line.isBlank())
                .findFirst()
                .map(
                        line ->
                                line.indexOf(':') < 0
                                        && line.indexOf('{') < 0
                                        && !line.startsWith("---"))
                .orElse(true);
    }

    private static String withoutRemark(String line) {
        int mark = line.indexOf('#');
        return mark < 0 ? line : line.substring(0, mark);
    }

    Optional<BuildRecord> read() {
        int number = 0;
        for (String line : source.text().lines().toList()) {
            number++;
            Matcher matcher = ENTRY.matcher(withoutRemark(line));
            while (matcher.find()) {
                entry(matcher.group(), number, matcher.start() + 1);
            }
        }
        if (!any) {
            add(new Entry("", 1, 1, 1), "at least one part id", "write one a line");
        }
        List<BuildLine> lines = new ArrayList<>();
        slots.forEach((slot, filled) -> lines.add(line(slot, filled)));
        return Optional.of(
                new BuildRecord(
                        Optional.empty(),
                        Optional.empty(),
                        catalogue.name(),
                        catalogue.digest(),
                        lines));
    }

    private void entry(String text, int line, int start) {
        String entry = text.strip();
        if (entry.isEmpty()) {
            return;
        }
        any = true;
        int column = start + text.indexOf(entry);
        Matcher counted = COUNTED.matcher(entry);
        boolean many = counted.matches();
        int pieces = many ? Integer.parseInt(counted.group(2)) : 1;
        Entry read = new Entry(many ? counted.group(1) : entry, pieces, line, column);
        if (pieces < 1 || pieces > MOST_PIECES) {
            add(read, "a number of pieces from 1 to " + MOST_PIECES, "correct the number behind x");
            return;
        }
        catalogue.part(read.id()).ifPresentOrElse(part -> place(part, read), () -> unknown(read));
    }

    private void place(Part part, Entry entry) {
        int left = entry.pieces();
        for (Slot slot : Slot.values()) {
            boolean free = slot.kind() == part.kind() && !slots.containsKey(slot);
            if (free && left > 0) {
                int here = part.kind() == Kind.DRIVE ? 1 : left;
                slots.put(slot, new Filled(part, here));
                left -= here;
            }
        }
        if (left > 0 && !heap(part, left)) {
            String kind = part.kind().word();
            add(
                    entry,
                    "no more %s than there are slots".formatted(kind),
                    "take one %s out".formatted(kind));
        }
    }

    /** More of what a slot holds already; drives do not heap, each has a slot of its own. */
    private boolean heap(Part part, int pieces) {
        for (Map.Entry<Slot, Filled> each : slots.entrySet()) {
            Filled filled = each.getValue();
            int together = filled.pieces() + pieces;
            boolean same = filled.part().id().equals(part.id()) && part.kind() != Kind.DRIVE;
            if (same && together <= MOST_PIECES) {
                each.setValue(new Filled(part, together));
                return true;
            }
        }
        return false;
    }

    private BuildLine line(Slot slot, Filled filled) {
        Optional<Offer> cheapest =
                catalogue.offers(filled.part().id()).stream()
                        .filter(offer -> offer.stock() >= filled.pieces())
                        .min(Comparator.comparing(Offer::price));
        return new BuildLine(
                slot,
                filled.part(),
                filled.pieces(),
                cheapest.map(Offer::supplier),
                cheapest.map(Offer::price).orElse(Money.zero(catalogue.currency())),
                PartState.WANTED,
                false);
    }

    private void unknown(Entry entry) {
        if (!whole) {
            return;
        }
        List<String> ids = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            catalogue.parts(kind).forEach(part -> ids.add(part.id()));
        }
        Expectation one = Expectation.name(entry.id(), "the id of a part in the catalogue", ids);
        add(entry, one.text(), one.advice());
    }

    private void add(Entry entry, String expected, String advice) {
        faults.add(
                new Fault(
                        source.file(),
                        entry.line(),
                        entry.column(),
                        "part",
                        entry.id(),
                        expected,
                        advice));
    }
}
