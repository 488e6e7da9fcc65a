package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.cli.Remote.Answer;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;

/** Two programs that write the same file at the same time: nothing that one has done is lost. */
class TwoRunsIT {
    private static final int PAIRS = Integer.getInteger("rigbrief.pairs", 50);

    /** Of commands that search. */
    private static final int SLOW_PAIRS = Integer.getInteger("rigbrief.pairs", 2);

    private static final Path SAMPLE = Path.of("catalog-sample");
    private static final List<String> SUPPLIERS = List.of("quaymark", "millrace");

    private static Remote left;
    private static Remote right;

    @TempDir Path folder;

    @BeforeAll
    static void start() throws IOException {
        left = Remote.started();
        right = Remote.started();
    }

    @AfterAll
    static void end() throws IOException {
        left.close();
        right.close();
    }

    private static List<Answer> both(List<String> one, List<String> other) throws IOException {
        left.begin(one.toArray(String[]::new));
        right.begin(other.toArray(String[]::new));
        return List.of(left.answer(), right.answer());
    }

    private void assertNothingLeft() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            assertThat(files.map(it -> it.getFileName().toString()))
                    .noneMatch(name -> name.endsWith(".lock") || name.endsWith(".part"));
        }
    }

    private List<String> parts() throws IOException {
        List<String> parts = new ArrayList<>();
        for (String kind : List.of("wireless.csv", "brace.csv")) {
            String row = Files.readAllLines(SAMPLE.resolve(kind)).get(1);
            parts.add(row.substring(0, row.indexOf(',')));
        }
        return parts;
    }

    private void smallCatalogue() throws IOException {
        for (String name : List.of("catalog.yaml", "workloads.yaml", "wireless.csv", "brace.csv")) {
            Files.copy(SAMPLE.resolve(name), folder.resolve(name));
        }
        Files.write(
                folder.resolve("offers.csv"),
                Files.readAllLines(SAMPLE.resolve("offers.csv")).subList(0, 1));
    }

    private Path smallBuild() throws IOException {
        smallCatalogue();
        List<String> parts = parts();
        return Files.writeString(
                folder.resolve("desk.build.yaml"),
                """
                schema: rigbrief/build/1
                catalogue: { name: small, digest: 'sha256:00' }
                currency: EUR
                lines:
                  - { slot: wireless, part: %s, unit-price: "20.00" }
                  - { slot: brace, part: %s, unit-price: "10.00" }
                """
                        .formatted(parts.get(0), parts.get(1)));
    }

    private List<String> move(Path build, String slot, String state) {
        return List.of(
                "order",
                build.toString(),
                slot,
                state,
                "--date",
                "2026-12-01",
                "--catalog",
                folder.toString());
    }

    @Test
    void two_parts_noted_at_the_same_time_are_both_noted() throws Exception {
        Path build = smallBuild();
        for (int pair = 1; pair <= PAIRS; pair++) {
            String state = pair % 2 == 1 ? "received" : "fitted";

            List<Answer> answers =
                    both(move(build, "wireless", state), move(build, "brace", state));

            assertThat(answers)
                    .as("pair %d", pair)
                    .allMatch(it -> it.status() == ExitStatus.DONE, "is done");
            BuildRecord found = BuildReader.read(build, CatalogueReader.read(folder));
            assertThat(found.history()).as("pair %d", pair).hasSize(2 * pair);
            assertThat(found.history().subList(2 * pair - 2, 2 * pair))
                    .extracting(HistoryEntry::slot)
                    .doesNotHaveDuplicates();
        }
        assertNothingLeft();
    }

    @Test
    void one_part_noted_twice_at_the_same_time_is_noted_once() throws Exception {
        Path build = smallBuild();
        for (int pair = 1; pair <= PAIRS; pair++) {
            List<String> move = move(build, "wireless", pair % 2 == 1 ? "received" : "fitted");

            List<Answer> answers = both(move, move);

            assertThat(answers)
                    .as("pair %d", pair)
                    .extracting(Answer::status)
                    .containsExactlyInAnyOrder(ExitStatus.DONE, ExitStatus.WRONG_USE);
            BuildRecord found = BuildReader.read(build, CatalogueReader.read(folder));
            assertThat(found.history()).as("pair %d", pair).hasSize(pair);
        }
    }

    @Test
    void lists_of_two_suppliers_taken_in_at_the_same_time_are_both_taken_in() throws Exception {
        smallCatalogue();
        for (int pair = 1; pair <= PAIRS; pair++) {
            for (String supplier : SUPPLIERS) {
                writeList(supplier, pair);
            }

            List<Answer> answers = both(takeIn("quaymark", pair), takeIn("millrace", pair));

            assertThat(answers)
                    .as("pair %d", pair)
                    .allMatch(it -> it.status() == ExitStatus.DONE, "is done");
            Catalogue catalogue = CatalogueReader.read(folder);
            for (String part : parts()) {
                assertThat(catalogue.offers(part))
                        .as("pair %d", pair)
                        .extracting(Offer::supplier)
                        .containsExactlyInAnyOrderElementsOf(SUPPLIERS);
                assertThat(catalogue.offers(part)).extracting(Offer::stock).containsOnly(pair);
            }
        }
        assertNothingLeft();
    }

    private void writeList(String supplier, int stock) throws IOException {
        Files.writeString(
                folder.resolve(supplier + ".map"),
                "supplier: "
                        + supplier
                        + "\ncolumns: { id: id, price: price, stock: stock, lead-days: days }\n");
        StringBuilder list = new StringBuilder("id,price,stock,days\n");
        parts().forEach(part -> list.append("%s,20.%02d,%d,2%n".formatted(part, stock, stock)));
        Files.writeString(folder.resolve(supplier + ".list"), list);
    }

    private List<String> takeIn(String supplier, int day) {
        return List.of(
                "catalog",
                "import",
                folder.resolve(supplier + ".list").toString(),
                "--map",
                folder.resolve(supplier + ".map").toString(),
                "--as-of",
                Restless.FIRST_DAY.plusDays(day).toString(),
                "--catalog",
                folder.toString());
    }

    @Test
    void of_two_that_make_one_document_one_is_refused() throws Exception {
        Path build = proposed();
        for (int pair = 1; pair <= PAIRS; pair++) {
            String out = folder.resolve("orders-" + pair).toString();

            List<Answer> answers =
                    both(
                            List.of("document", build.toString(), "--what", "orders", "--out", out),
                            List.of("accept", build.toString(), "--out", out));

            assertOneDone(answers, "pair " + pair);
        }
        assertNothingLeft();
    }

    private static void assertOneDone(List<Answer> answers, String what) {
        assertThat(answers)
                .as(what)
                .extracting(Answer::status)
                .containsExactlyInAnyOrder(ExitStatus.DONE, ExitStatus.WRONG_USE);
        assertThat(answers.toString()).contains("--force");
    }

    private Path proposed() throws IOException {
        Path out = folder.resolve("proposed");
        left.run("propose", "scenarios/tight-600.yaml", "--out", out.toString());
        return out.resolve("tight-600-lean.build.yaml");
    }

    @Test
    void of_two_replacements_in_one_file_one_is_refused() throws Exception {
        Path build = proposed();
        for (int pair = 1; pair <= SLOW_PAIRS; pair++) {
            String out = folder.resolve("changed-" + pair).toString();
            List<String> card =
                    List.of("replace", build.toString(), "--unavailable", "graphics", "--out", out);
            List<String> drive =
                    List.of("replace", build.toString(), "--unavailable", "drive", "--out", out);

            assertOneDone(both(card, drive), "pair " + pair);
        }
        assertNothingLeft();
    }

    @Test
    void builds_of_two_briefs_of_one_name_are_never_mixed() throws Exception {
        for (int pair = 1; pair <= SLOW_PAIRS; pair++) {
            Path out = folder.resolve("builds-" + pair);

            List<Answer> answers = both(propose("Ada", out, false), propose("Bryn", out, false));

            assertOneDone(answers, "pair " + pair);
            String winner = answers.get(0).status() == ExitStatus.DONE ? "Ada" : "Bryn";
            assertThat(clients(out)).containsExactly(winner);

            answers = both(propose("Ada", out, true), propose("Bryn", out, true));

            assertThat(answers).allMatch(it -> it.status() == ExitStatus.DONE, "is done");
            assertThat(clients(out)).as("pair %d", pair).hasSize(1);
        }
        assertNothingLeft();
    }

    private List<String> propose(String client, Path out, boolean force) throws IOException {
        Path briefs = Files.createDirectories(folder.resolve(client));
        Path brief = briefs.resolve("desk.yaml");
        Files.writeString(
                brief,
                Files.readString(Path.of("scenarios", "tight-600.yaml"))
                        .replaceFirst("(?m)^client: .*$", "client: " + client));
        List<String> line =
                new ArrayList<>(List.of("propose", brief.toString(), "--out", out.toString()));
        if (force) {
            line.add("--force");
        }
        return line;
    }

    /** Whose builds lie in a folder. */
    private static Set<String> clients(Path out) throws IOException, BadInput {
        Catalogue catalogue = CatalogueReader.read(SAMPLE);
        Set<String> clients = new TreeSet<>();
        try (Stream<Path> files = Files.list(out)) {
            for (Path file : files.toList()) {
                clients.add(BuildReader.read(file, catalogue).brief().orElseThrow().client());
            }
        }
        return clients;
    }
}
