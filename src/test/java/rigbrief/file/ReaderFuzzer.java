package rigbrief.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.part.Kind;

/**
 * The readers as a coverage-guided fuzzer calls them: any bytes, and no answer but a value or
 * faults with a place. The group is chosen by the system property {@code rigbrief.fuzz}; {@code mvn
 * -Pfuzz} runs it, see DEVELOPERS.md.
 */
public final class ReaderFuzzer {
    private static final Map<String, Consumer<byte[]>> GROUPS = new TreeMap<>();
    private static final Known KNOWN = Known.of(catalogue());
    private static final Consumer<byte[]> CHOSEN;

    static {
        GROUPS.put("trees", ReaderFuzzer::trees);
        GROUPS.put("tables", ReaderFuzzer::tables);
        GROUPS.put("figures", ReaderFuzzer::figures);
        CHOSEN = GROUPS.get(System.getProperty("rigbrief.fuzz", "trees"));
    }

    private ReaderFuzzer() {}

    /** One case; whatever is thrown is a finding. */
    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length > 0) {
            CHOSEN.accept(data);
        }
    }

    private static Catalogue catalogue() {
        try {
            Path folder = Files.createTempDirectory("rigbrief-fuzz");
            return CatalogueReader.read(FolderFixture.aFolder().write(folder));
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static InputStream behindFirst(byte[] data) {
        return new ByteArrayInputStream(data, 1, data.length - 1);
    }

    private static SourceText text(byte[] data) {
        byte[] rest = Arrays.copyOfRange(data, 1, data.length);
        return new SourceText("f", new String(rest, StandardCharsets.UTF_8), "");
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
    private static void trees(byte[] data) {
        Faults faults = new Faults();
        Optional<?> value =
                data[0] % 2 == 0
                        ? BriefReader.read(behindFirst(data), "f", KNOWN, faults)
                        : BuildReader.read(behindFirst(data), "f", KNOWN, faults);
        checked(faults, value);
    }

    /** Parts of each kind, and offers. */
    private static void tables(byte[] data) {
        Faults faults = new Faults();
        Kind kind = Kind.values()[Math.floorMod(data[0], Kind.values().length)];
        String header = FolderFixture.aFolder().text(kind.fileName()).lines().findFirst().get();
        SourceText rows = text(data);
        // Half of the cases begin behind a sound header, which chance would take long to find.
        String text = data[0] >= 0 ? header + "\n" + rows.text() : rows.text();
        KindFile parts = new KindFile(faults);
        parts.read(kind, new SourceText("f", text, ""));
        checked(faults, Optional.of(parts.parts()));
    }

    /** Frame-time logs and measurements. */
    private static void figures(byte[] data) {
        Faults faults = new Faults();
        if (data[0] % 2 == 0) {
            try {
                FrameLogReader.read(behindFirst(data), "f", FrameColumn.usual());
            } catch (BadInput bad) {
                faults.addAll(bad);
            }
        } else {
            String header = "workload,resolution,preset,rays,upscaling,average_fps,low_fps,seconds";
            String text = data[0] >= 0 ? header + "\n" + text(data).text() : text(data).text();
            SourceText source = new SourceText("f", text, "");
            Path nowhere = Path.of("no-such-folder");
            MeasurementReader.ofBuild(source, nowhere, KNOWN, FrameColumn.usual(), faults);
        }
        checked(faults, Optional.of(data));
    }
}
