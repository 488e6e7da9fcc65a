package rigbrief.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.ParsedLine;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import rigbrief.intake.Question;
import rigbrief.report.InterviewText;

/**
 * Answers typed at a terminal: a line can be edited, and the tabulator completes the answers and
 * names that the question knows.
 */
final class TerminalAnswers implements AnswerSource {
    private final Terminal terminal;
    private final LineReader reader;
    private final InterviewText text;
    private Question asked;
    private int count;

    TerminalAnswers(Terminal terminal, InterviewText text) {
        this.terminal = terminal;
        this.text = text;
        this.reader =
                LineReaderBuilder.builder()
                        .terminal(terminal)
                        .parser(new CommaParser())
                        .completer((line, parsed, candidates) -> complete(parsed, candidates))
                        .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                        .option(LineReader.Option.CASE_INSENSITIVE, true)
                        .build();
    }

    /** The terminal of this process. */
    static TerminalAnswers ofProcess(InterviewText text) throws IOException {
        return new TerminalAnswers(TerminalBuilder.builder().system(true).dumb(true).build(), text);
    }

    /** What reads the lines. */
    LineReader reader() {
        return reader;
    }

    @Override
    public Optional<String> line(Question question) {
        asked = question;
        try {
            String line = reader.readLine("> ");
            count++;
            return Optional.of(line);
        } catch (UserInterruptException | EndOfFileException stopped) {
            return Optional.empty();
        }
    }

    private void complete(ParsedLine parsed, List<Candidate> candidates) {
        for (String word : words()) {
            candidates.add(new Candidate(word, word, null, null, null, null, !asked.several()));
        }
    }

    private List<String> words() {
        List<String> words = new ArrayList<>(asked.names());
        if (words.isEmpty()) {
            asked.choices().forEach(choice -> words.add(text.typed(choice)));
        }
        words.add(text.back());
        return words;
    }

    @Override
    public boolean canBeAskedAgain() {
        return true;
    }

    @Override
    public int count() {
        return count;
    }

    @Override
    public void close() throws IOException {
        terminal.close();
    }
}
