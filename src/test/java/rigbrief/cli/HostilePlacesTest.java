package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pipes, devices, folders and impossible names where a file is expected. */
class HostilePlacesTest extends HostileInput {
    @TempDir Path folder;

    @Test
    void a_name_that_no_file_can_have_is_refused_wherever_it_stands() throws IOException {
        put(
                "measured.csv",
                shop.text("measured.csv")
                        .replace("log.csv", "lo\u0000g.csv")
                        .replace("build.yaml", "\u0000"));

        assertThat(
                        refused(
                                "calibrate",
                                "--measured",
                                shop.file("measured.csv"),
                                "--catalog",
                                shop.file("catalog")))
                .contains("frame_log: found \"lo\\u0000g.csv\"")
                .contains("build: found \"\\u0000\"");
        assertThat(refused("audit", "\u0000", "--catalog", shop.file("catalog")))
                .startsWith("\\u0000:1:1: file: ");
        assertThat(new Captured().run("audit", "a", "--catalog", "\u0000"))
                .isEqualTo(ExitStatus.WRONG_USE);
    }

    @Test
    void pipes_and_devices_in_a_catalogue_or_named_by_a_row_are_refused() throws Exception {
        spoilt.addAll(List.of("catalog/offers.csv", "log.csv"));
        for (String name : List.of("catalog/offers.csv", "log.csv")) {
            Files.delete(Path.of(shop.file(name)));
            assertThat(new ProcessBuilder("mkfifo", shop.file(name)).start().waitFor()).isZero();
        }
        put("measured.csv", shop.text("measured.csv").replace("build.yaml", "/dev/zero"));

        String said =
                refused(
                        "calibrate",
                        "--measured",
                        shop.file("measured.csv"),
                        "--catalog",
                        shop.file("catalog"));

        assertThat(said)
                .contains("offers.csv:1:1: file: found \"a pipe or a device\"")
                .contains("log.csv:1:1: file: found \"a pipe or a device\"")
                .contains("/dev/zero:1:1: file: found \"a pipe or a device\"");
        Files.delete(Path.of(shop.file("catalog/offers.csv")));
        Files.delete(Path.of(shop.file("log.csv")));
    }

    @Test
    void a_folder_in_the_place_of_a_file_is_named_as_one() {
        assertThat(refused("explain", shop.file("newer"), "--catalog", shop.file("catalog")))
                .contains("newer:1:1: file: found \"a folder\"");
    }

    @Test
    void one_brief_of_many_that_has_no_end_or_no_file_stops_no_other() throws Exception {
        Path briefs = Files.createDirectory(folder.resolve("briefs"));
        Files.copy(Path.of(shop.file("brief.json")), briefs.resolve("sound.json"));
        Path pipe = briefs.resolve("pipe.yaml");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
        Files.createSymbolicLink(briefs.resolve("zeros.yaml"), Path.of("/dev/zero"));
        try (RandomAccessFile large =
                new RandomAccessFile(briefs.resolve("large.yaml").toFile(), "rw")) {
            large.setLength(2L << 30);
        }
        Path out = folder.resolve("out");
        String[] line = {
            "propose", briefs.toString(), "--out", out.toString(), "--catalog", shop.file("catalog")
        };

        assertThat(captured.run(line)).as(captured.err()).isEqualTo(ExitStatus.BAD_INPUT);

        assertThat(captured.out())
                .contains("pipe.yaml:1:1: file: found \"a pipe or a device\"")
                .contains("zeros.yaml:1:1: file: found \"a pipe or a device\"")
                .contains("large.yaml:1:1: file: found \"more than ");
        assertThat(out.resolve("sound")).isDirectory();
    }

    @Test
    void a_name_that_no_brief_of_many_can_have_is_told_with_the_others() {
        String out = folder.resolve("out").toString();

        assertThat(
                        refused(
                                "propose",
                                "\u0000",
                                folder.toString(),
                                "--out",
                                out,
                                "--catalog",
                                shop.file("catalog")))
                .contains("\\u0000:1:1: file: found ")
                .contains(folder + ":1:1: briefs: found \"a folder without any\"");
        assertThat(refused("propose", "\u0000", "--catalog", shop.file("catalog")))
                .startsWith("\\u0000:1:1: file: ");
    }

    @Test
    void a_summary_that_never_ends_is_not_read() throws IOException {
        Path out = Files.createDirectory(folder.resolve("out"));
        Files.createSymbolicLink(out.resolve("summary.csv"), Path.of("/dev/zero"));

        assertThat(
                        captured.run(
                                "propose",
                                shop.file("brief.json"),
                                shop.file("brief.yaml"),
                                "--out",
                                out.toString(),
                                "--catalog",
                                shop.file("catalog")))
                .isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.err()).contains("found a file that is no summary");
    }
}
