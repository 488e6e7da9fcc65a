package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.report.Style;

class ConsoleTest {

    @ParameterizedTest
    @CsvSource({
        "'out,err', '', TERMINAL",
        "'err', '', PLAIN",
        "'', '', PLAIN",
        "'out,err', '1', PLAIN",
    })
    void letters_are_set_off_on_a_terminal_alone_and_never_against_no_color(
            String terminals, String noColor, Style style) {
        var captured = new Captured().terminals(terminals).environment("NO_COLOR", noColor);

        assertThat(captured.console().style()).isEqualTo(style);
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
}
