package rigbrief.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.IHelpSectionRenderer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Examples of command lines, out of one file; read only when help is shown. */
final class Examples {
    private static final String FILE = "/rigbrief/examples.txt";
    private static final String PROGRAM = "rigbrief";
    private static final int FIELDS = 3;

    private Examples() {}

    /**
     * An example.
     *
     * @param command the command it belongs to, with the one above it; {@code rigbrief} for none
     * @param line the command line as it is typed
     * @param words what it does
     */
    record Example(String command, String line, String words) {}

    /** All of them, in the order of the file. */
    static List<Example> all() {
        List<Example> examples = new ArrayList<>();
        try (BufferedReader lines = reader()) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    examples.add(example(line));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return examples;
    }

    private static BufferedReader reader() {
        InputStream in = Examples.class.getResourceAsStream(FILE);
        if (in == null) {
            throw new IllegalStateException(
                    "found no %s, expected it in the program; package it".formatted(FILE));
        }
        return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    private static Example example(String line) {
        String[] fields = line.split(" [|] ", FIELDS);
        if (fields.length != FIELDS) {
            throw new IllegalStateException(
                    "%s: found '%s', expected COMMAND | LINE | WORDS; write all three"
                            .formatted(FILE, line));
        }
        return new Example(fields[0], fields[1], fields[2]);
    }

    /** Those of a command. */
    static List<Example> of(CommandSpec command) {
        String name = command.qualifiedName();
        String wanted = name.equals(PROGRAM) ? name : name.substring(PROGRAM.length() + 1);
        return all().stream().filter(example -> example.command().equals(wanted)).toList();
    }

    /** Puts the examples of each command before the end of its help. */
    static void addTo(CommandLine root) {
        Map<String, IHelpSectionRenderer> sections = new HashMap<>(root.getHelpSectionMap());
        sections.put(UsageMessageSpec.SECTION_KEY_FOOTER, help -> section(help) + help.footer());
        root.setHelpSectionMap(sections);
    }

    private static String section(Help help) {
        List<Example> examples = of(help.commandSpec());
        if (examples.isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder("\nExamples:\n");
        for (Example example : examples) {
            text.append("  ").append(example.line()).append('\n');
            text.append("      ").append(example.words()).append('\n');
        }
        return text.toString();
    }
}
