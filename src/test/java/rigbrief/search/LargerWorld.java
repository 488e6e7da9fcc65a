package rigbrief.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.world.CatalogueGenerator;

/** Catalogues of tens to hundreds of parts: shares of the sample and of generated catalogues. */
final class LargerWorld {
    private static final int GENERATED = 12;
    private static final int PARTS = 600;
    private static final int LEAST_OF_A_KIND = 3;
    private static final Map<Integer, Catalogue> GENERATED_BY_SEED = new HashMap<>();

    private LargerWorld() {}

    /** A share of the sample. */
    static Catalogue ofSample(Random random) {
        return share(SmallWorld.sample(), random);
    }

    /** A share of one of a dozen generated catalogues. */
    static Catalogue generated(Random random) {
        return share(whole(1 + random.nextInt(GENERATED)), random);
    }

    private static synchronized Catalogue whole(int seed) {
        return GENERATED_BY_SEED.computeIfAbsent(seed, LargerWorld::generate);
    }

    private static Catalogue generate(int seed) {
        try {
            Path folder = Files.createTempDirectory("world");
            new CatalogueGenerator(Path.of("catalog-sample"))
                    .write(folder, PARTS, seed, CatalogueGenerator.NAMED_BY_SCENARIOS);
            Catalogue made = CatalogueReader.read(folder);
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
            return made;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        }
    }

    /** From a tenth to all of each kind, the same share for all. */
    private static Catalogue share(Catalogue all, Random random) {
        double share = 0.1 + 0.9 * random.nextDouble();
        List<Part> parts = new ArrayList<>();
        List<Offer> offers = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            int left = all.parts(kind).size();
            for (Part part : all.parts(kind)) {
                if (random.nextDouble() < share || left-- <= LEAST_OF_A_KIND) {
                    parts.add(part);
                    offers.addAll(all.offers(part.id()));
                }
            }
        }
        return new Catalogue(
                "share",
                all.currency(),
                all.asOf(),
                "sha256:none",
                all.reference(),
                all.suppliers(),
                parts,
                offers,
                all.workloads());
    }
}
