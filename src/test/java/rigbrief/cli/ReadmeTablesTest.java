package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.report.Report;
import rigbrief.report.Reports;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * The README's tables are what the program says of itself.
 *
 * <p>A table stands between {@code <!-- table NAME -->} and {@code <!-- end of NAME -->}. Run with
 * {@code -Drigbrief.keeps=write} to write them anew.
 */
class ReadmeTablesTest {
    private static final Path README = Path.of("README.md");

    /** The tables, one line each. */
    enum Table {
        RULES(ReadmeTablesTest::rules),
        GOALS(ReadmeTablesTest::goals),
        STATUSES(ReadmeTablesTest::statuses),
        COMMANDS(ReadmeTablesTest::commands),
        OPTIONS(ReadmeTablesTest::options),
        SCHEMAS(ReadmeTablesTest::schemas);

        private final Supplier<String> text;

        Table(Supplier<String> text) {
            this.text = text;
        }

        private String begin() {
            return "<!-- table " + name().toLowerCase(java.util.Locale.ROOT) + " -->\n";
        }

        private String end() {
            return "<!-- end of " + name().toLowerCase(java.util.Locale.ROOT) + " -->";
        }
    }

    @BeforeEach
    void writeAnewWhenAsked() throws IOException {
        assumeThat(README).exists();
        if ("write".equals(System.getProperty("rigbrief.keeps"))) {
            String readme = Files.readString(README);
            for (Table table : Table.values()) {
                int begin = readme.indexOf(table.begin());
                int end = readme.indexOf(table.end());
                if (begin >= 0 && end > begin) {
                    readme =
                            readme.substring(0, begin + table.begin().length())
                                    + table.text.get()
                                    + readme.substring(end);
                }
            }
            Files.writeString(README, readme);
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_table_of_the_readme_is_up_to_date(Table table) throws IOException {
        assertThat(Files.readString(README))
                .contains(table.begin() + table.text.get() + table.end());
    }

    private static String rules() {
        StringBuilder text = head("rule", "met when", "unit", "source");
        for (Rule rule : Rules.ALL) {
            row(
                    text,
                    code(rule.info().id()),
                    rule.info().title(),
                    rule.info().unit().symbol(),
                    rule.info().source().text());
        }
        return text.toString();
    }

    private static String goals() {
        StringBuilder text = head("goal", "more of it means", "utility");
        for (Goal goal : Goals.ALL) {
            row(text, code(goal.info().id()), goal.info().title(), goal.info().curve());
        }
        return text.toString();
    }

    private static String statuses() {
        StringBuilder text = head("status", "meaning");
        for (ExitStatus status : ExitStatus.values()) {
            row(text, Integer.toString(status.code()), status.meaning());
        }
        return text.toString();
    }

    private static String commands() {
        StringBuilder text = head("command", "what it does");
        addCommands(text, root());
        return text.toString();
    }

    private static void addCommands(StringBuilder text, CommandLine parent) {
        for (CommandLine command : parent.getSubcommands().values()) {
            if (command.getSubcommands().isEmpty()) {
                StringBuilder line = new StringBuilder(command.getCommandSpec().qualifiedName());
                for (ArgSpec argument : command.getCommandSpec().positionalParameters()) {
                    line.append(' ').append(argument.paramLabel());
                }
                row(text, code(line.toString()), description(command));
            }
            addCommands(text, command);
        }
    }

    private static String description(CommandLine command) {
        return String.join(" ", command.getCommandSpec().usageMessage().description());
    }

    private static String options() {
        StringBuilder text = head("option", "of", "effect");
        for (OptionSpec option : root().getCommandSpec().options()) {
            boolean everywhere = option.scopeType() == CommandLine.ScopeType.INHERIT;
            addOption(text, option, everywhere ? "every command" : code("rigbrief"));
        }
        addOptions(text, root());
        return text.toString();
    }

    private static void addOptions(StringBuilder text, CommandLine parent) {
        for (CommandLine command : parent.getSubcommands().values()) {
            for (OptionSpec option : command.getCommandSpec().options()) {
                if (!option.inherited()) {
                    addOption(text, option, code(command.getCommandSpec().qualifiedName()));
                }
            }
            addOptions(text, command);
        }
    }

    private static void addOption(StringBuilder text, OptionSpec option, String command) {
        String label = option.arity().max() == 0 ? "" : " " + option.paramLabel();
        row(text, code(String.join(", ", option.names()) + label), command, rendered(option));
    }

    private static String rendered(OptionSpec option) {
        String words = String.join(" ", option.description());
        List<String> candidates = new java.util.ArrayList<>();
        if (option.completionCandidates() != null) {
            option.completionCandidates().forEach(candidates::add);
        }
        return words.replace("${COMPLETION-CANDIDATES}", String.join(", ", candidates))
                .replace("${DEFAULT-VALUE}", String.valueOf(option.defaultValue()));
    }

    private static String schemas() {
        StringBuilder text = head("output", "schema");
        for (Report<?> report : Reports.ALL) {
            report.info()
                    .schema()
                    .ifPresent(schema -> row(text, report.info().title(), code(schema)));
        }
        return text.toString();
    }

    private static CommandLine root() {
        Console console = new Captured().console();
        return Program.commandLine(console, new FaultHandler(console));
    }

    private static StringBuilder head(String... heads) {
        StringBuilder text = new StringBuilder();
        row(text, heads);
        return text.append("|---".repeat(heads.length)).append("|\n");
    }

    private static void row(StringBuilder text, String... cells) {
        for (String cell : cells) {
            text.append("| ").append(cell.replace("|", "\\|")).append(' ');
        }
        text.append("|\n");
    }

    private static String code(String words) {
        return "`" + words + "`";
    }
}
