package rigbrief.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the help of a command, as {@code COMMAND --help} does. */
@Command(
        name = "help",
        description = "Shows the help of a command, or its manual page.",
        footer = {"", "Next: rigbrief propose BRIEF"})
final class HelpCommand implements Callable<Integer> {
    private final Console console;

    @Spec private CommandSpec spec;

    @Option(
            names = "--man",
            description = "Prints the manual page (roff) instead; man -l shows it.")
    private boolean man;

    @Parameters(paramLabel = "COMMAND", arity = "0..*", description = "Command, such as propose.")
    private List<String> words = List.of();

    HelpCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        CommandLine command = spec.root().commandLine();
        for (String word : words) {
            CommandLine below = command.getSubcommands().get(word);
            if (below == null) {
                throw new ParameterException(
                        spec.commandLine(),
                        "found '%s', expected one of %s"
                                .formatted(
                                        word,
                                        String.join(", ", command.getSubcommands().keySet())));
            }
            command = below;
        }
        if (man) {
            console.print(ManPage.of(command.getCommandSpec()));
        } else {
            command.usage(command.getOut(), command.getColorScheme());
        }
        return ExitStatus.DONE.code();
    }
}
