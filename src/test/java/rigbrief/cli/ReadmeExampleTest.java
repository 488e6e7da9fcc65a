package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The README's worked scenarios are what the program prints. */
class ReadmeExampleTest {
    @Test
    void the_answered_scenario_is_printed_line_by_line() throws IOException {
        isPrinted("scenarios/tight-600.yaml", ExitStatus.DONE);
    }

    @Test
    void the_impossible_scenario_is_printed_line_by_line() throws IOException {
        isPrinted("scenarios/impossible.yaml", ExitStatus.IMPOSSIBLE);
    }

    private static void isPrinted(String scenario, ExitStatus status) throws IOException {
        Captured console = new Captured();

        ExitStatus ended = console.run("propose", scenario);

        assertThat(ended).isEqualTo(status);
        List<String> printed = console.out().lines().toList();
        for (String line : example(scenario)) {
            if (!line.equals("...")) {
                assertThat(printed).contains(line);
            }
        }
    }

    /** The lines of the fenced block that follows the command in the README. */
    private static List<String> example(String scenario) throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        int command = readme.indexOf("    target/rigbrief propose " + scenario + "\n");
        assertThat(command).as("the command in the README").isPositive();
        int start = readme.indexOf("```text\n", command) + "```text\n".length();
        return readme.substring(start, readme.indexOf("```", start)).lines().toList();
    }
}
