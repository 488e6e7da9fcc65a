package rigbrief.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;

/** The commands, one line each. */
final class Commands {
    private static final Map<String, Function<Console, Object>> MAKERS = new LinkedHashMap<>();

    static {
        MAKERS.put("propose", ProposeCommand::new);
        MAKERS.put("audit", AuditCommand::new);
        MAKERS.put("budget", BudgetCommand::new);
        MAKERS.put("replace", ReplaceCommand::new);
        MAKERS.put("order", OrderCommand::new);
        MAKERS.put("document", DocumentCommand::new);
        MAKERS.put("explain", ExplainCommand::new);
        MAKERS.put("tune", TuneCommand::new);
        MAKERS.put("accept", AcceptCommand::new);
        MAKERS.put("calibrate", CalibrateCommand::new);
        MAKERS.put("catalog", Commands::catalog);
        MAKERS.put("intake", IntakeCommand::new);
        MAKERS.put("rules", RulesCommand::new);
        MAKERS.put("completion", CompletionCommand::new);
        MAKERS.put("help", HelpCommand::new);
    }

    /** Their names, in the order in which help lists them. */
    static final List<String> NAMES = List.copyOf(MAKERS.keySet());

    /** They look at all the others. */
    private static final List<String> LOOKING_AROUND = List.of("completion", "help");

    private Commands() {}

    /** A command, fresh. */
    static Object make(String name, Console console) {
        return MAKERS.get(name).apply(console);
    }

    /**
     * The commands that a command line can't do without: looking through the options of one takes
     * longer than most of them run, so the one that is named comes alone.
     */
    static List<String> neededFor(List<String> arguments) {
        String first = arguments.isEmpty() ? "" : arguments.get(0);
        if (first.equals("--version")) {
            return List.of();
        }
        boolean alone = MAKERS.containsKey(first) && !LOOKING_AROUND.contains(first);
        return alone ? List.of(first) : NAMES;
    }

    private static CommandLine catalog(Console console) {
        return new CommandLine(new CatalogCommand())
                .addSubcommand(new CatalogCheckCommand(console))
                .addSubcommand(new CatalogImportCommand(console))
                .addSubcommand(new CatalogStatsCommand(console));
    }
}
