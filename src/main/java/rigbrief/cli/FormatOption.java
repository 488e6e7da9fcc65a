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
        if (format == OutputFormat.JSON) {
            console.print(json.write(answer, console.style()));
            console.remark("Next: " + next);
        } else {
            console.print(text.write(answer, console.style()));
            NextLine.print(console, next);
        }
    }
}
