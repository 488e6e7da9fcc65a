package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AcceptCommandTest {
    private static final String BRIEF = TuneCommandTest.BRIEF;

    @TempDir Path folder;

    @Test
    void without_measurements_the_sheet_is_printed() {
        var console = machine();

        ExitStatus status = console.run("accept", "-", "--brief", BRIEF);

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(console.out())
                .startsWith("Acceptance sheet")
                .contains("Before you begin", "Module 1 alone", "Harbour of Glass")
                .contains("--out sheet.csv");
    }

    @Test
    void a_sheet_that_was_written_can_be_filled_in_and_read_back() throws IOException {
        Path sheet = folder.resolve("sheet.csv");
        machine().run("accept", "-", "--brief", BRIEF, "--out", sheet.toString());
        fill(sheet, "look.screen-on-card", "pass");
        fill(sheet, "workload.harbour-of-glass.average", "3.5");

        var console = machine();
        ExitStatus status =
                console.run("accept", "-", "--brief", BRIEF, "--measured", sheet.toString());

        assertThat(status).isEqualTo(ExitStatus.BREAKS);
        assertThat(console.out())
                .startsWith("NOT ACCEPTED")
                .contains("Broken promises", "3.5 fps", "Likeliest causes");
    }

    @Test
    void a_sheet_that_is_there_is_not_overwritten() throws IOException {
        Path sheet = Files.writeString(folder.resolve("sheet.csv"), "mine");

        var console = machine();
        ExitStatus status = console.run("accept", "-", "--brief", BRIEF, "--out", sheet.toString());

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(console.err()).contains("--force");
        assertThat(sheet).hasContent("mine");
    }

    @Test
    void every_fault_of_a_sheet_is_told_at_once() throws IOException {
        Path sheet =
                Files.writeString(
                        folder.resolve("sheet.csv"),
                        "line,measured\n"
                                + "look.leads,perhaps\n"
                                + "look.leeds,pass\n"
                                + "heat.room-c,warm\n"
                                + "workload.harbour-of-glass.low,0\n"
                                + "ports.front,pass\n"
                                + "ports.front,pass\n");

        var console = machine();
        ExitStatus status =
                console.run("accept", "-", "--brief", BRIEF, "--measured", sheet.toString());

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(console.err())
                .contains(":2:12: measured: found \"perhaps\", expected pass or fail")
                .contains(":3:1: line: found \"look.leeds\"", "did you mean look.leads?")
                .contains(":4:13: measured: found \"warm\", expected a number")
                .contains(":5:31: measured: found \"0\", expected a figure above 0 in fps")
                .contains(":7:1: line: found \"ports.front\", expected each line once")
                .contains("5 faults");
    }

    @Test
    void measurements_with_a_log_of_frame_times_are_read_as_well() throws IOException {
        StringBuilder log = new StringBuilder("frame_ms\n");
        for (int i = 0; i < 990; i++) {
            log.append("200\n");
        }
        log.append("400\n".repeat(10));
        Files.writeString(folder.resolve("walk.csv"), log);
        Path measured =
                Files.writeString(
                        folder.resolve("bench.csv"),
                        "workload,preset,rays,upscaling,frame_log\n"
                                + "harbour-of-glass,high,high,quality,walk.csv\n");

        var console = machine();
        ExitStatus status =
                console.run("accept", "-", "--brief", BRIEF, "--measured", measured.toString());

        // Hand calculation: 1,000 frames in 202 s are 4.95 fps; 990 of 1,000 take 200 ms.
        assertThat(status).isEqualTo(ExitStatus.BREAKS);
        assertThat(console.out())
                .containsPattern("Harbour of Glass, average +5[.]0 fps")
                .containsPattern("Harbour of Glass, 1 % low +5[.]0 fps");
    }

    @Test
    void json_goes_out_alone_with_its_schema() {
        var console = machine();

        console.run("accept", "-", "--brief", BRIEF, "--format", "json");

        assertThat(console.out()).contains("\"schema\" : \"rigbrief/sheet/1\"").endsWith("}\n");
        assertThat(console.err()).contains("Next: ");
    }

    private static Captured machine() {
        return new Captured().input(TuneCommandTest.LIST);
    }

    /** Every row ends in the empty cell that is to be filled. */
    private static void fill(Path sheet, String line, String figure) throws IOException {
        Files.writeString(
                sheet,
                Files.readString(sheet).replaceAll("(?m)^(" + line + ",.*)$", "$1" + figure));
    }
}
