package rigbrief.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the help of a command, as {@code COMMAND --help} does. */
@Command(name = "help", description = "Shows the help of a command.")
final class HelpCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Parameters(paramLabel = "COMMAND", arity = "0..*", description = "Command, such as propose.")
    private List<String> words = List.of();

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
        command.usage(command.getOut(), command.getColorScheme());
        return ExitStatus.DONE.code();
    }
}
