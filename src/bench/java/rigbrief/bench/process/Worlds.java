package rigbrief.bench.process;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import rigbrief.world.CatalogueGenerator;

/** Catalogues by size: the sample for 600 parts, generated ones beyond. */
public final class Worlds {
    private static final Path SAMPLE = Path.of("catalog-sample");
    private static final int SAMPLE_PARTS = 600;
    private static final long SEED = 1;

    private Worlds() {}

    /** The folder of a catalogue with so many parts, made if it is not there yet. */
    public static Path folder(Path out, int parts) throws IOException {
        if (parts == SAMPLE_PARTS) {
            return SAMPLE;
        }
        Path folder = out.resolve("catalog-" + parts);
        if (!Files.exists(folder)) {
            new CatalogueGenerator(SAMPLE)
                    .write(folder, parts, SEED, CatalogueGenerator.NAMED_BY_SCENARIOS);
        }
        return folder;
    }
}
