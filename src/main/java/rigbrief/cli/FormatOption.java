package rigbrief.cli;

import picocli.CommandLine.Option;
import rigbrief.report.Report;

/** The option that chooses between text and JSON. */
final class FormatOption {
    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "How to print: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private OutputFormat format;

    /**
     * Prints a result, and the next useful command behind it: on the same page in text, as a remark
     * beside JSON.
     */
    <T> void print(Console console, Report<T> text, Report<T> json, T answer, String next) {
        print(console, format == OutputFormat.JSON, text, json, answer, next);
    }

    /** The same for a command with more formats than these two. */
    static <T> void print(
            Console console,
            boolean asJson,
            Report<T> text,
            Report<T> json,
            T answer,
            String next) {
        if (asJson) {
            console.print(json.write(answer, console.style()));
            console.remark("Next: " + next);
        } else {
            console.print(text.write(answer, console.style()));
            NextLine.print(console, next);
        }
    }
}
