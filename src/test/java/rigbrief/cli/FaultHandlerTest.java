package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;

class FaultHandlerTest {
    private static final Fault FAULT =
            new Fault("b.yaml", 7, 12, "ceiling", "-5", "an amount above 0", "write the total");

    private final Captured captured = new Captured();

    @Test
    void an_internal_fault_is_one_line_that_asks_for_a_report() {
        int code = handle(captured, new IllegalStateException("found \u001b[1m"));

        assertThat(code).isEqualTo(1);
        assertThat(captured.err())
                .startsWith("rigbrief: internal fault: IllegalStateException: found \\u001B[1m; ")
                .contains("please report")
                .hasLineCount(1);
    }

    @Test
    void a_stack_trace_is_shown_to_who_asks_for_it() {
        var asking = new Captured().environment("RIGBRIEF_DEBUG", "1");

        handle(asking, new IllegalStateException("broken"));

        assertThat(asking.err()).contains("\tat rigbrief.cli.FaultHandlerTest.");
    }

    @Test
    void all_faults_of_bad_input_are_listed_with_their_number() {
        int code = handle(captured, new BadInput(List.of(FAULT, FAULT), 2));

        assertThat(code).isEqualTo(3);
        assertThat(captured.err())
                .startsWith((FAULT.text() + "\n").repeat(2) + "2 faults\nNext: ")
                .hasLineCount(4);
    }

    @Test
    void faults_that_were_not_kept_are_counted() {
        handle(captured, new BadInput(List.of(FAULT), 5));

        assertThat(captured.err()).contains("and 4 more like these\n5 faults\n");
    }

    @Test
    void a_file_that_can_not_be_written_is_wrong_use() {
        int code = handle(captured, new NotWritten("a.yaml: found a file; add --force"));

        assertThat(code).isEqualTo(2);
        assertThat(captured.err()).startsWith("rigbrief: a.yaml: found a file; add --force\n");
    }

    private static int handle(Captured captured, Exception thrown) {
        Console console = captured.console();
        var handler = new FaultHandler(console);
        CommandLine line = Program.commandLine(console, handler);
        int code = handler.handleExecutionException(thrown, line, null);
        console.flush();
        return code;
    }
}
