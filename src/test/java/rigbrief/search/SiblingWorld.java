package rigbrief.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.diagnostic.BadInput;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.world.Siblings;

/** Small catalogues of parts that stand in for one another often: parts beside their siblings. */
public final class SiblingWorld {
    private static Siblings siblings;

    private SiblingWorld() {}

    /** All siblings of the sample. */
    public static synchronized Siblings siblings() {
        if (siblings == null) {
            try {
                Path folder = Files.createTempDirectory("siblings");
                siblings = Siblings.make(Path.of("catalog-sample"), folder, 1);
                try (Stream<Path> files = Files.walk(folder)) {
                    for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                        Files.delete(file);
                    }
                }
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            } catch (BadInput bad) {
                throw new IllegalStateException(bad);
            }
        }
        return siblings;
    }

    /** A small world of the sample with some parts' siblings at other prices. */
    public static Catalogue crossed(Random random, int most) {
        return with(
                SmallWorld.catalogue(random),
                part -> {
                    List<Part> others = new ArrayList<>(siblings().crosses(part.id()));
                    Collections.shuffle(others, random);
                    return others.subList(0, Math.min(random.nextInt(most + 1), others.size()));
                });
    }

    /** A catalogue with both of each pair of siblings of its parts. */
    public static Catalogue paired(Catalogue base) {
        return with(
                base,
                part ->
                        siblings().pairs(part.id()).stream()
                                .flatMap(pair -> Stream.of(pair.from(), pair.with()))
                                .toList());
    }

    private static Catalogue with(Catalogue base, Function<Part, List<Part>> siblingsOf) {
        List<Part> parts = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (Part part : base.parts(kind)) {
                parts.add(part);
                parts.addAll(siblingsOf.apply(part));
            }
        }
        List<Offer> offers = new ArrayList<>();
        parts.forEach(part -> offers.addAll(siblings().catalogue().offers(part.id())));
        return new Catalogue(
                "siblings",
                base.currency(),
                base.asOf(),
                "sha256:none",
                base.reference(),
                base.suppliers(),
                parts,
                offers,
                base.workloads());
    }
}
