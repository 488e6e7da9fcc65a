package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.diagnostic.Faults;

/** What the fuzzer begins with is sound, and every group takes it. */
class ReaderFuzzerTest {
    private static final Path SEEDS = Path.of("src", "test", "fuzz");

    static List<String> groups() {
        return List.copyOf(ReaderFuzzer.groups());
    }

    @ParameterizedTest
    @MethodSource("groups")
    void a_group_takes_every_seed(String group) throws IOException {
        try (Stream<Path> seeds = Files.list(SEEDS)) {
            for (Path seed : seeds.toList()) {
                ReaderFuzzer.run(group, Files.readAllBytes(seed));
            }
        }
        ReaderFuzzer.run(group, "\uFEFFx".getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void a_list_that_is_sound_under_its_map_is_taken_in(int which) throws IOException {
        SpoiltCatalogue catalogue = new SpoiltCatalogue();
        Faults faults = new Faults();

        var list = catalogue.takeIn(catalogue.list(which), catalogue.map(which), faults);

        assertThat(faults.all()).isEmpty();
        assertThat(list.orElseThrow().rows()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"map-comma", "map-semicolon", "map-tab"})
    void a_map_among_the_seeds_is_sound(String name) throws IOException {
        Faults faults = new Faults();

        assertThat(new SpoiltCatalogue().readMap(text(name), faults)).isPresent();
        assertThat(faults.all()).isEmpty();
    }

    @Test
    void files_of_a_catalogue_among_the_seeds_are_sound_in_their_places() throws IOException {
        for (String name : List.of("offers", "prices", "workloads", "head", "rates")) {
            byte[] seed = Files.readAllBytes(SEEDS.resolve(name));
            Faults faults = new Faults();

            var read = new SpoiltCatalogue().read(text(name), seed[seed.length - 1], faults);

            assertThat(faults.all()).as(name).isEmpty();
            assertThat(read).as(name).isPresent();
        }
    }

    /** A seed without its last byte, which chooses among the readers. */
    private static byte[] text(String name) throws IOException {
        byte[] seed = Files.readAllBytes(SEEDS.resolve(name));
        return Arrays.copyOf(seed, seed.length - 1);
    }
}
