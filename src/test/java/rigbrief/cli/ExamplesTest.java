package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import rigbrief.cli.Examples.Example;

/** Walks the commands: none without examples, no example that the command line would refuse. */
class ExamplesTest {

    private static CommandLine root() {
        Console console = new Captured().console();
        return Program.commandLine(console, new FaultHandler(console));
    }

    /** Names of all commands, with the one above them. */
    static List<String> commands() {
        List<String> names = new ArrayList<>();
        add(names, root(), "");
        return names;
    }

    private static void add(List<String> names, CommandLine above, String path) {
        above.getSubcommands()
                .forEach(
                        (name, below) -> {
                            names.add(path + name);
                            add(names, below, path + name + " ");
                        });
    }

    static List<Example> examples() {
        return Examples.all();
    }

    @Test
    void commands_are_found_at_all() {
        assertThat(commands()).contains("propose", "catalog", "catalog check", "intake", "help");
    }

    @ParameterizedTest
    @MethodSource("commands")
    void a_command_shows_an_example_that_begins_with_its_name(String command) {
        var captured = new Captured();
        List<String> help = new ArrayList<>(List.of(command.split(" ")));
        help.add("--help");

        captured.run(help.toArray(String[]::new));

        assertThat(captured.out()).contains("\nExamples:\n").contains("rigbrief " + command);
        assertThat(Examples.all()).extracting(Example::command).contains(command);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void an_example_belongs_to_a_command_that_there_is(Example example) {
        assertThat(commands()).contains(example.command().replace("rigbrief", "propose"));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void an_example_is_a_command_line_that_can_be_read(Example example) {
        String[] words = words(example.line());

        assertThat(words).isNotEmpty();
        assertThatCode(() -> root().parseArgs(words)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void an_example_fits_80_columns_and_says_what_it_does(Example example) {
        assertThat(example.line()).hasSizeLessThanOrEqualTo(78);
        assertThat(example.words()).hasSizeLessThanOrEqualTo(74).endsWith(".");
    }

    /** What the program gets to see of a line of the shell. */
    private static String[] words(String line) {
        String own = line.replaceFirst("^source <[(](.*)[)]$", "$1").replaceFirst(" [<>] .*$", "");
        assertThat(own).startsWith("rigbrief ");
        return own.substring("rigbrief ".length()).split(" ");
    }
}
