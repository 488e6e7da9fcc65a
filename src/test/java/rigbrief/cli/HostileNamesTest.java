package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

/**
 * Names that try to act where they are shown: as a formula, as markup, as a terminal's command, as
 * a change of the writing direction, as nothing at all.
 *
 * <p>What acts on text is told from outside: Unicode's general categories Cc and Cf (UAX 44), the
 * characters that spreadsheets take for the beginning of a formula, XML's own reader.
 */
class HostileNamesTest {
    private static final String FORMULA = "=cmd|' /C calc'!A0";
    private static final String MARKUP = "<script>alert(1)</script><svg onload='x()'>&lt;\"'";

    /** Right-to-left override, isolate, marks, zero width, byte order mark. */
    private static final String CONTROLS =
            "A\u202Eevil\u2066x\u2069\u200F\u200E\u061C\u200B\u2060\uFEFFZ";

    private static SmallShop shop;

    @BeforeAll
    static void name() throws IOException {
        shop = SmallShop.in(Files.createTempDirectory("rigbrief-shop"));
        for (String name : shop.names()) {
            if (name.startsWith("catalog/") && name.endsWith(".csv")) {
                shop.spoil(name, bytes(named(shop.text(name), name.endsWith("offers.csv"))));
            }
        }
        shop.spoil(
                "catalog/workloads.yaml",
                bytes(
                        shop.text("catalog/workloads.yaml")
                                .replace("title: Brass Regatta", "title: " + yaml(MARKUP))
                                .replace("title: Pocket Orchard", "title: " + yaml(FORMULA))));
        shop.spoil(
                "catalog/catalog.yaml",
                bytes(
                        shop.text("catalog/catalog.yaml")
                                .replaceFirst("name: .*", "name: " + yamlFor(FORMULA))
                                .replace("name: Quaymark Wholesale", "name: " + yaml(FORMULA))
                                .replace("name: Millrace Trade Counter", "name: " + yaml(MARKUP))));
        shop.spoil(
                "brief.yaml",
                bytes(
                        shop.text("brief.yaml")
                                .replace("client: Wren, aged fifteen", "client: " + yaml(MARKUP))));
    }

    @AfterAll
    static void close() throws IOException {
        shop.remove();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Maker and model of each part; of the first in each file a formula, else markup. */
    private static String named(String text, boolean offers) {
        if (offers) {
            return text;
        }
        List<String> rows = new ArrayList<>();
        for (String line : text.lines().toList()) {
            String[] cells = line.split(",", 4);
            boolean first = rows.size() == 1;
            rows.add(
                    rows.isEmpty()
                            ? line
                            : String.join(
                                    ",",
                                    cells[0],
                                    csv(first ? FORMULA : MARKUP),
                                    csv(first ? "+1" : "@SUM(1)"),
                                    cells[3]));
        }
        return String.join("\n", rows) + "\n";
    }

    private static String csv(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }

    private static String yaml(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> quoted.append("\\u%04X".formatted(c)));
        return quoted.append('"').toString();
    }

    /** For a replacement that reads backslashes itself. */
    private static String yamlFor(String text) {
        return yaml(text).replace("\\", "\\\\");
    }

    private static Captured run(String line) {
        List<String> arguments = new ArrayList<>();
        for (String word : line.split(" ")) {
            boolean file = shop.names().contains(word);
            arguments.add(file ? shop.file(word) : word.replace("%", shop.folder().toString()));
        }
        arguments.addAll(List.of("--catalog", shop.file("catalog")));
        Captured captured = new Captured();
        ExitStatus status = captured.run(arguments.toArray(String[]::new));
        assertThat(status).as(captured.err()).isIn(ExitStatus.DONE, ExitStatus.BREAKS);
        return captured;
    }

    private static List<String> acting(String text) {
        return text.codePoints()
                .filter(c -> c != '\n')
                .filter(
                        c ->
                                Character.getType(c) == Character.CONTROL
                                        || Character.getType(c) == Character.FORMAT)
                .mapToObj("U+%04X"::formatted)
                .distinct()
                .toList();
    }

    /** Each of these is a control or a format character (UAX 44), in every text that is read. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u001b[2J",
                "\u001b]0;own\u0007",
                "\b",
                "\u009b1m",
                "\u202E",
                "\u202A",
                "\u2066",
                "\u2069",
                "\u200F",
                "\u200E",
                "\u061C",
                "\u200B",
                "\u2060",
                "\uFEFF",
                "\u00AD",
                "\u2028",
                "\u0085",
                "\uE000",
                "\uD83D",
                "\uDB40\uDC41"
            })
    void a_character_that_acts_is_refused_in_every_name(String sign) throws IOException {
        String name = "A" + sign + "Z";
        Map<String, String> before =
                Map.of(
                        "newer/catalog.yaml", "Quaymark Wholesale",
                        "newer/workloads.yaml", "Brass Regatta",
                        "brief.json", "Wren");
        for (var file : before.entrySet()) {
            String quoted = yaml(name);
            String text = shop.text(file.getKey());
            String from = file.getValue();
            shop.spoil(
                    file.getKey(),
                    bytes(
                            text.replace('"' + from + '"', quoted)
                                    .replace(": " + from, ": " + quoted)));
        }
        Captured captured = new Captured();
        try {
            ExitStatus status =
                    captured.run(
                            "propose", shop.file("brief.json"), "--catalog", shop.file("newer"));

            assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
            assertThat(captured.err())
                    .contains("suppliers[4].name: found \"A\\u")
                    .contains("workloads[0].title: found \"A\\u")
                    .contains("client: found \"A\\u");
            assertThat(acting(captured.err())).isEmpty();
        } finally {
            shop.restore(List.copyOf(before.keySet()));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "audit list.txt --brief brief.yaml",
                "audit list.txt --format json",
                "propose brief.yaml",
                "propose brief.yaml --format json",
                "budget brief.yaml --goal memory",
                "budget brief.yaml --goal memory --format json",
                "explain list.txt --number cost.total",
                "tune list.txt --brief brief.yaml",
                "accept list.txt --brief brief.yaml",
                "document list.txt",
                "document list.txt --what orders",
                "document list.txt --what assembly",
                "document list.txt --what handover",
                "document list.txt --what orders --format csv",
                "document list.txt --brief brief.yaml --format html",
                "document list.txt --what orders --format html",
                "document list.txt --what assembly --format html",
                "document list.txt --what handover --format html",
                "propose brief.yaml --format html",
                "budget brief.yaml --goal memory --format html",
                "budget brief.yaml --goal memory --format csv",
                "replace list.txt --unavailable memory",
                "order list.txt",
                "catalog check",
                "catalog stats"
            })
    void nothing_that_is_printed_acts(String line) {
        Captured captured = run(line);

        assertThat(acting(captured.out())).as(captured.out()).isEmpty();
        assertThat(acting(captured.err())).as(captured.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "document list.txt --brief brief.yaml --format html",
                "document list.txt --what orders --format html",
                "document list.txt --what assembly --format html",
                "document list.txt --what handover --format html",
                "propose brief.yaml --format html",
                "budget brief.yaml --goal memory --format html"
            })
    void markup_in_names_stays_text(String line) throws Exception {
        String page = run(line).out();

        assertThat(page).doesNotContain("<script>alert").doesNotContain("<svg onload");
        assertThat(page).contains("alert(1)");
        if (line.startsWith("budget")) {
            return; // its page is HTML that need not be XML
        }
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Document document =
                factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes(page)));
        for (String tag : List.of("script", "svg")) {
            var found = document.getElementsByTagName(tag);
            for (int i = 0; i < found.getLength(); i++) {
                if (tag.equals("script")) {
                    assertThat(found.item(i).getTextContent()).doesNotContain("</script");
                }
                assertThat(found.item(i).getAttributes().getNamedItem("onload")).isNull();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "document list.txt --what orders --format csv",
                "budget brief.yaml --goal memory --format csv",
                "accept list.txt --brief brief.yaml --out %/out/sheet.csv --force"
            })
    void no_cell_of_any_csv_begins_as_a_formula(String line) throws IOException {
        String printed = run(line).out();
        Path sheet = shop.folder().resolve("out/sheet.csv");
        String csv = line.contains("--out") ? Files.readString(sheet) : printed;

        List<List<String>> rows = new ArrayList<>();
        new CsvMapper()
                .readerForListOf(String.class)
                .with(CsvParser.Feature.WRAP_AS_ARRAY)
                .<List<String>>readValues(csv)
                .forEachRemaining(rows::add);
        assertThat(rows).hasSizeGreaterThan(1);
        for (List<String> row : rows) {
            assertThat(row)
                    .noneMatch(
                            cell ->
                                    !cell.isEmpty()
                                            && "=+-@\t\r\n".indexOf(cell.charAt(0)) >= 0
                                            && !cell.matches("-?[0-9.]+"));
        }
    }

    @Test
    void json_gives_every_name_back_to_the_last_character() throws IOException {
        JsonNode answer =
                new ObjectMapper().readTree(run("propose brief.yaml --format json").out());

        assertThat(answer.at("/catalogue/name").asText()).isEqualTo(FORMULA);
    }

    @Test
    void paper_holds_no_character_that_acts() throws IOException {
        for (String what : List.of("proposal", "orders", "assembly", "handover")) {
            String file = shop.file("out/" + what + ".pdf");
            run("document list.txt --what " + what + " --format pdf --force --out " + file);

            try (PDDocument paper = Loader.loadPDF(Path.of(file).toFile())) {
                String text = new PDFTextStripper().getText(paper);
                assertThat(acting(text.replace("\r", ""))).as(what).isEmpty();
                assertThat(paper.getDocumentCatalog().getOpenAction()).isNull();
            }
        }
    }

    @Test
    void a_build_file_keeps_names_without_letting_them_act() throws IOException {
        run("propose brief.yaml --out %/out/builds --force");

        try (var files = Files.list(shop.folder().resolve("out/builds"))) {
            for (Path file : files.toList()) {
                assertThat(acting(Files.readString(file))).as(file.toString()).isEmpty();
                assertThat(
                                new Captured()
                                        .run(
                                                "order",
                                                file.toString(),
                                                "--catalog",
                                                shop.file("catalog")))
                        .isEqualTo(ExitStatus.DONE);
            }
        }
    }

    @Test
    void what_a_fault_quotes_does_not_act() throws IOException {
        Captured captured = new Captured();

        captured.run(
                "audit",
                shop.file("list.txt"),
                "--brief",
                "\u001b[2J" + CONTROLS + MARKUP,
                "--catalog",
                shop.file("catalog"));

        assertThat(captured.err()).contains("\\u001B[2J").contains("\\u202E");
        assertThat(acting(captured.err())).isEmpty();
    }
}
