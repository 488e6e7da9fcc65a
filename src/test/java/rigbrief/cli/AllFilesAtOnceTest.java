package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** With several faulty files a command tells the faults of all, and of each what can be told. */
class AllFilesAtOnceTest {
    private static SmallShop shop;

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
        shop.restore(spoilt);
    }

    private void replace(String name, String from, String to) throws IOException {
        String text = shop.text(name);
        assertThat(text).contains(from);
        shop.spoil(name, text.replace(from, to).getBytes(java.nio.charset.StandardCharsets.UTF_8));
        spoilt.add(name);
    }

    private void catalogueWithoutAPrice() throws IOException {
        replace("catalog/offers.csv", ",quaymark,58.50,", ",quaymark,cheap,");
    }

    private List<String> places(String... arguments) {
        ExitStatus status = captured.run(arguments);
        assertThat(status).as(captured.err()).isEqualTo(ExitStatus.BAD_INPUT);
        return captured.err()
                .lines()
                .filter(line -> line.startsWith(shop.folder().toString()))
                .map(line -> line.substring(shop.folder().toString().length() + 1))
                .map(line -> line.substring(0, line.indexOf(": found")))
                .map(line -> line.replaceAll(":[0-9]+:[0-9]+: ", " "))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"propose", "budget"})
    void catalogue_and_brief(String command) throws IOException {
        catalogueWithoutAPrice();
        replace("brief.yaml", "ceiling: 600", "ceiling: -600");

        assertThat(places(command, shop.file("brief.yaml"), "--catalog", shop.file("catalog")))
                .containsExactly("catalog/offers.csv price", "brief.yaml ceiling");
        assertThat(captured.err()).contains("\n2 faults\n");
    }

    @Test
    void catalogue_and_many_briefs() throws IOException {
        catalogueWithoutAPrice();
        replace("brief.yaml", "ceiling: 600", "ceiling: -600");
        Path out = shop.folder().resolve("answers");

        assertThat(
                        places(
                                "propose",
                                shop.file("brief.yaml"),
                                shop.file("brief.json"),
                                "--out",
                                out.toString(),
                                "--catalog",
                                shop.file("catalog")))
                .containsExactly("catalog/offers.csv price", "brief.yaml ceiling");
        assertThat(out).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({"audit", "explain", "tune", "accept", "document"})
    void catalogue_build_and_brief(String command) throws IOException {
        catalogueWithoutAPrice();
        replace(
                "build.yaml",
                "pieces: 1\n    supplier: millrace",
                "pieces: one\n    supplier: millrace");
        replace("brief.yaml", "confidence: 80%", "confidence: 101%");

        assertThat(
                        places(
                                command,
                                shop.file("build.yaml"),
                                "--brief",
                                shop.file("brief.yaml"),
                                "--catalog",
                                shop.file("catalog")))
                .startsWith("catalog/offers.csv price")
                .contains("brief.yaml confidence")
                .anyMatch(line -> line.startsWith("build.yaml lines["));
    }

    @Test
    void a_build_that_is_to_be_written_back_and_the_catalogue() throws IOException {
        catalogueWithoutAPrice();
        replace("writable.yaml", "state: wanted", "state: lost");

        List<String> places =
                places(
                        "order",
                        shop.file("writable.yaml"),
                        "board",
                        "fitted",
                        "--catalog",
                        shop.file("catalog"));

        assertThat(places).startsWith("catalog/offers.csv price");
        assertThat(places.get(1)).matches("writable.yaml lines.*state");
    }

    @Test
    void both_catalogues_and_the_build() throws IOException {
        catalogueWithoutAPrice();
        replace("build.yaml", "currency: EUR\nlines", "currency: EUR\ncolour: red\nlines");
        replace("newer/offers.csv", ",quaymark,58.50,", ",quaymark,dear,");

        assertThat(
                        places(
                                "replace",
                                shop.file("build.yaml"),
                                "--against",
                                shop.file("newer"),
                                "--catalog",
                                shop.file("catalog")))
                .containsExactly(
                        "catalog/offers.csv price", "build.yaml colour", "newer/offers.csv price");
    }

    @Test
    void measurements_the_logs_they_name_and_the_catalogue() throws IOException {
        catalogueWithoutAPrice();
        replace("measured.csv", ",71,50,,", ",fast,50,,");
        replace("log.csv", "3,14.25", "3,long");

        assertThat(
                        places(
                                "calibrate",
                                "--measured",
                                shop.file("measured.csv"),
                                "--measured",
                                shop.file("nowhere.csv"),
                                "--catalog",
                                shop.file("catalog")))
                .containsExactly(
                        "catalog/offers.csv price",
                        "measured.csv average_fps",
                        "log.csv frame_ms",
                        "nowhere.csv file");
    }

    @Test
    void a_filled_in_sheet_beside_a_faulty_build() throws IOException {
        replace(
                "build.yaml",
                "pieces: 1\n    supplier: millrace",
                "pieces: one\n    supplier: millrace");
        replace("speeds.csv", ",71.5,", ",fast,");

        assertThat(
                        places(
                                "accept",
                                shop.file("build.yaml"),
                                "--measured",
                                shop.file("sheet.csv"),
                                "--measured",
                                shop.file("speeds.csv"),
                                "--catalog",
                                shop.file("catalog")))
                .contains("speeds.csv average_fps")
                .anyMatch(line -> line.startsWith("build.yaml lines["))
                .noneMatch(line -> line.startsWith("sheet.csv"));
    }

    @Test
    void a_price_list_its_map_and_the_catalogue() throws IOException {
        catalogueWithoutAPrice();
        replace("map.yaml", "delimiter: semicolon", "delimiter: dash");

        assertThat(
                        places(
                                "catalog",
                                "import",
                                shop.file("nowhere.csv"),
                                "--map",
                                shop.file("map.yaml"),
                                "--catalog",
                                shop.file("catalog")))
                .containsExactly(
                        "catalog/offers.csv price", "map.yaml delimiter", "nowhere.csv file");
    }

    @Test
    void what_stands_in_a_row_that_could_not_be_read_is_not_called_unknown() throws IOException {
        replace("catalog/processor.csv", "merrowby-courante-4,", "merrowby-courante-4,,");

        List<String> places =
                places("audit", shop.file("list.txt"), "--catalog", shop.file("catalog"));

        assertThat(places).isNotEmpty().allMatch(line -> line.startsWith("catalog/"));
    }

    @Test
    void a_catalogue_that_is_not_there_hides_no_fault_of_the_brief() throws IOException {
        replace("brief.yaml", "ceiling: 600", "ceiling: -600");
        Path nowhere = shop.folder().resolve("nowhere");

        assertThat(places("propose", shop.file("brief.yaml"), "--catalog", nowhere.toString()))
                .containsExactly("nowhere catalogue", "brief.yaml ceiling");
    }
}
