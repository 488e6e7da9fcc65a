package rigbrief.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints what teaches a shell to complete command lines, made from the commands themselves. */
@Command(
        name = "completion",
        description = "Prints a completion script for bash and zsh; source it in the shell.",
        footer = {"", "Next: source <(rigbrief completion)"})
final class CompletionCommand implements Callable<Integer> {
    private final Console console;

    @Spec private CommandSpec spec;

    CompletionCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        CommandSpec root = spec.root();
        console.print(AutoComplete.bash(root.name(), root.commandLine()));
        // A remark inside the script: it is read at the start of every shell and must keep silent.
        console.print("\n# Next: source <(rigbrief completion)\n");
        return ExitStatus.DONE.code();
    }
}
