package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Input that somebody made to do harm, or that looks like it: one answer for each sort. */
class HostileInputTest {
    private static SmallShop shop;

    @TempDir Path folder;
    private final Captured captured = new Captured();
    private final List<String> spoilt = new ArrayList<>();

    @BeforeAll
    static void open() throws IOException {
        shop = SmallShop.in(Files.createTempDirectory("rigbrief-shop"));
    }

    @AfterAll
    static void close() throws IOException {
        shop.remove();
    }

    @AfterEach
    void restore() throws IOException {
        spoilt.addAll(shop.changed());
        shop.restore(spoilt);
    }

    private void put(String name, byte[] bytes) throws IOException {
        spoilt.add(name);
        shop.spoil(name, bytes);
    }

    private void put(String name, String text) throws IOException {
        put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private String refused(String... arguments) {
        ExitStatus status = captured.run(arguments);
        assertThat(status).as(captured.err()).isEqualTo(ExitStatus.BAD_INPUT);
        return captured.err();
    }

    private String refusedBrief(String text) throws IOException {
        put("brief.yaml", text);
        return refused(
                "audit",
                shop.file("build.yaml"),
                "--brief",
                shop.file("brief.yaml"),
                "--catalog",
                shop.file("catalog"));
    }

    @Test
    void aliases_are_refused_before_they_multiply() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            String ten = ("*a" + (i - 1) + ", ").repeat(9) + "*a" + (i - 1);
            bomb.append("a")
                    .append(i)
                    .append(": &a")
                    .append(i)
                    .append(" [")
                    .append(ten)
                    .append("]\n");
        }

        assertThat(refusedBrief(bomb.toString()))
                .contains("brief.yaml:2:")
                .contains("aliases are not followed");
    }

    @Test
    void a_merge_key_merges_nothing() throws IOException {
        assertThat(refusedBrief("x: &a { ceiling: 900 }\n<<: *a\ncurrency: EUR\n"))
                .contains("aliases are not followed")
                .contains("ceiling: found nothing");
    }

    @Test
    void an_anchor_alone_does_no_harm() throws IOException {
        put("brief.yaml", shop.text("brief.yaml").replace("ceiling: 600", "ceiling: &most 600"));

        assertThat(
                        captured.run(
                                "audit",
                                shop.file("build.yaml"),
                                "--brief",
                                shop.file("brief.yaml"),
                                "--catalog",
                                shop.file("catalog")))
                .isEqualTo(ExitStatus.DONE);
    }

    @ParameterizedTest
    @ValueSource(ints = {51, 1_001, 200_000})
    void depth_ends_in_a_fault_and_not_in_the_stack(int levels) throws IOException {
        for (String text :
                List.of(
                        "{\"a\": " + "[".repeat(levels) + "]".repeat(levels) + "}",
                        "{\"a\":".repeat(levels) + "1" + "}".repeat(levels),
                        "a: " + "[".repeat(levels) + "]".repeat(levels),
                        "a: " + "{a: ".repeat(levels) + "1" + "}".repeat(levels),
                        "a:" + " -".repeat(levels) + " 1",
                        "a: " + "[".repeat(levels))) {
            assertThat(new HostileInputTest().again(text)).contains("brief.yaml:1:");
        }
    }

    private String again(String text) throws IOException {
        try {
            return refusedBrief(text);
        } finally {
            restore();
        }
    }

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
                new HostileInputTest()
                        .refused(
                                "catalog",
                                "import",
                                shop.file("prices.csv"),
                                "--map",
                                shop.file("map.yaml"),
                                "--catalog",
                                shop.file("newer"));
        String sheet =
                new HostileInputTest()
                        .refused(
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
        assertThat(
                        new HostileInputTest()
                                .refused("catalog", "stats", "--catalog", shop.file("newer")))
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
    void compressed_files_are_not_opened() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(new byte[10_000_000]);
        }
        put("brief.yaml", packed.toByteArray());

        assertThat(refused("propose", shop.file("brief.yaml"), "--catalog", shop.file("catalog")))
                .contains("brief.yaml:1:2: file: found \"byte 0x8B\", expected UTF-8");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "-Infinity",
                "-0",
                "-0.00",
                "1e400",
                "1e-400",
                "1e2",
                "0x10",
                "100000001",
                "9223372036854775808",
                "600.001",
                "\u0666\u0660\u0660"
            })
    void odd_figures_are_no_ceiling(String figure) throws IOException {
        assertThat(
                        refusedBrief(
                                shop.text("brief.yaml")
                                        .replace("ceiling: 600", "ceiling: " + figure)))
                .contains("brief.yaml:3:10: ceiling: found \"" + figure + "\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "-1",
                "1e400",
                "100000000.01",
                "9223372036854775808",
                "58,50"
            })
    void odd_figures_are_no_price(String figure) throws IOException {
        put(
                "catalog/offers.csv",
                shop.text("catalog/offers.csv")
                        .replace(",quaymark,58.50,", ",quaymark,\"" + figure + "\","));

        assertThat(refused("catalog", "stats", "--catalog", shop.file("catalog")))
                .contains("price: found \"" + figure + "\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2147483648", "-1", "1.5", "NaN", "1000000001", "99999999999999999999"})
    void odd_figures_are_no_stock(String figure) throws IOException {
        put(
                "catalog/offers.csv",
                shop.text("catalog/offers.csv")
                        .replace(",quaymark,58.50,EUR,24,", ",quaymark,58.50,EUR," + figure + ","));

        assertThat(refused("catalog", "stats", "--catalog", shop.file("catalog")))
                .contains("stock: found \"" + figure + "\"");
    }

    @Test
    void very_long_numbers_are_refused_in_yaml_and_json_alike() throws IOException {
        String long_ = "9".repeat(100_000);

        assertThat(
                        refusedBrief(
                                shop.text("brief.yaml")
                                        .replace("ceiling: 600", "ceiling: " + long_)))
                .contains("brief.yaml:3:10: ceiling: ");
        assertThat(
                        new HostileInputTest()
                                .again("{\"currency\": \"EUR\", \"ceiling\": " + long_ + "}"))
                .contains("brief.yaml:1:");
    }

    /** Highest price and number that are read; the sum by hand: 100000000.00 x 10000 machines. */
    @Test
    void the_dearest_parts_ten_thousand_times_add_up_exactly() throws IOException {
        String dear =
                shop.text("catalog/offers.csv")
                                .lines()
                                .map(
                                        line ->
                                                line.startsWith("part,")
                                                        ? line
                                                        : line.replaceAll(
                                                                "^([^,]+,[^,]+),[^,]+,EUR,[0-9]+,",
                                                                "$1,100000000.00,EUR,1000000,"))
                                .collect(Collectors.joining("\n"))
                        + "\n";
        put("catalog/offers.csv", dear);
        put(
                "brief.yaml",
                shop.text("brief.yaml")
                        .replace("ceiling: 600", "ceiling: 100000000\nquantity: 10000"));

        ExitStatus audit =
                captured.run(
                        "audit",
                        shop.file("list.txt"),
                        "--brief",
                        shop.file("brief.yaml"),
                        "--format",
                        "json",
                        "--catalog",
                        shop.file("catalog"));

        assertThat(audit).as(captured.err()).isEqualTo(ExitStatus.BREAKS);
        // Eight parts, two of them alike: 7 lines, 8 pieces; 8 x 1e8 x 1e4.
        assertThat(captured.out()).contains("8000000000000.00");
        ExitStatus propose =
                new Captured()
                        .run("propose", shop.file("brief.yaml"), "--catalog", shop.file("catalog"));
        assertThat(propose).isEqualTo(ExitStatus.IMPOSSIBLE);
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

    @Test
    void a_mark_of_utf_8_is_passed_over_and_other_encodings_are_named_as_foreign()
            throws IOException {
        put("brief.yaml", "\uFEFF" + shop.text("brief.yaml"));
        assertThat(
                        captured.run(
                                "audit",
                                shop.file("build.yaml"),
                                "--brief",
                                shop.file("brief.yaml"),
                                "--catalog",
                                shop.file("catalog")))
                .isEqualTo(ExitStatus.DONE);

        for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.ISO_8859_1)) {
            put(
                    "brief.yaml",
                    shop.text("brief.yaml").replace("Wren", "Wr\u00E9n").getBytes(charset));
            assertThat(
                            new HostileInputTest()
                                    .refused(
                                            "propose",
                                            shop.file("brief.yaml"),
                                            "--catalog",
                                            shop.file("catalog")))
                    .contains("expected UTF-8");
        }
    }

    @Test
    void nul_bytes_are_faults_with_a_place() throws IOException {
        assertThat(refusedBrief(shop.text("brief.yaml").replace("Wren", "Wr\u0000n")))
                .contains("brief.yaml:1:")
                .doesNotContain("\u0000");
        put(
                "catalog/offers.csv",
                shop.text("catalog/offers.csv").replace("quaymark,58.50", "quay\u0000mark,58.50"));
        assertThat(
                        new HostileInputTest()
                                .refused("catalog", "stats", "--catalog", shop.file("catalog")))
                .contains("supplier: found \"quay\\u0000mark\"");
    }

    @Test
    void carriage_returns_alone_end_lines() throws IOException {
        put("brief.yaml", shop.text("brief.yaml").replace('\n', '\r'));
        put("catalog/offers.csv", shop.text("catalog/offers.csv").replace('\n', '\r'));
        put("list.txt", shop.text("list.txt").replace('\n', '\r'));

        assertThat(
                        captured.run(
                                "audit",
                                shop.file("list.txt"),
                                "--brief",
                                shop.file("brief.yaml"),
                                "--catalog",
                                shop.file("catalog")))
                .as(captured.err())
                .isEqualTo(ExitStatus.BREAKS);
    }

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
        assertThat(
                        new HostileInputTest()
                                .refused("audit", "\u0000", "--catalog", shop.file("catalog")))
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
        assertThat(
                        new HostileInputTest()
                                .refused("propose", "\u0000", "--catalog", shop.file("catalog")))
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
