package rigbrief.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The manual page of a command, out of the same model as its help: roff with the macros of man(7).
 */
final class ManPage {
    private final CommandSpec command;
    private final StringBuilder page = new StringBuilder();

    private ManPage(CommandSpec command) {
        this.command = command;
    }

    /** The page of a command. */
    static String of(CommandSpec command) {
        return new ManPage(command).write();
    }

    private String write() {
        String title = dashed(command);
        page.append(".TH ").append(quoted(title.toUpperCase(Locale.ROOT))).append(" 1 \"\" ");
        page.append(quoted(version())).append(" \"rigbrief\"\n");
        page.append(".nh\n.ad l\n");
        section("NAME");
        page.append(escaped(title)).append(" \\- ").append(escaped(brief())).append('\n');
        synopsis();
        section("DESCRIPTION");
        for (String words : command.usageMessage().description()) {
            paragraph(words);
        }
        arguments();
        commands();
        statuses();
        examples();
        environment();
        seeAlso();
        return page.toString();
    }

    private String version() {
        return String.join(" ", command.root().version());
    }

    /** "rigbrief-catalog-check". */
    private static String dashed(CommandSpec spec) {
        return spec.qualifiedName("-");
    }

    /** The first sentence of the description, without its period and in one line. */
    private String brief() {
        String words = String.join(" ", command.usageMessage().description());
        int end = words.indexOf(". ");
        String first = end < 0 ? words : words.substring(0, end);
        return first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
    }

    private void synopsis() {
        section("SYNOPSIS");
        page.append(".B ").append(escaped(command.qualifiedName())).append('\n');
        for (OptionSpec option : shown()) {
            String wanted = option.longestName() + value(option);
            page.append(escaped(option.required() ? wanted : "[" + wanted + "]")).append('\n');
        }
        for (PositionalParamSpec argument : command.positionalParameters()) {
            boolean needed = argument.arity().min() > 0;
            String label = argument.paramLabel();
            String more = argument.arity().max() > 1 ? "..." : "";
            page.append(escaped(needed ? label + more : "[" + label + more + "]")).append('\n');
        }
        if (!command.subcommands().isEmpty()) {
            page.append("COMMAND\n");
        }
    }

    private List<OptionSpec> shown() {
        return command.options().stream().filter(option -> !option.hidden()).toList();
    }

    private static String value(OptionSpec option) {
        boolean takes = option.arity().max() > 0;
        String more = option.arity().max() > 1 ? "..." : "";
        return takes ? " " + option.paramLabel() + more : "";
    }

    private void arguments() {
        if (!command.positionalParameters().isEmpty()) {
            section("ARGUMENTS");
            for (PositionalParamSpec argument : command.positionalParameters()) {
                item(argument.paramLabel(), description(argument));
            }
        }
        section("OPTIONS");
        for (OptionSpec option : shown()) {
            item(String.join(", ", option.names()) + value(option), description(option));
        }
    }

    private static String description(ArgSpec argument) {
        return String.join(" ", argument.description());
    }

    private void commands() {
        if (command.subcommands().isEmpty()) {
            return;
        }
        section("COMMANDS");
        for (CommandLine below : command.subcommands().values()) {
            CommandSpec spec = below.getCommandSpec();
            item(spec.name(), String.join(" ", spec.usageMessage().description()));
        }
    }

    private void statuses() {
        section("EXIT STATUS");
        for (ExitStatus status : ExitStatus.values()) {
            item(Integer.toString(status.code()), status.meaning() + ".");
        }
    }

    private void examples() {
        List<Examples.Example> examples = Examples.of(command);
        if (!examples.isEmpty()) {
            section("EXAMPLES");
        }
        for (Examples.Example example : examples) {
            item(example.line(), example.words());
        }
    }

    private void environment() {
        section("ENVIRONMENT");
        item("NO_COLOR", "Where it is set, no letters are bold or faint.");
        item("COLUMNS", "How wide tables may be, from 80 columns to 160.");
        item("RIGBRIEF_JAVA_OPTIONS", "More options for Java, such as -Xmx2g.");
        item("JAVA_HOME", "The Java to use.");
    }

    private void seeAlso() {
        List<String> others = new ArrayList<>();
        if (command.parent() != null) {
            others.add(dashed(command.parent()));
        }
        command.subcommands().values().forEach(below -> others.add(dashed(below.getCommandSpec())));
        if (others.isEmpty()) {
            return;
        }
        section("SEE ALSO");
        List<String> pages = others.stream().map(other -> escaped(other) + "(1)").toList();
        page.append(String.join(",\n", pages)).append('\n');
    }

    private void section(String head) {
        page.append(".SH ").append(quoted(head)).append('\n');
    }

    private void paragraph(String words) {
        page.append(".PP\n").append(escaped(words)).append('\n');
    }

    private void item(String tag, String words) {
        page.append(".TP\n.B ")
                .append(quoted(tag))
                .append('\n')
                .append(escaped(words))
                .append('\n');
    }

    private static String quoted(String argument) {
        return '"' + signs(argument).replace("\"", "\\(dq") + '"';
    }

    /** A line of text: nothing in it is taken for a request or an escape. */
    static String escaped(String words) {
        String safe = signs(words.replaceAll("\\R", " "));
        return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
    }

    private static String signs(String words) {
        StringBuilder safe = new StringBuilder();
        words.codePoints()
                .forEach(
                        sign -> {
                            switch (sign) {
                                case '\\' -> safe.append("\\e");
                                case '-' -> safe.append("\\-");
                                case '\'' -> safe.append("\\(aq");
                                case '^' -> safe.append("\\(ha");
                                case '~' -> safe.append("\\(ti");
                                case '`' -> safe.append("\\(ga");
                                default -> {
                                    if (sign < 0x7f) {
                                        safe.append((char) sign);
                                    } else {
                                        safe.append("\\[u%04X]".formatted(sign));
                                    }
                                }
                            }
                        });
        return safe.toString();
    }
}
