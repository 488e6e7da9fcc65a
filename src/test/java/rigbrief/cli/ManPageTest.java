package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

class ManPageTest {
    private static final Path FORMATTER = Path.of("/usr/bin/groff");

    @TempDir Path folder;

    static List<String> commands() {
        return ExamplesTest.commands();
    }

    private static String page(String command) {
        var captured = new Captured();
        captured.run(("help --man " + command).strip().split(" "));
        return captured.out();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void the_page_of_a_command_has_the_sections_of_a_manual(String command) {
        assertThat(page(command))
                .startsWith(".TH ")
                .contains("\n.SH \"NAME\"\nrigbrief\\-" + command.replace(" ", "\\-") + " \\- ")
                .contains("\n.SH \"SYNOPSIS\"\n")
                .contains("\n.SH \"OPTIONS\"\n")
                .contains("\n.SH \"EXIT STATUS\"\n")
                .contains("\n.SH \"EXAMPLES\"\n");
    }

    @ParameterizedTest
    @MethodSource("commands")
    void a_roff_formatter_has_nothing_to_say_against_the_page(String command)
            throws IOException, InterruptedException {
        assumeTrue(Files.exists(FORMATTER), "needs groff in /usr/bin");
        Path file = Files.writeString(folder.resolve("page.1"), page(command));

        Process groff =
                new ProcessBuilder(
                                FORMATTER.toString(),
                                "-man",
                                "-Tutf8",
                                "-P-cbou",
                                "-ww",
                                file.toString())
                        .redirectOutput(folder.resolve("out").toFile())
                        .redirectError(folder.resolve("err").toFile())
                        .start();

        assertThat(groff.waitFor()).isZero();
        assertThat(folder.resolve("err")).isEmptyFile();
        String shown = Files.readString(folder.resolve("out"), StandardCharsets.UTF_8);
        assertThat(shown.replaceAll("\\s+", " "))
                .contains("rigbrief " + command)
                .contains("--no-color");
    }

    @Test
    void the_page_of_the_program_lists_its_commands() {
        assertThat(page("")).contains(".SH \"COMMANDS\"").contains("\n.B \"propose\"\n");
    }

    @Test
    void nothing_in_a_text_is_taken_for_a_request_or_an_escape() {
        assertThat(ManPage.escaped(".TH it's \\fB a-b ~^`"))
                .isEqualTo("\\&.TH it\\(aqs \\efB a\\-b \\(ti\\(ha\\(ga");
        assertThat(ManPage.escaped("'x\ny")).isEqualTo("\\(aqx y");
        assertThat(ManPage.escaped("°é")).isEqualTo("\\[u00B0]\\[u00E9]");
    }

    @Test
    void a_quote_in_a_description_stays_a_quote() {
        CommandSpec spec = CommandSpec.create().name("rigbrief");
        spec.usageMessage().description("Says \"hello\". And more.");
        spec.addOption(
                OptionSpec.builder("--to")
                        .paramLabel("\"NAME\"")
                        .arity("1")
                        .description("Whom.")
                        .build());

        assertThat(ManPage.of(spec))
                .contains("rigbrief \\- Says \"hello\"\n")
                .contains(".B \"\\-\\-to \\(dqNAME\\(dq\"\n");
    }

    @Test
    void help_and_manual_of_a_command_that_is_not_there_are_refused_alike() {
        var captured = new Captured();

        var status = captured.run("help", "--man", "nothing");

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
    }
}
