package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Standard output that leads nowhere: what is lost is said, what is not wanted is not. */
class LostOutputIT {
    private static final int PATIENCE_S = 120;

    @TempDir Path folder;

    @BeforeAll
    static void aShell() {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "needs a shell");
    }

    /** Runs a line of shell, in which $rb is the program; gives status and standard error. */
    private Packaged.Run shell(String line) throws IOException, InterruptedException {
        Path err = folder.resolve("err");
        ProcessBuilder builder =
                new ProcessBuilder("/bin/sh", "-c", line)
                        .redirectErrorStream(false)
                        .redirectError(err.toFile());
        builder.environment().put("rb", new Packaged().launcher().toString());
        builder.environment().put("folder", folder.toString());
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
        return new Packaged.Run(process.exitValue(), out, Files.readString(err));
    }

    @Test
    void a_full_device_is_told_with_2() throws Exception {
        assumeTrue(Files.exists(Path.of("/dev/full")), "needs /dev/full");

        for (String line : new String[] {"rules", "--version", "help --man propose"}) {
            Packaged.Run run = shell("\"$rb\" " + line + " > /dev/full");

            assertThat(run.status()).as(line).isEqualTo(2);
            assertThat(run.err())
                    .isEqualTo(
                            "rigbrief: standard output: can't be written (No space left on"
                                    + " device); write to another place\n");
        }
    }

    @Test
    void a_closed_output_is_told_with_2() throws Exception {
        Packaged.Run run = shell("\"$rb\" rules >&-");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("standard output: can't be written");
    }

    @Test
    void a_reader_that_has_enough_is_no_fault() throws Exception {
        // The program ends after its reader did; its status goes another way than the pipe's.
        Packaged.Run run =
                shell("{ sleep 1; \"$rb\" rules; echo $? > \"$folder/status\"; } | head -c 0");

        assertThat(folder.resolve("status")).hasContent("0");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void files_are_written_though_nobody_reads_what_is_said() throws Exception {
        Packaged.Run run = shell("\"$rb\" intake --form \"$folder/form.html\" >&-");

        assertThat(run.status()).isEqualTo(2);
        assertThat(folder.resolve("form.html")).content().endsWith("</html>\n");
    }
}
