package rigbrief.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands about catalogues. */
@Command(
        name = "catalog",
        description = "Checks a catalogue, counts it through, or takes a price list into it.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "Next: rigbrief catalog check"})
final class CatalogCommand implements Runnable {
    @Spec private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "found no command, expected check, stats or import");
    }
}
