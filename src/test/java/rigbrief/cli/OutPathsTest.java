package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where output goes: never over an input, a device, a folder, or through a link. */
class OutPathsTest {
    private static SmallShop shop;

    @TempDir Path folder;
    private final Captured captured = new Captured();

    @BeforeAll
    static void open() throws IOException {
        shop = SmallShop.in(Files.createTempDirectory("rigbrief-shop"));
    }

    @AfterAll
    static void close() throws IOException {
        shop.remove();
    }

    @AfterEach
    void nothing_that_is_read_was_changed() throws IOException {
        assertThat(shop.changed()).isEmpty();
        try (var files = Files.walk(folder)) {
            assertThat(files.map(Path::toString)).noneMatch(name -> name.endsWith(".part"));
        }
    }

    private ExitStatus run(String line, Object... places) {
        List<String> arguments = new ArrayList<>();
        for (String word : line.formatted(places).split(" ")) {
            boolean known = shop.names().contains(word) || word.equals("catalog");
            arguments.add(known && !arguments.isEmpty() ? shop.file(word) : word);
        }
        arguments.addAll(List.of("--catalog", shop.file("catalog")));
        return captured.run(arguments.toArray(String[]::new));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "budget brief.json --goal memory --force --out brief.json",
                "budget brief.json --goal memory --force --out catalog/offers.csv",
                "propose brief.yaml --format html --force --out brief.yaml/../brief.yaml.html",
                "document build.yaml --force --out build.yaml",
                "document build.yaml --brief brief.yaml --force --out brief.yaml",
                "document build.yaml --force --out catalog/offers.csv",
                "accept build.yaml --force --out build.yaml",
                "accept build.yaml --force --out catalog/fan.csv",
                "calibrate --measured measured.csv --force --out catalog",
                "replace build.yaml --unavailable memory --force --out catalog/memory.csv",
                "intake --force --out catalog/catalog.yaml",
                "intake --force --form catalog/offers.csv"
            })
    void force_does_not_reach_what_is_read(String line) {
        boolean odd = line.contains("..");

        ExitStatus status = run(line);

        assertThat(status).as(captured.err()).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.err()).contains(odd ? "brief.yaml" : "found what this command reads");
    }

    @Test
    void a_batch_replaces_no_folder_that_it_reads() throws IOException {
        Path own = Files.createDirectory(folder.resolve("own"));
        Path brief = Files.copy(Path.of(shop.file("brief.json")), own.resolve("own.json"));
        byte[] before = Files.readAllBytes(brief);

        assertThat(run("propose %s --format json --force --out %s", own, folder))
                .as(captured.err())
                .isEqualTo(ExitStatus.WRONG_USE);

        assertThat(captured.err()).contains(own + ": found what this command reads");
        assertThat(Files.readAllBytes(brief)).isEqualTo(before);
    }

    @Test
    void the_summary_of_a_batch_takes_the_place_of_no_brief() throws IOException {
        Path brief = Files.copy(Path.of(shop.file("brief.json")), folder.resolve("summary.csv"));

        assertThat(run("propose %s brief.yaml --force --out %s", brief, folder))
                .as(captured.err())
                .isEqualTo(ExitStatus.WRONG_USE);

        assertThat(captured.err()).contains(brief + ": found what this command reads");
    }

    @Test
    void another_name_of_an_input_is_the_input() throws IOException {
        Path link =
                Files.createSymbolicLink(
                        folder.resolve("page.html"), Path.of(shop.file("brief.json")));
        Path hard = Files.createLink(folder.resolve("hard.html"), Path.of(shop.file("brief.json")));

        for (Path place : List.of(link, hard, Path.of(shop.file("catalog/../brief.json")))) {
            assertThat(run("budget brief.json --goal memory --force --out %s", place))
                    .isEqualTo(ExitStatus.WRONG_USE);
        }
    }

    @Test
    void devices_and_pipes_are_no_place_for_a_file() throws Exception {
        Path pipe = folder.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();

        for (Path place : List.of(pipe, Path.of("/dev/null"), Path.of("/dev/full"))) {
            for (String force : List.of("", " --force")) {
                assertThat(run("document build.yaml --out %s" + force, place))
                        .isEqualTo(ExitStatus.WRONG_USE);
            }
        }

        assertThat(captured.err()).contains("found a pipe or a device");
        assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
    }

    @Test
    void a_link_to_a_file_elsewhere_is_never_followed() throws IOException {
        Path elsewhere = Files.writeString(folder.resolve("elsewhere"), "precious");
        Path link = Files.createSymbolicLink(folder.resolve("link"), elsewhere);
        Path dangling =
                Files.createSymbolicLink(folder.resolve("dangling"), folder.resolve("not-there"));

        assertThat(run("document build.yaml --out %s", link)).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(run("document build.yaml --out %s", dangling)).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(run("document build.yaml --force --out %s", link)).isEqualTo(ExitStatus.DONE);
        assertThat(run("document build.yaml --force --out %s", dangling))
                .isEqualTo(ExitStatus.DONE);

        assertThat(elsewhere).hasContent("precious");
        assertThat(folder.resolve("not-there")).doesNotExist();
        assertThat(Files.isRegularFile(link, LinkOption.NOFOLLOW_LINKS)).isTrue();
    }

    @Test
    void a_link_to_a_folder_is_a_folder() throws IOException {
        Path real = Files.createDirectory(folder.resolve("real"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), real);

        assertThat(run("document build.yaml --out %s", link.resolve("a.txt")))
                .as(captured.err())
                .isEqualTo(ExitStatus.DONE);
        assertThat(run("propose brief.yaml --out %s", link)).isEqualTo(ExitStatus.DONE);

        assertThat(real.resolve("a.txt")).isNotEmptyFile();
        assertThat(real.resolve("brief-lean.build.yaml")).isNotEmptyFile();
    }

    @ParameterizedTest
    @ValueSource(strings = {".", "..", "/", "", "new/../.."})
    void a_folder_is_no_file_to_write(String name) {
        assertThat(
                        run(
                                "document build.yaml --force --out %s",
                                name.equals("/") ? "/" : folder + "/" + name))
                .isEqualTo(ExitStatus.WRONG_USE);
    }

    @Test
    void a_file_is_no_folder_to_write_into() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "precious");

        assertThat(run("document build.yaml --out %s", file.resolve("a.txt")))
                .isEqualTo(ExitStatus.WRONG_USE);
        assertThat(run("propose brief.yaml --out %s", file)).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(run("calibrate --measured measured.csv --out %s", file))
                .isEqualTo(ExitStatus.WRONG_USE);

        assertThat(file).hasContent("precious");
    }

    @Test
    void a_name_too_long_for_any_file_is_refused() {
        assertThat(run("document build.yaml --out %s", folder.resolve("x".repeat(5_000))))
                .isEqualTo(ExitStatus.WRONG_USE);
    }

    @Test
    void a_name_in_a_build_file_leads_nowhere() throws IOException {
        Path build = folder.resolve("b.yaml");
        Files.writeString(
                build,
                shop.text("build.yaml").replaceFirst("brief-name: .*", "brief-name: ../../escape"));

        assertThat(run("document %s --format html --out %s", build, folder.resolve("in/a.html")))
                .as(captured.err())
                .isEqualTo(ExitStatus.DONE);

        try (var files = Files.walk(folder)) {
            assertThat(files.filter(Files::isRegularFile)).hasSize(2);
        }
    }
}
