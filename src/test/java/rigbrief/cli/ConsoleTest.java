package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.report.Style;

class ConsoleTest {

    @ParameterizedTest
    @CsvSource({
        "'out,err', '', true",
        "'err', '', false",
        "'', '', false",
        "'out,err', '1', false",
    })
    void letters_are_set_off_on_a_terminal_alone_and_never_against_no_color(
            String terminals, String noColor, boolean setOff) {
        var captured = new Captured().terminals(terminals).environment("NO_COLOR", noColor);

        assertThat(captured.console().style().setOff()).isEqualTo(setOff);
    }

    @ParameterizedTest
    @CsvSource({"132, 132", "'', 80", "40, 80", "100000, 80", "wide, 80", "-1, 80"})
    void a_page_is_as_wide_as_columns_says_and_80_where_that_is_no_width(
            String columns, int width) {
        var captured = new Captured().environment("COLUMNS", columns);

        assertThat(captured.console().style().width()).isEqualTo(width);
    }

    @Test
    void no_colour_leaves_the_width_as_it_is() {
        var captured = new Captured().terminals("out").environment("COLUMNS", "120");

        assertThat(captured.console().plain().style()).isEqualTo(Style.PLAIN.wide(120));
    }

    @ParameterizedTest
    @CsvSource({"'in,out,err', true", "'in,err', false", "'out,err', false", "'', false"})
    void somebody_can_be_asked_where_both_input_and_output_are_a_terminal(
            String terminals, boolean interactive) {
        assertThat(new Captured().terminals(terminals).console().interactive())
                .isEqualTo(interactive);
    }

    @Test
    void progress_is_shown_on_a_terminal_and_gone_before_the_next_line() {
        var captured = new Captured().terminals("err");
        var console = captured.console();

        console.progress("searching");
        console.remark("done");
        console.flush();

        assertThat(captured.err()).isEqualTo("\r\u001b[Ksearching\r\u001b[Kdone\n");
    }

    @Test
    void no_progress_is_shown_in_a_pipe() {
        var captured = new Captured().terminals("out");
        var console = captured.console();

        console.progress("searching");
        console.flush();

        assertThat(captured.err()).isEmpty();
    }

    @Test
    void a_remark_can_not_act_on_a_terminal() {
        var captured = new Captured();
        var console = captured.console();

        console.remark("file \u001b[2J\u202e.yaml");
        console.flush();

        assertThat(captured.err()).isEqualTo("file \\u001B[2J\\u202E.yaml\n");
    }

    @Test
    void text_leaves_as_utf_8() {
        var captured = new Captured();
        var console = captured.console();

        console.print("71 °C\n");
        console.flush();

        assertThat(captured.out()).isEqualTo("71 °C\n");
    }

    @ParameterizedTest
    @CsvSource({
        "No space left on device, No space left on device",
        "Bad file descriptor, Bad file descriptor",
        "Broken pipe, ''"
    })
    void results_that_can_not_be_written_are_told_unless_the_reader_had_enough(
            String why, String told) {
        var console =
                Console.of(
                        new OutputStream() {
                            @Override
                            public void write(int one) throws IOException {
                                throw new IOException(why);
                            }
                        },
                        OutputStream.nullOutputStream(),
                        InputStream.nullInputStream(),
                        "",
                        Map.of());

        console.print("a result");
        console.flush();

        assertThat(console.failure().orElse("")).isEqualTo(told);
    }
}
