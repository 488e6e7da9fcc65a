package rigbrief.file;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.brief.Brief;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.build.PartState;
import rigbrief.build.SetAside;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Faults;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Text;
import rigbrief.file.tree.Tree;
import rigbrief.part.Cells;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/** Reads a build: a build file, or a plain list of part ids. */
public final class BuildReader {
    private static final int MOST_PIECES = 16;

    private final Known known;
    private final Catalogue catalogue;
    private final Names names;
    private final KeepSection parts;
    private final MoneyForm money;
    private final UnitsSection units;
    private final HistorySection history;

    private BuildReader(Known known) {
        this.known = known;
        this.catalogue = known.catalogue();
        this.money = new MoneyForm(catalogue.currency(), true);
        this.names = new Names(known);
        this.parts = new KeepSection(names);
        this.units = new UnitsSection(money);
        this.history = new HistorySection(money);
    }

    /**
     * Reads a file.
     *
     * <p>In a plain list (one id a line, or several with {@code ;} or {@code ,} between, perhaps
     * with {@code x2} behind, {@code #} before a remark) the parts go into the slots of their
     * kinds, and each has the supplier and price of its cheapest offer in stock.
     *
     * @param catalogue what the parts are looked up in
     * @throws BadInput with all faults of the file
     */
    public static BuildRecord read(Path path, Catalogue catalogue) throws BadInput {
        Faults faults = new Faults();
        return whole(read(path, Known.of(catalogue), faults), faults);
    }

    /**
     * Reads a stream to its end.
     *
     * @param file what the stream is called in faults
     * @throws BadInput with all faults of the text
     */
    public static BuildRecord read(InputStream in, String file, Catalogue catalogue)
            throws BadInput {
        Faults faults = new Faults();
        return whole(read(in, file, Known.of(catalogue), faults), faults);
    }

    /** Reads a file; empty where it, or the catalogue, has faults. */
    public static Optional<BuildRecord> read(Path path, Known known, Faults faults) {
        return read(SourceText.read(path, faults), known, faults);
    }

    /** Reads a stream to its end; empty where it, or the catalogue, has faults. */
    public static Optional<BuildRecord> read(
            InputStream in, String file, Known known, Faults faults) {
        return read(SourceText.readStream(in, file, faults), known, faults);
    }

    /**
     * The bytes of a build file, for whoever writes it back: read out of these and compared with
     * them, it has one state alone. Empty, with a fault, where it can't be read or is too large.
     */
    public static Optional<byte[]> bytes(Path path, Faults faults) {
        return SourceText.bytes(path, faults);
    }

    private static BuildRecord whole(Optional<BuildRecord> build, Faults faults) throws BadInput {
        faults.throwIfAny();
        return build.orElseThrow(() -> new IllegalStateException("no build and no fault"));
    }

    /** Whether a text is a plain list of part ids, not a build file. */
    public static boolean isPlainList(String text) {
        return PartsList.looksLikeOne(text);
    }

    private static Optional<BuildRecord> read(
            Optional<SourceText> source, Known known, Faults faults) {
        int before = faults.count();
        Optional<BuildRecord> build =
                source.flatMap(
                        it ->
                                PartsList.looksLikeOne(it.text())
                                        ? new PartsList(it, known, faults).read()
                                        : file(it, known, faults));
        return build.filter(any -> faults.count() == before && known.whole());
    }

    private static Optional<BuildRecord> file(SourceText source, Known known, Faults faults) {
        return Tree.read(source.file(), source.text(), faults)
                .map(root -> Keys.of(source.file(), root, faults))
                .map(keys -> new BuildReader(known).build(keys));
    }

    private BuildRecord build(Keys root) {
        root.one("schema", BuildReader::schema);
        Optional<String> tier = root.maybe("tier", Forms::id);
        Keys made = root.required("catalogue");
        String name = made.cells().text("name");
        String digest = made.cells().text("digest");
        made.finish();
        root.maybe("currency", this::currency);
        List<Placed> lines = lines(root);
        List<SetAside> aside = new AsideSection(units, money).read(root);
        List<HistoryEntry> done = history.read(root);
        Optional<Brief> brief = brief(root, lines);
        root.finish();
        lines.forEach(line -> line.checkUnits(brief.map(Brief::quantity).orElse(1)));
        return new BuildRecord(brief, tier, name, digest, read(lines), aside, done);
    }

    /** A line and where it stands, so that it can be complained of once the brief is known. */
    private record Placed(BuildLine line, Keys keys) {
        void checkUnits(int machines) {
            int wanted = line.pieces() * machines;
            int found =
                    line.units().stream()
                            .filter(units -> units.state() != PartState.RETURNED)
                            .mapToInt(Units::count)
                            .sum();
            if (!line.units().isEmpty() && found != wanted) {
                keys.fault(
                        "units",
                        "%d that are not returned, one for each piece of each machine"
                                .formatted(wanted),
                        "correct the counts, which make " + found);
            }
        }
    }

    private static List<BuildLine> read(List<Placed> placed) {
        return placed.stream().map(Placed::line).toList();
    }

    private static String schema(String entry) throws Cells.Malformed {
        if (!entry.equals(BuildWriter.SCHEMA)) {
            throw new Cells.Malformed(
                    BuildWriter.SCHEMA, "name a build file, or a plain list of part ids");
        }
        return entry;
    }

    private String currency(String entry) throws Cells.Malformed {
        String code = catalogue.currency().getCurrencyCode();
        if (!entry.equals(code) && known.whole()) {
            throw new Cells.Malformed(
                    code + ", the catalogue's currency",
                    "use the catalogue that the build was made from");
        }
        return entry;
    }

    private Optional<Brief> brief(Keys root, List<Placed> lines) {
        List<Part> own = lines.stream().map(placed -> placed.line().part()).toList();
        Optional<String> name = root.text("brief-name").map(Text::text);
        return root.keys("brief")
                .flatMap(
                        keys ->
                                new BriefReader(known, Names.filed(known, own))
                                        .brief(name.orElse(BriefReader.STREAM_NAME), keys));
    }

    private List<Placed> lines(Keys root) {
        if (!root.has("lines")) {
            root.fault("lines", "a list of parts", "write {slot, part, unit-price} for each");
        }
        List<Placed> lines = new ArrayList<>();
        Set<Slot> filled = EnumSet.noneOf(Slot.class);
        for (Keys keys : root.listOfKeys("lines")) {
            line(keys, filled).ifPresent(lines::add);
            keys.finish();
        }
        lines.sort(Comparator.comparing(placed -> placed.line().slot()));
        return lines;
    }

    private Optional<Placed> line(Keys keys, Set<Slot> filled) {
        Optional<Slot> slot = KeepSection.slot(keys, filled);
        int pieces = keys.cells().wholeOr("pieces", 1, MOST_PIECES, 1);
        Optional<String> supplier = supplier(keys);
        Optional<Money> price = keys.one("unit-price", money);
        PartState state = keys.cells().choiceOr("state", PartState.WANTED);
        boolean kept = keys.cells().yes("kept");
        List<Units> parted = units.read(keys);
        keys.has("part");
        keys.has("spec");
        Optional<Part> part = slot.flatMap(it -> part(keys, it));
        if (slot.isEmpty() || part.isEmpty() || price.isEmpty()) {
            return Optional.empty();
        }
        BuildLine line =
                new BuildLine(
                        slot.get(), part.get(), pieces, supplier, price.get(), state, kept, parted);
        return Optional.of(new Placed(line, keys));
    }

    /** The planned supplier; of what was ordered it may have left the catalogue since. */
    private Optional<String> supplier(Keys keys) {
        return keys.has(PartSheet.KEY)
                ? keys.maybe("supplier", Forms::id)
                : keys.text("supplier").filter(names::supplier).map(Text::text);
    }

    /** The part: as the catalogue has it; where it was withdrawn, as the file kept it. */
    private Optional<Part> part(Keys keys, Slot slot) {
        Optional<Text> text = keys.text("part");
        boolean gone =
                known.whole()
                        && !keys.has("spec")
                        && text.filter(it -> catalogue.part(it.text()).isEmpty()).isPresent();
        if (gone && keys.has(PartSheet.KEY)) {
            return PartSheet.read(keys, slot);
        }
        if (gone) {
            text.get()
                    .fault(
                            "a part that is still in the catalogue",
                            "name the catalogue that the build was made from (and for replace the"
                                    + " newer one with --against), or another part");
            return Optional.empty();
        }
        return parts.part(keys, slot);
    }
}
