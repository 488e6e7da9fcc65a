package rigbrief.cli;

import java.io.IOException;
import java.util.Optional;
import rigbrief.diagnostic.Quotation;
import rigbrief.file.BoundedLines;
import rigbrief.intake.Question;

/** Answers out of a pipe or a file, one a line; each is shown where it would have been typed. */
final class PipedAnswers implements AnswerSource {
    private final Console console;
    private final BoundedLines lines;
    private int count;

    PipedAnswers(Console console) {
        this.console = console;
        this.lines = new BoundedLines(console.in());
    }

    @Override
    public Optional<String> line(Question question) throws IOException {
        String line = lines.next();
        if (line == null) {
            return Optional.empty();
        }
        count++;
        console.print("> " + Quotation.visible(line) + "\n");
        console.flush();
        return Optional.of(line);
    }

    @Override
    public boolean canBeAskedAgain() {
        return false;
    }

    @Override
    public int count() {
        return count;
    }

    @Override
    public void close() {
        // Standard input is not ours to close.
    }
}
