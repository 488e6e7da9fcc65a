package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.jline.reader.LineReader;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.ExternalTerminal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.CatalogueReader;
import rigbrief.intake.Interview;
import rigbrief.intake.Least;
import rigbrief.report.InterviewText;
import rigbrief.report.Style;
import rigbrief.wording.Texts;

/** The interview as somebody at a terminal holds it: keys through a line discipline. */
@Timeout(20)
class TerminalAnswersTest {
    private static final String ENTER = "\r";
    private static final String INTERRUPT = "\u0003";
    private static final String END = "\u0004";
    private static final String TAB = "\t";
    private static final String ERASE = "\u007f";

    @TempDir Path folder;

    private final Captured captured = new Captured();
    private PipedOutputStream keys;
    private Terminal terminal;
    private Interview interview;
    private InterviewText text;
    private AnswersFile kept;

    @BeforeEach
    void open() throws IOException, BadInput {
        Catalogue catalogue = CatalogueReader.read(Path.of("catalog-sample"));
        keys = new PipedOutputStream();
        terminal =
                new ExternalTerminal(
                        "test",
                        "ansi",
                        new PipedInputStream(keys, 1 << 16),
                        new ByteArrayOutputStream(),
                        StandardCharsets.UTF_8);
        interview = new Interview("desk", catalogue, brief -> new Least.Unknown());
        text = new InterviewText(Style.PLAIN, Texts.ENGLISH);
        kept = AnswersFile.of(folder.resolve("desk.yaml"));
    }

    @AfterEach
    void close() throws IOException {
        terminal.close();
    }

    /** Presses each line's keys when that line is waited for, as a person does. */
    private boolean typed(String... lines) throws Exception {
        Deque<String> left = new ArrayDeque<>(List.of(lines));
        TerminalAnswers answers = new TerminalAnswers(terminal, text);
        answers.reader().getWidgets().put(LineReader.CALLBACK_INIT, () -> press(left.poll()));
        return new Conversation(captured.console(), interview, answers, kept, text).hold();
    }

    private boolean press(String strokes) {
        try {
            keys.write(strokes.getBytes(StandardCharsets.UTF_8));
            keys.flush();
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void an_interrupt_stops_and_the_answers_are_kept() throws Exception {
        boolean whole = typed("Fenwick" + ENTER, "2" + ENTER, "har" + INTERRUPT);

        assertThat(whole).isFalse();
        assertThat(interview.answers()).containsEntry("client", "Fenwick").hasSize(2);
        assertThat(Files.readAllLines(kept.path())).contains("client = Fenwick", "quantity = 2");
    }

    @Test
    void the_end_of_input_key_stops_in_the_same_way() throws Exception {
        boolean whole = typed("Fenwick" + ENTER, END);

        assertThat(whole).isFalse();
        assertThat(kept.read()).containsOnlyKeys("client");
    }

    @Test
    void back_takes_an_answer_back_and_offers_it_again() throws Exception {
        typed("Fenwick" + ENTER, "2" + ENTER, "back" + ENTER, ENTER, INTERRUPT);

        assertThat(interview.answers()).containsEntry("quantity", "2");
        assertThat(captured.out()).contains("(Enter alone: 2;");
    }

    @Test
    void the_tabulator_completes_titles_one_after_the_other() throws Exception {
        typed("Fenwick" + ENTER, ENTER, "harb" + TAB + ", kil" + TAB + ENTER, INTERRUPT);

        assertThat(interview.answers())
                .containsEntry("workloads", "harbour-of-glass, kiln-drafting");
    }

    @Test
    void in_german_the_tabulator_completes_german_and_back_is_called_so_too() throws Exception {
        text = new InterviewText(Style.PLAIN, Texts.of(Locale.GERMAN));

        typed(
                "Fenwick" + ENTER,
                "viele" + ENTER,
                "2" + ENTER,
                ENTER,
                "noch" + TAB + ENTER,
                "zur" + TAB + ENTER,
                INTERRUPT);

        assertThat(interview.answers()).doesNotContainKey("screen").hasSize(3);
        assertThat(captured.out())
                .contains("  ! gefunden \"viele\", erwartet eine ganze Zahl von 1 bis 10000;")
                .contains("Eingabetaste allein: noch nicht bekannt;");
    }

    @Test
    void a_line_can_be_edited_before_it_is_given() throws Exception {
        typed("Fenwickk" + ERASE + ENTER, INTERRUPT);

        assertThat(interview.answers()).containsEntry("client", "Fenwick");
    }

    @Test
    void what_is_not_understood_is_asked_again() throws Exception {
        typed("Fenwick" + ENTER, "many" + ENTER, "3" + ENTER, INTERRUPT);

        assertThat(interview.answers()).containsEntry("quantity", "3");
        assertThat(captured.out()).contains("  ! found \"many\", expected a whole number");
    }

    @Test
    void an_exclamation_mark_or_a_backslash_means_itself() throws Exception {
        typed("Fen!wick \\ Co" + ENTER, INTERRUPT);

        assertThat(interview.answers()).containsEntry("client", "Fen!wick \\ Co");
    }

    @Test
    void answers_kept_are_taken_up_where_they_stopped() throws Exception {
        typed("Fenwick" + ENTER, "2" + ENTER, INTERRUPT);
        var again =
                new Interview(
                        "desk",
                        CatalogueReader.read(Path.of("catalog-sample")),
                        b -> new Least.Unknown());

        int count = again.resume(kept.read());

        assertThat(count).isEqualTo(2);
        assertThat(again.question().orElseThrow().id()).isEqualTo("workloads");
    }
}
