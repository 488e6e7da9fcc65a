package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The price list that ships with the scenarios, taken into a copy of the sample catalogue. */
class CatalogImportCommandTest {
    private static final Path LISTS = Path.of("scenarios", "pricelists");
    private static final Path LIST = LISTS.resolve("dovecote-2026-12.csv");
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    @TempDir Path folder;

    private final Captured console = new Captured();

    @BeforeEach
    void copy() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("catalog-sample"))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    @Test
    void a_dry_run_shows_everything_and_changes_nothing() {
        ExitStatus status = run(LIST, "--dry-run");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out())
                .contains("43 rows and 1 without a price, 38 matched, 5 not.")
                .contains("Prices that move", "Not matched", "--accept ");
        assertUnchanged();
    }

    @Test
    void a_sound_list_is_taken_in_and_the_statistics_show_how_prices_moved() {
        assertThat(run(LIST)).isEqualTo(ExitStatus.DONE);

        var statistics = new Captured();
        statistics.run("catalog", "stats", "--catalog", folder.toString());
        assertThat(console.out()).contains("Changed: 38 offers; 36 earlier ones put on record");
        assertThat(statistics.out())
                .contains("Prices over time", "of 36 with more than one")
                .contains("galebourne-breeze-low");
        assertThat(new Captured().run("catalog", "check", "--catalog", folder.toString()))
                .isEqualTo(ExitStatus.DONE);
    }

    @Test
    void the_same_list_again_changes_nothing_more() throws IOException {
        run(LIST);
        String offers = Files.readString(folder.resolve("offers.csv"));
        String prices = Files.readString(folder.resolve("prices.csv"));

        assertThat(run(LIST)).isEqualTo(ExitStatus.DONE);

        assertThat(folder.resolve("offers.csv")).hasContent(offers);
        assertThat(folder.resolve("prices.csv")).hasContent(prices);
    }

    @Test
    void a_suggested_part_is_taken_once_it_is_named() {
        assertThat(run(LIST, "--accept", "43=pellidor-curlew-1644-d4")).isEqualTo(ExitStatus.DONE);

        assertThat(console.out()).contains("39 matched, 4 not");
    }

    @Test
    void one_suspicious_line_keeps_the_whole_list_out() throws IOException {
        Path wrong = list(Files.readString(LIST, WINDOWS).replace(";184,00;", ";1.840,00;"));

        assertThat(run(wrong)).isEqualTo(ExitStatus.BAD_INPUT);

        assertThat(console.out()).contains("Nothing is changed: 1 thing is suspicious", "+900.0 %");
        assertUnchanged();
    }

    @ParameterizedTest
    @CsvSource({"--accept,4", "--skip,4"})
    void a_suspicious_line_can_be_accepted_or_left_out(String option, String line)
            throws IOException {
        Path wrong = list(Files.readString(LIST, WINDOWS).replace(";184,00;", ";1.840,00;"));

        assertThat(run(wrong, option, line)).isEqualTo(ExitStatus.DONE);
    }

    @Test
    void wrong_cells_are_all_told_and_nothing_is_changed() throws IOException {
        Path wrong =
                list(
                        Files.readString(LIST, WINDOWS)
                                .replace(";184,00;", ";184.00,;")
                                .replace(";46;1 day", ";46;soon"));

        assertThat(run(wrong)).isEqualTo(ExitStatus.BAD_INPUT);

        assertThat(console.err()).contains(":4:", "Net price", ":6:", "D\u00e9lai", "2 faults");
        assertUnchanged();
    }

    @ParameterizedTest
    @CsvSource({
        "--accept,999=ostrel-twill-8",
        "--accept,4=ostrel-twil-8",
        "--accept,four",
        "--skip,1",
        "--as-of,tomorrow"
    })
    void nonsense_about_lines_is_wrong_use(String option, String word) {
        assertThat(run(LIST, option, word)).isEqualTo(ExitStatus.WRONG_USE);

        assertUnchanged();
    }

    private Path list(String text) throws IOException {
        return Files.write(folder.resolve("list.csv"), text.getBytes(WINDOWS));
    }

    private ExitStatus run(Path list, String... more) {
        List<String> words =
                new ArrayList<>(
                        List.of(
                                "catalog",
                                "import",
                                list.toString(),
                                "--map",
                                LISTS.resolve("dovecote.map.yaml").toString(),
                                "--catalog",
                                folder.toString()));
        words.addAll(Arrays.asList(more));
        return console.run(words.toArray(String[]::new));
    }

    private void assertUnchanged() {
        assertThat(folder.resolve("offers.csv"))
                .hasSameBinaryContentAs(Path.of("catalog-sample", "offers.csv"));
        assertThat(folder.resolve("prices.csv")).doesNotExist();
    }
}
