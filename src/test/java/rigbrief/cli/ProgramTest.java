package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class ProgramTest {
    private final Captured captured = new Captured();

    static List<String> commands() {
        return List.copyOf(root().getSubcommands().keySet());
    }

    private static CommandLine root() {
        Console console = new Captured().console();
        return Program.commandLine(console, new FaultHandler(console));
    }

    @Test
    void no_command_at_all_is_wrong_use() {
        var status = captured.run();

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.out()).isEmpty();
        assertThat(captured.err())
                .isEqualTo("rigbrief: found no command, expected one\nNext: rigbrief --help\n");
    }

    @Test
    void a_misspelt_command_is_met_with_the_one_that_was_meant() {
        var status = captured.run("propse", "a.yaml");

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.err())
                .startsWith("rigbrief: found 'propse', expected one of propose, audit, ")
                .contains("did you mean propose?");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "propose",
                "propose a.yaml b.yaml",
                "propose a.yaml --format xls",
                "propose a.yaml --time soon",
                "propose a.yaml --seed x",
                "propose a.yaml --colour",
                "audit",
                "catalog",
                "catalog check stray",
                "help nothing"
            })
    void wrong_use_is_said_in_one_line_with_a_next_one(String line) {
        var status = captured.run(line.split(" "));

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.out()).isEmpty();
        assertThat(captured.err())
                .hasLineCount(2)
                .contains("\nNext: rigbrief")
                .endsWith("--help\n");
    }

    @ParameterizedTest
    @MethodSource("commands")
    void every_command_explains_itself(String command) {
        var status = captured.run(command, "--help");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(captured.out()).startsWith("Usage: rigbrief " + command);
        assertThat(captured.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void help_of_a_command_is_what_the_command_says_of_itself(String command) {
        var asked = new Captured();
        asked.run(command, "--help");

        captured.run("help", command);

        assertThat(captured.out()).isEqualTo(asked.out());
    }

    @Test
    void help_reaches_commands_below_commands() {
        captured.run("help", "catalog", "check");

        assertThat(captured.out()).startsWith("Usage: rigbrief catalog check");
    }

    @Test
    void the_version_is_one_line() {
        var status = captured.run("--version");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(captured.out()).hasLineCount(1).startsWith("rigbrief ");
    }

    @Test
    void help_is_set_off_on_a_terminal_unless_no_color_is_asked_for() {
        var plain = new Captured().terminals("out,err");
        var set = new Captured().terminals("out,err");

        plain.run("--help", "--no-color");
        set.run("--help");

        assertThat(set.out()).contains("\u001b[1m");
        assertThat(plain.out()).doesNotContain("\u001b");
    }

    @Test
    void a_control_character_on_the_command_line_does_not_reach_the_terminal() {
        captured.run("propose", "a", "--time", "\u001b[2J");

        assertThat(captured.err()).doesNotContain("\u001b").contains("\\u001B[2J");
    }

    @Test
    void rules_are_listed() {
        var status = captured.run("rules");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(captured.out())
                .contains("cooler-height")
                .endsWith("Next: rigbrief audit BUILD\n");
    }

    @Test
    void a_catalogue_that_is_not_there_is_bad_input_and_the_result_of_a_check() {
        var status = captured.run("catalog", "check", "--catalog", "nowhere");

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(captured.out())
                .startsWith("nowhere:1:1: ")
                .endsWith(
                        "Next: mend what is listed, then rigbrief catalog check --catalog nowhere\n");
        assertThat(captured.err()).isEmpty();
    }

    @Test
    void a_catalogue_that_is_not_there_is_a_remark_to_any_other_command() {
        var status = captured.run("catalog", "stats", "--catalog", "nowhere");

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(captured.out()).isEmpty();
        assertThat(captured.err()).startsWith("nowhere:1:1: ").contains("\n1 fault\n");
    }
}
