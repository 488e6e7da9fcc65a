package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrateCommandTest {
    private static final String SAMPLE = "scenarios/measurements/thirty-machines.csv";
    private static final String ROWS =
            "machine,processor,graphics,memory,workload,preset,average_fps\n"
                    + "a1,merrowby-courante-6-n,garrowick-couplet-sorrel-280,"
                    + "lathmere-plainbar-2x16-d5-5600-c46,skirl,high,210\n";

    @TempDir private Path folder;

    @Test
    void what_was_found_is_printed_and_the_next_command_writes_it() {
        Captured console = new Captured().input(ROWS);

        ExitStatus status = console.run("calibrate", "--measured", "-");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out())
                .contains("1 measurement of 1 machine\n")
                .endsWith("Next: rigbrief calibrate --measured - --out fitted\n");
    }

    @Test
    void an_overlay_is_written_and_laid_over_the_catalogue_by_the_next_command() {
        Captured console = new Captured();
        String out = folder.resolve("fitted").toString();

        ExitStatus status = console.run("calibrate", "--measured", SAMPLE, "--out", out);

        Captured stats = new Captured();
        ExitStatus stacked =
                stats.run("catalog", "stats", "--catalog", "catalog-sample", "--catalog", out);
        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out())
                .endsWith(
                        "Next: rigbrief propose BRIEF --catalog catalog-sample --catalog "
                                + out
                                + "\n");
        assertThat(stacked).isEqualTo(ExitStatus.DONE);
        assertThat(stats.out())
                .containsPattern("harbour-of-glass +frame-rate +30 ")
                .endsWith("--catalog catalog-sample --catalog " + out + "\n");
    }

    @Test
    void an_overlay_that_is_there_stays_unless_forced() throws IOException {
        Files.writeString(folder.resolve("rates.csv"), "mine");
        String out = folder.toString();

        Captured refused = new Captured().input(ROWS);
        ExitStatus status = refused.run("calibrate", "--measured", "-", "--out", out);
        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(refused.err()).contains("rates.csv: found a file of that name");
        assertThat(Files.readString(folder.resolve("rates.csv"))).isEqualTo("mine");

        Captured forced = new Captured().input(ROWS);
        assertThat(forced.run("calibrate", "--measured", "-", "--out", out, "--force"))
                .isEqualTo(ExitStatus.DONE);
        assertThat(Files.readString(folder.resolve("rates.csv"))).startsWith("part,tflops");
    }

    @Test
    void rates_come_from_frame_time_logs_whose_column_is_named() throws IOException {
        Files.writeString(folder.resolve("run.csv"), "n;seconds between\n1;0,004\n2;0,006\n");
        Path measured = folder.resolve("measured.csv");
        Files.writeString(
                measured, ROWS.replace("average_fps", "frame_log").replace("210", "run.csv"));

        Captured console = new Captured();
        ExitStatus status =
                console.run(
                        "calibrate",
                        "--measured",
                        measured.toString(),
                        "--frame-column",
                        "seconds between",
                        "--frame-unit",
                        "s",
                        "--format",
                        "json");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out()).contains("\"schema\" : \"rigbrief/calibration/1\"");
        assertThat(console.err()).contains("Next: rigbrief calibrate --measured ");
    }

    @Test
    void faults_are_listed_and_the_status_is_that_of_bad_input() {
        Captured console = new Captured().input(ROWS.replace("skirl", "skrl"));

        ExitStatus status = console.run("calibrate", "--measured", "-");

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(console.out()).isEmpty();
        assertThat(console.err()).contains("-:2:", "did you mean skirl?", "1 fault");
    }

    @Test
    void work_that_no_machine_can_do_is_bad_input_too() {
        String unable =
                "machine,processor,memory,workload,average_fps\n"
                        + "a1,merrowby-courante-6-n,lathmere-plainbar-2x16-d5-5600-c46,skirl,9\n";
        Captured console = new Captured().input(unable);

        ExitStatus status = console.run("calibrate", "--measured", "-");

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(console.err())
                .contains("-:2:1: row: found \"work that the machine can't do by the catalogue\"");
    }

    @Test
    void without_measurements_it_is_wrong_use() {
        Captured console = new Captured();

        assertThat(console.run("calibrate")).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(console.err()).contains("--measured");
    }
}
