package rigbrief.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rigbrief.diagnostic.Quotation;
import rigbrief.file.BoundedBytes;
import rigbrief.file.SafeWriter;

/**
 * The answers of an interview that is not over, kept beside the brief it is to become: a line per
 * answer, {@code question = answer}. A line that can't be read is an answer to be given again.
 *
 * @param path the file
 */
record AnswersFile(Path path) {
    private static final String ENDING = ".answers";
    private static final String HEAD =
            "# Answers of rigbrief intake so far; it takes them up again with --resume.";
    private static final String BETWEEN = " = ";
    private static final int MOST_BYTES = 1_000_000;

    /** The file that belongs to a brief. */
    static AnswersFile of(Path brief) {
        return new AnswersFile(brief.resolveSibling(brief.getFileName() + ENDING));
    }

    /** Whether there is one. */
    boolean exists() {
        return Files.isRegularFile(path);
    }

    /** Refuses a file of that name that nobody's answers are in: it would be written over. */
    void refuseStrange() throws NotWritten {
        try {
            Optional<String> text = exists() ? text() : Optional.of("");
            if (text.isEmpty() || !text.get().isEmpty() && !text.get().startsWith(HEAD)) {
                throw new NotWritten(
                        path
                                + ": found a file that holds no answers, expected answers or none;"
                                + " choose another --out, or move it");
            }
        } catch (IOException e) {
            throw new NotWritten(
                    path + ": can't be read (" + NotWritten.cause(e) + "); look at it");
        }
    }

    /** Refuses to begin anew over answers that somebody gave in an earlier run. */
    void refuseAnswers() throws NotWritten {
        if (!read().isEmpty()) {
            throw new NotWritten(
                    path
                            + ": found answers of a run that was stopped, expected none; add --resume"
                            + " to go on behind them, --force to begin anew without them, or move"
                            + " the file");
        }
    }

    /** The answers in it, in their order; none where it can't be read. */
    Map<String, String> read() {
        Map<String, String> answers = new LinkedHashMap<>();
        try {
            if (exists()) {
                text().ifPresent(text -> text.lines().forEach(line -> add(answers, line)));
            }
        } catch (IOException unreadable) {
            answers.clear();
        }
        return answers;
    }

    private Optional<String> text() throws IOException {
        return BoundedBytes.read(path, MOST_BYTES)
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8));
    }

    private static void add(Map<String, String> answers, String line) {
        int between = line.indexOf(BETWEEN);
        if (between > 0 && !line.startsWith("#") && Quotation.allPrints(line)) {
            answers.put(line.substring(0, between), line.substring(between + BETWEEN.length()));
        }
    }

    /** Keeps answers in the place of those kept before. */
    void write(Map<String, String> answers) throws NotWritten {
        StringBuilder text = new StringBuilder();
        text.append(HEAD).append('\n');
        answers.forEach(
                (id, answer) -> text.append(id).append(BETWEEN).append(answer).append('\n'));
        try {
            SafeWriter.write(path, text.toString(), true);
        } catch (IOException e) {
            throw NotWritten.of(path, e, "choose another --out");
        }
    }

    /** Removes the file: the brief is there. */
    void remove() {
        try {
            Files.deleteIfExists(path);
        } catch (IOException left) {
            // Answers that are left over are offered again, and do no harm.
            return;
        }
    }
}
