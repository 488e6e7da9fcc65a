package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.measurement.FrameLog;

class FrameLogReaderTest {
    private static final FrameColumn USUAL = FrameColumn.usual();

    @Test
    void a_column_by_any_name_among_others_is_read() throws BadInput {
        FrameLog log =
                read(
                        "Application,Place,MsBetweenFrames\n\"a, b\",1,10\n\"a, b\",2,30\n",
                        column("MsBetweenFrames"));

        assertThat(log.frames()).isEqualTo(2);
        assertThat(log.averageFps()).isCloseTo(50, within(1e-9));
    }

    @Test
    void seconds_are_read_as_such() throws BadInput {
        FrameLog log = read("t\n0.010\n0.030\n", new FrameColumn(Optional.empty(), true));

        assertThat(log.averageFps()).isCloseTo(50, within(1e-9));
    }

    @Test
    void one_column_needs_no_name_and_no_header() throws BadInput {
        assertThat(read("10\n30\n", USUAL).frames()).isEqualTo(2);
        assertThat(read("whatever\n10\n30\n", USUAL).frames()).isEqualTo(2);
    }

    @Test
    void semicolons_go_with_decimal_commas_and_remarks_are_passed_by() throws BadInput {
        FrameLog log = read("\uFEFF# bench 3\nn;frame_ms\n1;12,5\n\n2;12,5\n", USUAL);

        assertThat(log.frames()).isEqualTo(2);
        assertThat(log.averageFps()).isCloseTo(80, within(1e-9));
    }

    @Test
    void every_wrong_row_is_a_fault_at_its_place() {
        assertThat(faults("n,frame_ms\n1,10\n2,fast\n3,-4\n4\n", USUAL))
                .containsExactly(
                        "log:3:3: frame_ms: found \"fast\", expected a frame time above 0 in ms;"
                                + " correct it, or take the row out",
                        "log:4:3: frame_ms: found \"-4\", expected a frame time above 0 in ms;"
                                + " correct it, or take the row out",
                        "log:5:1: frame_ms: found nothing, expected a frame time above 0 in ms;"
                                + " correct it, or take the row out");
    }

    @Test
    void a_column_that_is_not_there_is_a_fault_that_names_the_nearest() {
        assertThat(faults("n,frametime\n1,10\n", column("frametme")))
                .containsExactly(
                        "log:1:1: header: found \"n, frametime\", expected a column frametme;"
                                + " name it with --frame-column frametime");
        assertThat(faults("n,ms\n1,10\n", USUAL))
                .containsExactly(
                        "log:1:1: header: found \"n, ms\", expected one column alone, or one called"
                                + " frame_ms; name it with --frame-column");
    }

    @Test
    void times_in_the_other_unit_are_recognised() {
        assertThat(faults("t\n0.016\n0.017\n", USUAL))
                .containsExactly(
                        "log:1:1: file: found \"frame times of 0.01650 ms in the mean\", expected"
                                + " times in milliseconds; say --frame-unit s if these are s");
        assertThat(faults("t\n16\n17\n", new FrameColumn(Optional.empty(), true)))
                .containsExactly(
                        "log:1:1: file: found \"frame times of 1.650e+04 ms in the mean\", expected"
                                + " times in seconds; say --frame-unit ms if these are ms");
    }

    @Test
    void an_empty_file_and_a_missing_one_are_faults(@TempDir Path folder) {
        Path missing = folder.resolve("none.csv");

        BadInput bad =
                catchThrowableOfType(BadInput.class, () -> FrameLogReader.read(missing, USUAL));

        assertThat(faults("", USUAL)).hasSize(1);
        assertThat(bad.faults()).hasSize(1);
        assertThat(bad.getMessage()).contains("none.csv:1:1: file: found nothing");
    }

    /** A stream that is never whole: two million rows out of one piece of a thousand. */
    @Test
    void two_million_rows_are_read_as_they_come() throws BadInput {
        byte[] piece = "9.9\n10.1\n".repeat(500).getBytes(StandardCharsets.US_ASCII);
        List<InputStream> pieces =
                IntStream.range(0, 2_000)
                        .mapToObj(i -> (InputStream) new ByteArrayInputStream(piece))
                        .toList();

        FrameLog log =
                FrameLogReader.read(
                        new SequenceInputStream(Collections.enumeration(pieces)), "log", USUAL);

        assertThat(log.frames()).isEqualTo(2_000_000);
        assertThat(log.averageFps()).isCloseTo(100, within(1e-9));
        assertThat(log.lowFps()).isCloseTo(1_000 / 10.1, within(1e-7));
    }

    private static FrameColumn column(String name) {
        return new FrameColumn(Optional.of(name), false);
    }

    private static FrameLog read(String text, FrameColumn column) throws BadInput {
        InputStream in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        return FrameLogReader.read(in, "log", column);
    }

    private static List<String> faults(String text, FrameColumn column) {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> read(text, column));
        return bad.faults().stream().map(Fault::text).toList();
    }
}
