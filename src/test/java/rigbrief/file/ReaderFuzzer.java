package rigbrief.file;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.part.Kind;

/**
 * The readers as a coverage-guided fuzzer calls them: any bytes, and no answer but a value or
 * faults with a place. The group is chosen by the system property {@code rigbrief.fuzz}; {@code mvn
 * -Pfuzz} runs it, see DEVELOPERS.md.
 *
 * <p>The last byte chooses among the readers of a group, so that a sound file is a sound case.
 */
public final class ReaderFuzzer {
    private static final Map<String, BiConsumer<byte[], Integer>> GROUPS = new TreeMap<>();
    private static final SpoiltCatalogue CATALOGUE = new SpoiltCatalogue();
    private static final Known KNOWN = Known.of(CATALOGUE.sound());
    private static final String CHOSEN = System.getProperty("rigbrief.fuzz", "trees");

    static {
        GROUPS.put("trees", ReaderFuzzer::trees);
        GROUPS.put("tables", ReaderFuzzer::tables);
        GROUPS.put("figures", ReaderFuzzer::figures);
        GROUPS.put("catalogues", ReaderFuzzer::catalogues);
        GROUPS.put("lists", ReaderFuzzer::lists);
        GROUPS.put("maps", ReaderFuzzer::maps);
    }

    private ReaderFuzzer() {}

    /** One case; whatever is thrown is a finding. */
    public static void fuzzerTestOneInput(byte[] data) {
        run(CHOSEN, data);
    }

    /** One case of a group. */
    static void run(String group, byte[] data) {
        if (data.length > 0) {
            int last = data.length - 1;
            GROUPS.get(group).accept(Arrays.copyOf(data, last), data[last] & 0xFF);
        }
    }

    /** The names of the groups. */
    static Set<String> groups() {
        return GROUPS.keySet();
    }

    private static InputStream stream(byte[] data) {
        return new ByteArrayInputStream(data);
    }

    private static String text(byte[] data) {
        return new String(data, StandardCharsets.UTF_8);
    }

    private static void checked(Faults faults, Optional<?> value) {
        for (Fault fault : faults.all()) {
            if (fault.line() < 1 || fault.column() < 1 || fault.subject().isEmpty()) {
                throw new AssertionError("a fault without a place: " + fault);
            }
            if (fault.text().chars().anyMatch(Character::isISOControl)) {
                throw new AssertionError("a fault that acts: " + fault);
            }
        }
        if (value.isEmpty() && faults.count() == 0) {
            throw new AssertionError("neither a value nor a fault");
        }
    }

    /** Briefs, builds, lists of parts; YAML and JSON. */
    private static void trees(byte[] data, int choice) {
        Faults faults = new Faults();
        Optional<?> value =
                choice % 2 == 0
                        ? BriefReader.read(stream(data), "f", KNOWN, faults)
                        : BuildReader.read(stream(data), "f", KNOWN, faults);
        checked(faults, value);
    }

    /** Parts of each kind. */
    private static void tables(byte[] data, int choice) {
        Faults faults = new Faults();
        Kind kind = Kind.values()[choice / 2 % Kind.values().length];
        String header = FolderFixture.aFolder().text(kind.fileName()).lines().findFirst().get();
        // Half of the cases begin behind a sound header, which chance would take long to find.
        String text = choice % 2 == 0 ? header + "\n" + text(data) : text(data);
        KindFile parts = new KindFile(faults);
        parts.read(kind, new SourceText("f", text, ""));
        checked(faults, Optional.of(parts.parts()));
    }

    /** Frame-time logs and measurements. */
    private static void figures(byte[] data, int choice) {
        Faults faults = new Faults();
        if (choice % 2 == 0) {
            try {
                FrameLogReader.read(stream(data), "f", FrameColumn.usual());
            } catch (BadInput bad) {
                faults.addAll(bad);
            }
        } else {
            String header = "workload,resolution,preset,rays,upscaling,average_fps,low_fps,seconds";
            String text = choice < 128 ? header + "\n" + text(data) : text(data);
            SourceText source = new SourceText("f", text, "");
            Path nowhere = Path.of("no-such-folder");
            MeasurementReader.ofBuild(source, nowhere, KNOWN, FrameColumn.usual(), faults);
        }
        checked(faults, Optional.of(data));
    }

    /** Offers, superseded offers, workloads, a catalogue's head, overlays. */
    private static void catalogues(byte[] data, int choice) {
        Faults faults = new Faults();
        checked(faults, CATALOGUE.read(data, choice, faults));
    }

    /** Price lists, under maps of several forms, and what is made of the sound ones. */
    private static void lists(byte[] data, int choice) {
        Faults faults = new Faults();
        checked(faults, CATALOGUE.takeIn(data, CATALOGUE.map(choice), faults));
    }

    /** Maps, and what one list is under the sound ones. */
    private static void maps(byte[] data, int choice) {
        Faults faults = new Faults();
        Optional<PriceListMap> map = CATALOGUE.readMap(data, faults);
        checked(faults, map);
        if (map.isPresent()) {
            checked(faults, CATALOGUE.takeIn(CATALOGUE.list(choice), map.get(), faults));
        }
    }
}
