package rigbrief.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import rigbrief.api.Rigbrief;

/** The root command: options that every command takes. */
@Command(
        name = "rigbrief",
        description = "Turns a client's brief and a parts catalogue into builds that fit.",
        versionProvider = RootCommand.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Exit status: 0 done, 1 internal fault, 2 wrong use, 3 bad input file,",
            "4 no build meets the musts, 5 the audited, accepted or replaced build fails.",
            "",
            "Next: rigbrief propose BRIEF"
        })
final class RootCommand implements Runnable {
    static final String NO_COLOR = "--no-color";
    static final String DEBUG = "--debug";

    @Spec private CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "Shows this help.")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "Shows the version.")
    private boolean version;

    @Option(
            names = NO_COLOR,
            scope = ScopeType.INHERIT,
            description = "No bold or faint letters; NO_COLOR in the environment does the same.")
    private boolean noColor;

    @Option(
            names = DEBUG,
            scope = ScopeType.INHERIT,
            description = "Stack trace with an internal fault, as RIGBRIEF_DEBUG=1 does.")
    private boolean debug;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "found no command, expected one");
    }

    /** The version of the library behind the commands. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"rigbrief " + Rigbrief.version()};
        }
    }
}
