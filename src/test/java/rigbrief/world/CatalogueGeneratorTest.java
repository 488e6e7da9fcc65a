package rigbrief.world;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Kind;

class CatalogueGeneratorTest {
    private static final Path SAMPLE = Path.of("catalog-sample");
    private static final List<String> KEPT = CatalogueGenerator.NAMED_BY_SCENARIOS;

    @TempDir private Path folder;

    /** Check: the program's own reader finds no fault, and no id twice among them. */
    @ParameterizedTest
    @ValueSource(ints = {18, 19, 40, 101, 600, 3_000})
    void a_catalogue_of_any_size_is_read_without_a_fault(int parts) throws IOException, BadInput {
        for (long seed = 1; seed <= 3; seed++) {
            write(folder, parts, seed);

            CatalogueReader.Reading reading = CatalogueReader.readNoted(folder);

            assertThat(reading.notes()).isEmpty();
            assertThat(reading.catalogue().partCount()).isEqualTo(parts);
            for (Kind kind : Kind.values()) {
                assertThat(reading.catalogue().parts(kind)).as(kind.word()).isNotEmpty();
            }
        }
    }

    @Test
    void the_same_seed_gives_the_same_bytes_and_another_seed_others() throws IOException {
        write(folder.resolve("one"), 300, 7);
        write(folder.resolve("again"), 300, 7);
        write(folder.resolve("other"), 300, 8);

        assertThat(files(folder.resolve("again"))).isEqualTo(files(folder.resolve("one")));
        assertThat(files(folder.resolve("other")))
                .hasSameSizeAs(files(folder.resolve("one")))
                .isNotEqualTo(files(folder.resolve("one")));
    }

    @Test
    void parts_that_are_kept_come_along_as_they_are_with_their_offers() throws Exception {
        write(folder, 200, 1);
        var sample = CatalogueReader.read(SAMPLE);
        var made = CatalogueReader.read(folder);

        for (String id : KEPT) {
            assertThat(made.part(id)).isEqualTo(sample.part(id));
            assertThat(made.offers(id)).isEqualTo(sample.offers(id)).isNotEmpty();
        }
        long ofTheSample =
                Stream.of(Kind.values())
                        .flatMap(kind -> made.parts(kind).stream())
                        .filter(part -> sample.part(part.id()).isPresent())
                        .count();
        assertThat(ofTheSample).isEqualTo(KEPT.size());
    }

    @Test
    void a_size_that_can_not_be_is_refused_before_anything_is_written() {
        Path none = folder.resolve("none");

        assertThatThrownBy(() -> write(none, 17, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> write(none, 200_001, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(none).doesNotExist();
    }

    private static void write(Path to, int parts, long seed) throws IOException {
        new CatalogueGenerator(SAMPLE).write(to, parts, seed, KEPT);
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> paths = Files.list(folder)) {
            for (Path path : paths.toList()) {
                files.put(path.getFileName().toString(), Files.readString(path));
            }
        }
        return files;
    }
}
