package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Files, cells, lists and catalogues of sizes that nobody means. */
class HostileSizesTest extends HostileInput {
    @Test
    void a_file_of_two_gib_is_refused_unread() throws IOException {
        for (String name : List.of("catalog/offers.csv", "brief.yaml", "prices.csv", "sheet.csv")) {
            spoilt.add(name);
            try (RandomAccessFile sparse = new RandomAccessFile(shop.file(name), "rw")) {
                sparse.setLength((2L << 30) + 1);
            }
        }

        String said =
                refused("propose", shop.file("brief.yaml"), "--catalog", shop.file("catalog"));
        String list =
                refused(
                        "catalog",
                        "import",
                        shop.file("prices.csv"),
                        "--map",
                        shop.file("map.yaml"),
                        "--catalog",
                        shop.file("newer"));
        String sheet =
                refused(
                        "accept",
                        shop.file("build.yaml"),
                        "--measured",
                        shop.file("sheet.csv"),
                        "--catalog",
                        shop.file("newer"));

        assertThat(said)
                .contains("offers.csv:1:1: file: found \"more than")
                .contains("brief.yaml:1:1: file: found \"more than");
        assertThat(list).contains("prices.csv:1:1: file: found \"more than");
        assertThat(sheet).contains("sheet.csv:1:1: file: found \"more than");
    }

    @Test
    void offers_of_two_gib_are_not_read_before_an_import_either() throws IOException {
        spoilt.add("catalog/offers.csv");
        try (RandomAccessFile sparse =
                new RandomAccessFile(shop.file("catalog/offers.csv"), "rw")) {
            sparse.setLength(3L << 30);
        }

        assertThat(
                        refused(
                                "catalog",
                                "import",
                                shop.file("prices.csv"),
                                "--map",
                                shop.file("map.yaml"),
                                "--catalog",
                                shop.file("catalog")))
                .contains("offers.csv:1:1: file: found \"more than");
    }

    @Test
    void a_build_that_is_to_be_written_back_is_not_read_whole_when_it_is_huge() throws IOException {
        spoilt.add("writable.yaml");
        try (RandomAccessFile sparse = new RandomAccessFile(shop.file("writable.yaml"), "rw")) {
            sparse.setLength(3L << 30);
        }

        assertThat(
                        refused(
                                "order",
                                shop.file("writable.yaml"),
                                "board",
                                "fitted",
                                "--catalog",
                                shop.file("catalog")))
                .contains("writable.yaml:1:1: file: found \"more than");
    }

    @Test
    void a_cell_that_never_ends_and_a_row_of_commas_are_faults() throws IOException {
        String header = shop.text("catalog/offers.csv").lines().findFirst().orElseThrow() + "\n";
        put("catalog/offers.csv", header + "\"" + "x".repeat(21_000_000));
        put("newer/offers.csv", header + ",".repeat(2_000_000) + "\n");

        assertThat(refused("catalog", "stats", "--catalog", shop.file("catalog")))
                .contains("offers.csv:2:")
                .contains("a cell of millions of characters");
        assertThat(refused("catalog", "stats", "--catalog", shop.file("newer")))
                .contains("offers.csv:2:")
                .contains("more than 10000 cells");
    }

    @Test
    void a_line_of_blanks_in_what_was_measured_does_not_explode() throws IOException {
        put("sheet.csv", "line,a" + " ".repeat(1_000_000) + "b\n");

        assertThat(
                        refused(
                                "accept",
                                shop.file("build.yaml"),
                                "--measured",
                                shop.file("sheet.csv"),
                                "--catalog",
                                shop.file("catalog")))
                .contains("sheet.csv:1:1: ");
    }

    @Test
    void ten_thousand_faults_are_counted_and_two_thousand_told() throws IOException {
        String rows =
                IntStream.range(0, 10_000)
                        .mapToObj(i -> "ostrel-twill-4,quaymark,x" + i + ",EUR,1,1,2026-11-20\n")
                        .collect(Collectors.joining());
        put("catalog/offers.csv", shop.text("catalog/offers.csv") + rows);

        String said = refused("catalog", "stats", "--catalog", shop.file("catalog"));

        assertThat(said.lines().filter(line -> line.contains(": found \"x")).count())
                .isLessThanOrEqualTo(2_000);
        assertThat(said).containsPattern("and [0-9]+ more like these");
    }

    @Test
    void ten_thousand_needs_are_read_judged_and_proposed_for() throws IOException {
        String many =
                IntStream.range(0, 10_000)
                        .mapToObj(
                                i ->
                                        "  - { id: shelf-%d, title: Shelf %d, kind: capacity, memory-gb: 1, disk-gb: 0 }\n"
                                                .formatted(i, i))
                        .collect(Collectors.joining());
        put("catalog/workloads.yaml", shop.text("catalog/workloads.yaml") + many);
        String needs =
                IntStream.range(0, 10_000)
                        .mapToObj(i -> "  - use: shelf-" + i + "\n")
                        .collect(Collectors.joining());
        put("brief.yaml", shop.text("brief.yaml").replace("workloads:\n", "workloads:\n" + needs));

        ExitStatus audit =
                captured.run(
                        "audit",
                        shop.file("build.yaml"),
                        "--brief",
                        shop.file("brief.yaml"),
                        "--catalog",
                        shop.file("catalog"));
        var proposed = new Captured();
        ExitStatus propose =
                proposed.run("propose", shop.file("brief.yaml"), "--catalog", shop.file("catalog"));

        assertThat(audit).as(captured.err()).isEqualTo(ExitStatus.DONE);
        assertThat(propose).as(proposed.err()).isEqualTo(ExitStatus.DONE);
    }

    /** Forty of each part, alike to the last figure: no order among them, and no end of ties. */
    @Test
    void a_catalogue_in_which_all_parts_tie_is_searched_to_the_same_bytes() throws IOException {
        StringBuilder offers = new StringBuilder();
        for (String name : shop.names()) {
            if (name.startsWith("catalog/")
                    && name.endsWith(".csv")
                    && !name.endsWith("offers.csv")) {
                List<String> lines = shop.text(name).lines().toList();
                StringBuilder text = new StringBuilder(lines.get(0) + "\n");
                for (int i = 0; i < 40 && lines.size() > 1; i++) {
                    String id = "%s-%02d".formatted(name.substring(8, name.length() - 4), i);
                    String row = lines.get(lines.size() - 1);
                    text.append(id).append(row.substring(row.indexOf(','))).append('\n');
                    offers.append(id).append(",quaymark,50.00,EUR,100,2,2026-11-20\n");
                }
                put(name, text.toString());
            }
        }
        put("catalog/offers.csv", "part,supplier,price,currency,stock,lead_days,as_of\n" + offers);
        put(
                "brief.yaml",
                "client: Ida\ncurrency: EUR\nceiling: 600\nworkloads:\n  - use: pocket-orchard\n    must: { average: 30 }\ndisplay: { resolution: 1920x1080, refresh: 60, inputs: [hdmi2.0, dp1.2] }\n");

        ExitStatus first =
                captured.run("propose", shop.file("brief.yaml"), "--catalog", shop.file("catalog"));
        var again = new Captured();
        again.run("propose", shop.file("brief.yaml"), "--catalog", shop.file("catalog"));

        assertThat(first)
                .as(captured.err() + captured.out())
                .isIn(ExitStatus.DONE, ExitStatus.IMPOSSIBLE);
        assertThat(again.out()).isEqualTo(captured.out());
    }
}
