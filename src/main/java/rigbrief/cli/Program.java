package rigbrief.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.TypeConversionException;
import rigbrief.diagnostic.Quotation;

/** The command line as a whole. */
public final class Program {
    /** Help is sentences, and longer lines lose the eye. */
    private static final int HELP_WIDEST = 100;

    private Program() {}

    /** Runs one command line; nothing it does ends the process. */
    public static ExitStatus run(Console console, String... arguments) {
        Console chosen = chosen(console, Arrays.asList(arguments));
        ExitStatus status = execute(chosen, arguments);
        chosen.flush();
        Optional<String> failure = chosen.failure();
        if (failure.isEmpty()) {
            return status;
        }
        chosen.remark(
                "rigbrief: standard output: can't be written (%s); write to another place"
                        .formatted(failure.get()));
        chosen.flush();
        return ExitStatus.WRONG_USE;
    }

    /** Whatever the command, these two decide how everything else is printed. */
    private static Console chosen(Console console, List<String> arguments) {
        Console chosen = arguments.contains(RootCommand.NO_COLOR) ? console.plain() : console;
        return arguments.contains(RootCommand.DEBUG) ? chosen.debugging() : chosen;
    }

    private static ExitStatus execute(Console console, String... arguments) {
        FaultHandler faults = new FaultHandler(console);
        try {
            List<String> names = Commands.neededFor(Arrays.asList(arguments));
            return ExitStatus.of(commandLine(console, faults, names).execute(arguments));
        } catch (Error | RuntimeException e) {
            return faults.internal(e);
        }
    }

    /** The whole command line. */
    static CommandLine commandLine(Console console, FaultHandler faults) {
        return commandLine(console, faults, Commands.NAMES);
    }

    /** The command line with some of its commands. */
    private static CommandLine commandLine(
            Console console, FaultHandler faults, List<String> names) {
        CommandLine root = new CommandLine(new RootCommand());
        names.forEach(name -> root.addSubcommand(name, Commands.make(name, console)));
        Examples.addTo(root);
        return root.setOut(writer(console.out()))
                .setErr(writer(console.err()))
                .setColorScheme(colours(console))
                .setUsageHelpWidth(Math.min(HELP_WIDEST, console.style().width()))
                .setUsageHelpAutoWidth(false)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .registerConverter(Path.class, Program::path)
                .setParameterExceptionHandler(faults)
                .setExecutionExceptionHandler(faults);
    }

    private static Path path(String word) {
        try {
            return Path.of(word);
        } catch (InvalidPathException noName) {
            throw new TypeConversionException(
                    "found %s, expected the name of a file or folder"
                            .formatted(Quotation.of(word)));
        }
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    private static CommandLine.Help.ColorScheme colours(Console console) {
        return new CommandLine.Help.ColorScheme.Builder(
                        console.style().setOff() ? Ansi.ON : Ansi.OFF)
                .commands(Ansi.Style.bold)
                .options(Ansi.Style.bold)
                .build();
    }
}
