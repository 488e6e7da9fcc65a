package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompletionCommandTest {
    private static final Path SHELL = Path.of("/bin/bash");

    @TempDir Path folder;

    private static String script() {
        var captured = new Captured();
        captured.run("completion");
        return captured.out();
    }

    @Test
    void the_script_prints_nothing_when_a_shell_reads_it() throws Exception {
        assertThat(inShell("true")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "rigbrief pro, propose",
        "rigbrief int, intake",
        "rigbrief propose --for, --format",
        "rigbrief intake --res, --resume",
        "rigbrief propose --format j, json",
        "rigbrief catalog ch, check",
        "rigbrief help --m, --man",
    })
    void a_shell_completes_commands_options_and_words(String typed, String completed)
            throws Exception {
        String[] words = typed.split(" ");
        String line =
                ("COMP_WORDS=(%s); COMP_CWORD=%d; COMP_LINE='%s'; COMP_POINT=%d;"
                                + " _complete_rigbrief; echo \"${COMPREPLY[@]}\"")
                        .formatted(typed, words.length - 1, typed, typed.length());

        assertThat(inShell(line).split("\\s+")).contains(completed);
    }

    @Test
    void every_command_is_completed() throws Exception {
        String line =
                "COMP_WORDS=(rigbrief ''); COMP_CWORD=1; COMP_LINE='rigbrief ';"
                        + " COMP_POINT=9; _complete_rigbrief; echo \"${COMPREPLY[@]}\"";

        assertThat(List.of(inShell(line).split("\\s+"))).containsAll(Commands.NAMES);
    }

    private String inShell(String line) throws IOException, InterruptedException {
        assumeTrue(Files.exists(SHELL), "needs bash");
        Path file = Files.writeString(folder.resolve("completion"), script());
        Path out = folder.resolve("out");
        Process shell =
                new ProcessBuilder(SHELL.toString(), "-c", "source '" + file + "'; " + line)
                        .redirectErrorStream(true)
                        .redirectOutput(out.toFile())
                        .start();
        shell.waitFor();
        return Files.readString(out);
    }
}
