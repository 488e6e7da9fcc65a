package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.catalogue.Catalogue;
import rigbrief.cli.Remote.Answer;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;
import rigbrief.file.Sha256;
import rigbrief.part.Slot;

/**
 * Two programs that write to the same place at the same time, for every command that writes: one of
 * them, or one after the other, and never a part of each.
 */
class TwoWritersIT {
    private static final int PAIRS = Integer.getInteger("rigbrief.pairs", 50);

    /** Of commands that take long. */
    private static final int SLOW_PAIRS = Integer.getInteger("rigbrief.pairs", 4);

    private static SmallShop shop;
    private static Catalogue catalogue;
    private static Pair pair;

    @BeforeAll
    static void start() throws Exception {
        shop = SmallShop.in(Files.createTempDirectory("rigbrief-shop"));
        catalogue = CatalogueReader.read(Path.of(shop.file("catalog")));
        pair = Pair.started();
    }

    @AfterAll
    static void end() throws IOException {
        pair.close();
        shop.remove();
    }

    @AfterEach
    void nothingIsLeft() throws IOException {
        Pair.assertNothingLeft(shop.folder());
    }

    private static List<String> line(String command, String... more) {
        List<String> line = new ArrayList<>();
        for (String word : command.split(" ")) {
            line.add(shop.names().contains(word) ? shop.file(word) : word);
        }
        line.addAll(List.of(more));
        line.addAll(List.of("--catalog", shop.file("catalog")));
        return line;
    }

    private static String place(String name) {
        return shop.folder().resolve("out").resolve(name).toString();
    }

    private static void assertOneDone(List<Answer> answers, String what) {
        assertThat(answers)
                .as(what)
                .extracting(Answer::status)
                .containsExactlyInAnyOrder(ExitStatus.DONE, ExitStatus.WRONG_USE);
        assertThat(answers.toString()).contains("--force");
    }

    private static void assertBothDone(List<Answer> answers, String what) {
        assertThat(answers)
                .as(what + answers)
                .allMatch(it -> it.status() == ExitStatus.DONE, "is done");
    }

    /** Each command that writes one file, against the next of them. */
    @Test
    void of_two_that_write_one_file_one_is_refused() throws IOException {
        List<String> writers =
                List.of(
                        "document build.yaml --what orders --format csv --out",
                        "accept build.yaml --out",
                        "replace build.yaml --faulty board --out",
                        "replace build.yaml --unavailable graphics --out",
                        "document build.yaml --format html --out",
                        "budget brief.json --goal memory --format html --out",
                        "intake --form");
        for (int i = 0; i < PAIRS; i++) {
            String out = place("file-" + i);
            String one = writers.get(i % writers.size());
            String other = writers.get((i + 1) % writers.size());

            List<Answer> answers = pair.both(line(one, out), line(other, out));

            assertOneDone(answers, one + " | " + other);
        }
    }

    @Test
    void a_move_noted_while_the_same_build_is_changed_is_not_lost() throws Exception {
        Path build = Files.createDirectories(Path.of(place("x")).getParent()).resolve("desk.yaml");
        for (int i = 0; i < PAIRS; i++) {
            Files.writeString(build, shop.text("build.yaml"));
            int before = BuildReader.read(build, catalogue).history().size();
            String name = build.toString();

            List<Answer> answers =
                    pair.both(
                            line("replace", name, "--faulty", "board", "--out", name, "--force"),
                            line("order", name, "memory", "ordered", "--date", "2026-11-23"));

            assertBothDone(answers, "pair " + i);
            BuildRecord found = BuildReader.read(build, catalogue);
            assertThat(found.history().subList(before, found.history().size()))
                    .as("pair %d", i)
                    .extracting(HistoryEntry::slot)
                    .contains(Slot.BOARD, Slot.MEMORY);
        }
    }

    @Test
    void builds_of_two_briefs_of_one_name_are_never_mixed() throws Exception {
        for (int i = 0; i < PAIRS; i++) {
            Path out = Path.of(place("builds-" + i));

            List<Answer> answers = pair.both(propose("Ada", out), propose("Bryn", out));

            assertOneDone(answers, "pair " + i);
            String winner = answers.get(0).status() == ExitStatus.DONE ? "Ada" : "Bryn";
            assertThat(clients(out)).containsExactly(winner);

            answers = pair.both(propose("Ada", out, "--force"), propose("Bryn", out, "--force"));

            assertBothDone(answers, "pair " + i);
            assertThat(clients(out)).as("pair %d", i).hasSize(1);
        }
    }

    private static List<String> propose(String client, Path out, String... more)
            throws IOException {
        List<String> line = line("propose", brief(client, "desk.yaml"), "--out", out.toString());
        line.addAll(List.of(more));
        return line;
    }

    private static String brief(String client, String name) throws IOException {
        Path briefs = Files.createDirectories(Path.of(place(client)));
        String text = shop.text("brief.yaml").replaceFirst("(?m)^client: .*$", "client: " + client);
        return Files.writeString(briefs.resolve(name), text).toString();
    }

    /** Whose builds lie in a folder. */
    private static Set<String> clients(Path out) throws IOException, BadInput {
        Set<String> clients = new TreeSet<>();
        try (Stream<Path> files = Files.list(out)) {
            for (Path file : files.filter(it -> it.toString().endsWith(".build.yaml")).toList()) {
                clients.add(BuildReader.read(file, catalogue).brief().orElseThrow().client());
            }
        }
        return clients;
    }

    @Test
    void results_of_two_batches_in_one_folder_are_whole_and_of_one_brief_each() throws Exception {
        for (int i = 0; i < PAIRS; i++) {
            Path out = Path.of(place("batch-" + i % 5));

            List<Answer> answers = pair.both(batch("Ada", out), batch("Bryn", out));

            assertThat(answers)
                    .as("pair %d %s", i, answers)
                    .extracting(Answer::status)
                    .isSubsetOf(ExitStatus.DONE, ExitStatus.WRONG_USE)
                    .contains(ExitStatus.DONE);
            for (String result : List.of("one", "two")) {
                assertThat(clients(out.resolve(result))).as("pair %d", i).hasSize(1);
                assertThat(digests(out.resolve(result)))
                        .as("pair %d", i)
                        .isEqualTo(listed(out.resolve(result)));
            }
        }
    }

    private static List<String> batch(String client, Path out) throws IOException {
        return line(
                "propose",
                brief(client, "one.yaml"),
                brief(client, "two.yaml"),
                "--out",
                out.toString());
    }

    /** As a checksum program reads the list of a result. */
    private static Map<String, String> listed(Path result) throws IOException {
        Map<String, String> digestByName = new TreeMap<>();
        for (String row : Files.readAllLines(result.resolve("result.sha256"))) {
            if (!row.startsWith("#")) {
                digestByName.put(row.substring(66), row.substring(0, 64));
            }
        }
        return digestByName;
    }

    private static Map<String, String> digests(Path result) throws IOException {
        Map<String, String> digestByName = new TreeMap<>();
        try (Stream<Path> files = Files.list(result)) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString();
                if (!name.equals("result.sha256")) {
                    digestByName.put(name, Sha256.of(Files.readAllBytes(file)));
                }
            }
        }
        return digestByName;
    }

    @Test
    void overlays_of_two_calibrations_are_never_mixed() throws Exception {
        String out = place("overlay");
        List<String> one = line("calibrate --measured measured.csv --out", out, "--force");
        Path rows = Files.createDirectories(Path.of(out).getParent()).resolve("fewer.csv");
        Files.writeString(rows, shop.text("measured.csv").replaceAll("(?m)^(two|three),.*\\R", ""));
        List<String> other =
                line("calibrate", "--measured", rows.toString(), "--out", out, "--force");
        Set<String> whole = new TreeSet<>();
        for (List<String> line : List.of(one, other)) {
            assertThat(pair.left().run(line.toArray(String[]::new)).status())
                    .isEqualTo(ExitStatus.DONE);
            whole.add(overlay(out));
        }
        assertThat(whole).as("two contents").hasSize(2);
        for (int i = 0; i < SLOW_PAIRS; i++) {
            assertBothDone(pair.both(one, other), "pair " + i);

            assertThat(overlay(out)).as("pair %d", i).isIn(whole);
        }
    }

    private static String overlay(String folder) throws IOException {
        return Files.readString(Path.of(folder, "rates.csv"))
                + Files.readString(Path.of(folder, "workloads.yaml"));
    }
}
