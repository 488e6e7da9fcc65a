package rigbrief.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;

/** The scenarios of the project, in the order of their names. */
public final class Scenarios {
    private static final Path FOLDER = Path.of("scenarios");

    private Scenarios() {}

    /** Their files. */
    public static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(it -> it.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    /** Their briefs. */
    public static List<Brief> briefs(Catalogue catalogue) throws IOException {
        List<Brief> briefs = new ArrayList<>();
        for (Path file : files()) {
            briefs.add(brief(file, catalogue));
        }
        return briefs;
    }

    /** One brief. */
    public static Brief brief(Path file, Catalogue catalogue) {
        try {
            return BriefReader.read(file, catalogue);
        } catch (BadInput bad) {
            throw new IllegalArgumentException(file + ": " + bad.getMessage(), bad);
        }
    }

    /** A catalogue. */
    public static Catalogue catalogue(Path folder) {
        try {
            return CatalogueReader.read(folder);
        } catch (BadInput bad) {
            throw new IllegalArgumentException(folder + ": " + bad.getMessage(), bad);
        }
    }
}
