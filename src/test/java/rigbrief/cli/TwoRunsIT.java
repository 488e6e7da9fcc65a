package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.cli.Remote.Answer;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;

/** Two programs that change the same file at the same time: nothing that one has done is lost. */
class TwoRunsIT {
    private static final int PAIRS = Integer.getInteger("rigbrief.pairs", 50);

    private static final Path SAMPLE = Path.of("catalog-sample");
    private static final List<String> SUPPLIERS = List.of("quaymark", "millrace");

    private static Pair pair;

    @TempDir Path folder;

    @BeforeAll
    static void start() throws IOException {
        pair = Pair.started();
    }

    @AfterAll
    static void end() throws IOException {
        pair.close();
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
        for (int i = 1; i <= PAIRS; i++) {
            String state = i % 2 == 1 ? "received" : "fitted";

            List<Answer> answers =
                    pair.both(move(build, "wireless", state), move(build, "brace", state));

            assertThat(answers)
                    .as("pair %d", i)
                    .allMatch(it -> it.status() == ExitStatus.DONE, "is done");
            BuildRecord found = BuildReader.read(build, CatalogueReader.read(folder));
            assertThat(found.history()).as("pair %d", i).hasSize(2 * i);
            assertThat(found.history().subList(2 * i - 2, 2 * i))
                    .extracting(HistoryEntry::slot)
                    .doesNotHaveDuplicates();
        }
        Pair.assertNothingLeft(folder);
    }

    @Test
    void one_part_noted_twice_at_the_same_time_is_noted_once() throws Exception {
        Path build = smallBuild();
        for (int i = 1; i <= PAIRS; i++) {
            List<String> move = move(build, "wireless", i % 2 == 1 ? "received" : "fitted");

            List<Answer> answers = pair.both(move, move);

            assertThat(answers)
                    .as("pair %d", i)
                    .extracting(Answer::status)
                    .containsExactlyInAnyOrder(ExitStatus.DONE, ExitStatus.WRONG_USE);
            BuildRecord found = BuildReader.read(build, CatalogueReader.read(folder));
            assertThat(found.history()).as("pair %d", i).hasSize(i);
        }
    }

    @Test
    void lists_of_two_suppliers_taken_in_at_the_same_time_are_both_taken_in() throws Exception {
        smallCatalogue();
        for (int i = 1; i <= PAIRS; i++) {
            for (String supplier : SUPPLIERS) {
                writeList(supplier, i);
            }

            List<Answer> answers = pair.both(takeIn("quaymark", i), takeIn("millrace", i));

            assertThat(answers)
                    .as("pair %d", i)
                    .allMatch(it -> it.status() == ExitStatus.DONE, "is done");
            Catalogue catalogue = CatalogueReader.read(folder);
            for (String part : parts()) {
                assertThat(catalogue.offers(part))
                        .as("pair %d", i)
                        .extracting(Offer::supplier)
                        .containsExactlyInAnyOrderElementsOf(SUPPLIERS);
                assertThat(catalogue.offers(part)).extracting(Offer::stock).containsOnly(i);
            }
        }
        Pair.assertNothingLeft(folder);
    }

    private void writeList(String supplier, int stock) throws IOException {
        Files.writeString(
                folder.resolve(supplier + ".map"),
                "supplier: "
                        + supplier
                        + "\ncolumns: { id: id, price: price, stock: stock, lead-days: days }\n");
        StringBuilder list = new StringBuilder("id,price,stock,days\n");
        int cents = stock % 100;
        parts().forEach(part -> list.append("%s,20.%02d,%d,2%n".formatted(part, cents, stock)));
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
}
