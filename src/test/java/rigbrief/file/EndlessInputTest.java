package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.diagnostic.BadInput;

/** Streams are read as far as they make sense, however long they are. */
class EndlessInputTest {
    /** Endless, and it tells how much of it was read. */
    private static final class Endless extends InputStream {
        private final int value;
        private long count;

        Endless(int value) {
            this.value = value;
        }

        @Override
        public int read() {
            count++;
            return value;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 'x', '9', ',', ';', '\t', '"', ' '})
    void a_log_that_is_one_endless_cell_is_refused_after_its_first_stretch(int value) {
        Endless endless = new Endless(value);

        BadInput refused =
                catchThrowableOfType(
                        BadInput.class,
                        () -> FrameLogReader.read(endless, "log", FrameColumn.usual()));

        assertThat(refused.faults().get(0).text())
                .startsWith("log:1:1: row: found ")
                .contains("expected a row of at most 100000 characters");
        assertThat(endless.count).isLessThan(1_000_000);
    }

    @Test
    void a_header_of_ten_thousands_of_columns_is_read_once() {
        byte[] log = (",".repeat(99_999) + "\n1\n").getBytes(StandardCharsets.UTF_8);

        BadInput refused =
                catchThrowableOfType(
                        BadInput.class,
                        () ->
                                FrameLogReader.read(
                                        new ByteArrayInputStream(log), "log", FrameColumn.usual()));

        assertThat(refused.faults().get(0).text()).startsWith("log:1:1: header: ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"0x1p3", "5d", "5f", "5D", "1e400", "NaN", "Infinity", "-0", "-5", "1_0"})
    void what_java_alone_takes_for_a_number_is_no_frame_time(String figure) {
        byte[] log = ("frame_ms\n10\n" + figure + "\n").getBytes(StandardCharsets.UTF_8);

        BadInput refused =
                catchThrowableOfType(
                        BadInput.class,
                        () ->
                                FrameLogReader.read(
                                        new ByteArrayInputStream(log), "log", FrameColumn.usual()));

        assertThat(refused.faults().get(0).text())
                .startsWith("log:3:1: frame_ms: found \"" + figure);
    }

    @Test
    void lines_end_as_a_buffered_reader_ends_them() throws IOException {
        String text = "a\n\nb\r\nc\rd\r\r\ne\n\r";

        List<String> lines = new ArrayList<>();
        BoundedLines bounded =
                new BoundedLines(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        for (String line = bounded.next(); line != null; line = bounded.next()) {
            lines.add(line);
        }

        assertThat(lines).isEqualTo(text.lines().toList());
    }
}
