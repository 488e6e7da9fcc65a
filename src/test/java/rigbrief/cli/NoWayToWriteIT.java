package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.cli.Remote.Answer;

/**
 * A disk that is full, one that is read-only, a folder that nothing may be put into: every command
 * that writes says so with exit status 2, and whatever was there is there unchanged.
 */
class NoWayToWriteIT {
    private static final Path SAMPLE = Path.of("catalog-sample");
    private static final String LIST = "scenarios/pricelists/dovecote-2026-12.csv";
    private static final String MAP = "scenarios/pricelists/dovecote.map.yaml";
    private static final String MEASURED = "scenarios/measurements/thirty-machines.csv";
    private static final String BRIEF = "scenarios/tight-600.yaml";

    @TempDir static Path prepared;
    @TempDir Path folder;

    private Path disk;
    private boolean mounted;

    @BeforeAll
    static void propose() {
        new Captured().run("propose", BRIEF, "--out", prepared.toString());
    }

    @AfterAll
    static void nothingOfOursChanged() throws IOException {
        assertThat(SAMPLE.resolve("prices.csv")).doesNotExist();
    }

    @BeforeEach
    void aPlace() throws IOException {
        disk = Files.createDirectory(folder.resolve("disk"));
    }

    @AfterEach
    void release() throws Exception {
        if (mounted) {
            run("umount", disk.toString());
        }
    }

    private static int run(String... command) throws Exception {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getInputStream().transferTo(OutputStream.nullOutputStream());
        return process.waitFor();
    }

    private void mount() throws Exception {
        boolean linux = System.getProperty("os.name").equals("Linux");
        if (!linux || run("mount", "-t", "tmpfs", "-o", "size=4m", "rb", disk.toString()) != 0) {
            abort("no small file system can be mounted here; needs Linux and its superuser");
        }
        mounted = true;
    }

    private Path build() {
        return disk.resolve("desk.build.yaml");
    }

    /** A build, a catalogue, an overlay and a sheet to be written over. */
    private void fill() throws IOException {
        Files.copy(prepared.resolve("tight-600-lean.build.yaml"), build());
        Path catalogue = Files.createDirectory(disk.resolve("catalogue"));
        try (Stream<Path> files = Files.list(SAMPLE)) {
            for (Path file : files.toList()) {
                Files.copy(file, catalogue.resolve(file.getFileName()));
            }
        }
        Path overlay = Files.createDirectory(disk.resolve("overlay"));
        Files.writeString(overlay.resolve("workloads.yaml"), "workloads: []\n");
        Files.writeString(overlay.resolve("rates.csv"), "old\n");
        Files.writeString(disk.resolve("old.html"), "old\n");
    }

    private String in(String name) {
        return disk.resolve(name).toString();
    }

    /** Command lines that change what is in the folder. */
    private Map<String, List<String>> changing() {
        String build = build().toString();
        Map<String, List<String>> lines = new LinkedHashMap<>();
        lines.put("order", List.of("order", build, "board", "ordered", "--date", "2026-12-01"));
        lines.put(
                "import",
                List.of("catalog", "import", LIST, "--map", MAP, "--catalog", in("catalogue")));
        lines.put(
                "page over another",
                List.of("document", build, "--format", "html", "--out", in("old.html"), "--force"));
        lines.put(
                "overlay over another",
                List.of("calibrate", "--measured", MEASURED, "--out", in("overlay"), "--force"));
        return lines;
    }

    /** Command lines that put something new into the folder. */
    private Map<String, List<String>> adding() {
        String build = build().toString();
        Map<String, List<String>> lines = new LinkedHashMap<>();
        lines.put("builds", List.of("propose", BRIEF, "--out", in("builds")));
        lines.put("offer", List.of("propose", BRIEF, "--format", "html", "--out", in("p.html")));
        lines.put(
                "budget",
                List.of(
                        "budget",
                        BRIEF,
                        "--goal",
                        "memory",
                        "--format",
                        "csv",
                        "--out",
                        in("front.csv")));
        lines.put(
                "replace",
                List.of("replace", build, "--unavailable", "drive", "--out", in("changed.yaml")));
        lines.put("paper", List.of("document", build, "--format", "pdf", "--out", in("p.pdf")));
        lines.put("sheet", List.of("accept", build, "--out", in("sheet.csv")));
        lines.put("overlay", List.of("calibrate", "--measured", MEASURED, "--out", in("fit")));
        lines.put("form", List.of("intake", "--form", in("form.html")));
        lines.put("intake", List.of("intake", "--out", in("brief.yaml")));
        return lines;
    }

    private void assertRefused(Map<String, List<String>> lines, String why) throws IOException {
        Map<String, String> before = content();
        for (Map.Entry<String, List<String>> line : lines.entrySet()) {
            Captured console = new Captured().input("Ada\n");

            ExitStatus status = console.run(line.getValue().toArray(String[]::new));

            assertRefused(line.getKey(), new Answer(status, console.err()), why);
            assertThat(content()).as(line.getKey()).isEqualTo(before);
        }
    }

    private static void assertRefused(String line, Answer answer, String why) {
        assertThat(answer.status()).as(line + answer.err()).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(answer.err())
                .as(line)
                .contains("can't be written (" + why + ")")
                .doesNotContain("Exception", "\tat ");
    }

    /** Every file with its bytes; folders that came up empty are no harm. */
    private Map<String, String> content() throws IOException {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> files = Files.walk(disk)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                content.put(
                        disk.relativize(file).toString(),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return content;
    }

    @Test
    void a_full_disk_is_said_to_be_full_and_nothing_is_lost() throws Exception {
        mount();
        fill();
        use(0);

        assertRefused(changing(), "No space left on device");
        assertRefused(adding(), "No space left on device");
    }

    @Test
    void a_disk_that_fills_up_half_way_is_said_to_be_full_and_nothing_is_lost() throws Exception {
        mount();
        fill();
        Map<String, List<String>> lines = changing();
        lines.remove("order"); // small enough to find room
        use(2 * 4_096);

        assertRefused(lines, "No space left on device");
    }

    /** Takes all the disk's space but some bytes of it. */
    private void use(int leaving) throws IOException {
        Path filler = disk.resolve("filler");
        byte[] page = new byte[4_096];
        long size = 0;
        try (OutputStream out = Files.newOutputStream(filler, StandardOpenOption.CREATE_NEW)) {
            while (true) {
                out.write(page);
                size += page.length;
            }
        } catch (IOException full) {
            assertThat(full).hasMessageContaining("No space left");
        }
        try (var channel = Files.newByteChannel(filler, StandardOpenOption.WRITE)) {
            channel.truncate(size - leaving);
        }
    }

    @Test
    void a_read_only_disk_is_said_to_be_so() throws Exception {
        mount();
        fill();
        assumeTrue(
                run("mount", "-o", "remount,ro", disk.toString()) == 0, "it can't be made so here");

        assertRefused(changing(), "Read-only file system");
        assertRefused(quickly(), "Read-only file system");
    }

    /** Those that put something new there without a long search. */
    private Map<String, List<String>> quickly() {
        Map<String, List<String>> lines = adding();
        lines.keySet().removeAll(List.of("offer", "budget", "replace", "paper"));
        return lines;
    }

    @Test
    void a_folder_that_nothing_may_be_put_into_is_said_to_be_so() throws Exception {
        fill();
        List<Path> folders;
        try (Stream<Path> all = Files.walk(disk)) {
            folders = all.filter(Files::isDirectory).toList();
        }
        allow(folders, "r-xr-xr-x");
        Map<String, String> before = content();
        Map<String, List<String>> lines = changing();
        lines.putAll(quickly());
        lines.remove("intake");
        try (Remote mortal =
                Remote.started(
                        Path.of(System.getProperty("java.home")),
                        Path.of(""),
                        withoutSuperpowers(),
                        List.of())) {
            for (Map.Entry<String, List<String>> line : lines.entrySet()) {
                Answer answer = mortal.run(line.getValue().toArray(String[]::new));

                assertRefused(line.getKey(), answer, "permission denied");
                assertThat(content()).as(line.getKey()).isEqualTo(before);
            }
        } finally {
            allow(folders, "rwxr-xr-x");
        }
    }

    private static void allow(List<Path> folders, String rights) throws IOException {
        for (Path each : folders) {
            Files.setPosixFilePermissions(each, PosixFilePermissions.fromString(rights));
        }
    }

    /** The superuser may do everything, unless that is taken from him. */
    private List<String> withoutSuperpowers() throws Exception {
        Path probe = folder.resolve("disk").resolve("probe");
        if (!Files.isWritable(probe.getParent())) {
            return List.of();
        }
        List<String> command = new ArrayList<>();
        command.add("setpriv");
        command.add("--bounding-set=-dac_override,-dac_read_search");
        boolean works = false;
        try {
            works = run("setpriv", command.get(1), "--", "touch", probe.toString()) != 0;
        } catch (IOException notThere) {
            works = false;
        }
        assumeTrue(works, "the superuser's rights can't be taken away here; needs setpriv");
        command.add("--");
        return command;
    }
}
