package rigbrief.file;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.brief.Kept;
import rigbrief.file.cell.Ids;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Text;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/** Reads the client's own parts: out of the catalogue, or as the file describes them. */
final class KeepSection {
    private static final int MOST_PIECES = 16;

    private final Names names;

    KeepSection(Names names) {
        this.names = names;
    }

    List<Kept> read(Keys root) {
        List<Kept> keep = new ArrayList<>();
        Set<Slot> filled = EnumSet.noneOf(Slot.class);
        for (Keys keys : root.listOfKeys("keep")) {
            Optional<Slot> slot = slot(keys, filled);
            int pieces = keys.cells().wholeOr("pieces", 1, MOST_PIECES, 1);
            keys.has("spec");
            keys.has("part");
            slot.flatMap(it -> part(keys, it))
                    .ifPresent(it -> keep.add(new Kept(slot.get(), it, pieces)));
            keys.finish();
        }
        return keep;
    }

    /** The slot that a mapping names; one that is filled already is reported. */
    static Optional<Slot> slot(Keys keys, Set<Slot> filled) {
        Optional<Slot> slot = keys.one("slot", Forms.word(Slot.class));
        if (slot.isPresent() && !filled.add(slot.get())) {
            keys.fault("slot", "each slot once", "put what is alike under one slot, with pieces");
        }
        return slot;
    }

    /** The part that a mapping names, or describes under {@code spec}. */
    Optional<Part> part(Keys keys, Slot slot) {
        Optional<Text> text = keys.text("part");
        Optional<Keys> spec = keys.keys("spec");
        if (spec.isPresent()) {
            return described(ownedId(keys, text, slot), slot, spec.get());
        }
        if (text.isEmpty() || text.get().text().equals(Ids.OWNED)) {
            keys.fault(
                    "part",
                    "the id of a part in the catalogue, or owned with its figures under spec",
                    "name the part, or describe it under spec");
            return Optional.empty();
        }
        return names.part(text.get(), slot);
    }

    /** Ids of described parts begin alike, so that none is taken for one of the catalogue's. */
    private static String ownedId(Keys keys, Optional<Text> text, Slot slot) {
        String given = text.map(Text::text).orElse(Ids.OWNED);
        if (text.isPresent() && keys.one("part", Forms::id).isEmpty()) {
            return Ids.OWNED;
        }
        if (given.equals(Ids.OWNED)) {
            return Ids.OWNED + "-" + slot.word();
        }
        return Ids.owned(given) ? given : Ids.OWNED + "-" + given;
    }

    static Optional<Part> described(String id, Slot slot, Keys spec) {
        Keys.DescribedPart described = spec.described(id);
        int before = spec.faultCount();
        Part part = slot.kind().read(described.cells());
        described.finish().run();
        if (spec.faultCount() == before) {
            PartChecks.check(part, described.row());
        }
        return Optional.of(part);
    }
}
