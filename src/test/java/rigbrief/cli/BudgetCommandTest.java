package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BudgetCommandTest {
    private final Captured captured = new Captured();

    @Test
    void an_unknown_goal_is_refused_with_the_needs_that_there_are() {
        var status = captured.run("budget", "scenarios/tight-600.yaml", "--goal", "loudness");

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.err())
                .contains("--goal: found 'loudness', expected a need of the brief: brass-regatta, ")
                .endsWith("Next: rigbrief budget --help\n");
    }

    @Test
    void an_amount_that_is_none_is_refused() {
        var status = captured.run("budget", "scenarios/tight-600.yaml", "--up-to", "plenty");

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.err()).contains("--up-to: found \"plenty\", expected an amount of EUR");
    }

    @Test
    void the_points_of_a_front_are_written_into_a_file_whole(@TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("front.csv");

        var status =
                captured.run(
                        "budget",
                        "scenarios/tight-600.yaml",
                        "--goal",
                        "memory",
                        "--format",
                        "csv",
                        "--out",
                        file.toString());

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(captured.out()).isEmpty();
        assertThat(Files.readAllLines(file)).hasSizeGreaterThan(5);
        assertThat(captured.err()).contains("written: ").contains("Next: rigbrief propose");
    }

    @Test
    void a_file_that_is_there_is_not_overwritten(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("front.csv"), "mine");

        var status =
                captured.run(
                        "budget",
                        "scenarios/tight-600.yaml",
                        "--format",
                        "csv",
                        "--out",
                        "" + file);

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(Files.readString(file)).isEqualTo("mine");
    }

    @ParameterizedTest
    @CsvSource({
        "en_GB.UTF-8, true",
        "de_DE.utf8, true",
        "C, false",
        "POSIX, false",
        "en_GB.ISO-8859-1, false"
    })
    void letters_beyond_ascii_are_drawn_where_the_locale_has_them(String locale, boolean drawn) {
        assertThat(BudgetCommand.unicode(Map.of("LANG", locale))).isEqualTo(drawn);
        assertThat(BudgetCommand.unicode(Map.of("LC_ALL", locale, "LANG", "C"))).isEqualTo(drawn);
    }

    @Test
    void no_locale_at_all_means_ascii() {
        assertThat(BudgetCommand.unicode(Map.of())).isFalse();
    }
}
