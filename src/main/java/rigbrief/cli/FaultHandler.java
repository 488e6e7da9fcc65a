package rigbrief.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;

/** Turns exceptions into lines that people can act on, with an exit status. */
final class FaultHandler implements IParameterExceptionHandler, IExecutionExceptionHandler {
    private final Console console;

    FaultHandler(Console console) {
        this.console = console;
    }

    @Override
    public int handleParseException(ParameterException wrong, String[] arguments) {
        String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            console.remark(command + ": " + unmatched(unmatched));
        } else {
            wrong.getMessage().lines().forEach(line -> console.remark(command + ": " + line));
        }
        console.remark("Next: " + command + " --help");
        return ExitStatus.WRONG_USE.code();
    }

    private static String unmatched(UnmatchedArgumentException wrong) {
        List<String> commands = List.copyOf(wrong.getCommandLine().getSubcommands().keySet());
        String expected =
                commands.isEmpty() ? "nothing there" : "one of " + String.join(", ", commands);
        String suggestion =
                wrong.getSuggestions().stream()
                        .findFirst()
                        .map(word -> "; did you mean " + word + "?")
                        .orElse("");
        return "found '%s', expected %s%s"
                .formatted(wrong.getUnmatched().get(0), expected, suggestion);
    }

    @Override
    public int handleExecutionException(
            Exception thrown, CommandLine commandLine, ParseResult parsed) {
        if (thrown instanceof BadInput bad) {
            return badInput(bad, commandLine.getCommandSpec().qualifiedName()).code();
        }
        if (thrown instanceof NotWritten refused) {
            console.remark(
                    commandLine.getCommandSpec().qualifiedName() + ": " + refused.getMessage());
            return ExitStatus.WRONG_USE.code();
        }
        return internal(thrown).code();
    }

    private ExitStatus badInput(BadInput bad, String command) {
        for (Fault fault : bad.faults()) {
            console.remark(fault.text());
        }
        if (bad.count() > bad.faults().size()) {
            console.remark("and " + (bad.count() - bad.faults().size()) + " more like these");
        }
        console.remark(bad.count() == 1 ? "1 fault" : bad.count() + " faults");
        console.remark("Next: mend what is listed, then run " + command + " again");
        return ExitStatus.BAD_INPUT;
    }

    private ExitStatus notWritten(NotWritten refused, String command) {
        console.remark(command + ": " + refused.getMessage());
        console.remark("Next: " + command + " --help");
        return ExitStatus.WRONG_USE;
    }

    /** One line that can be reported; the stack trace only for who asked for it. */
    ExitStatus internal(Throwable thrown) {
        if (thrown instanceof OutOfMemoryError) {
            console.remark("rigbrief: out of memory; allow more: RIGBRIEF_JAVA_OPTIONS=-Xmx2g");
            return ExitStatus.INTERNAL_FAULT;
        }
        console.remark(
                "rigbrief: internal fault: %s: %s; please report this line with the files that led to it"
                        .formatted(thrown.getClass().getSimpleName(), thrown.getMessage()));
        if (console.debug()) {
            thrown.printStackTrace(console.err());
        }
        return ExitStatus.INTERNAL_FAULT;
    }
}
