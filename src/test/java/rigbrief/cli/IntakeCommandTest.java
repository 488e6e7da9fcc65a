package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Quotation;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;

/** The interview as a script holds it: answers out of a pipe, one a line. */
class IntakeCommandTest {
    /** A desk for letters and one job, by nearly nothing but the usual answers. */
    private static final List<String> DESK =
            List.of(
                    "Fenwick and Daughters", // client
                    "2", // quantity
                    "ledger sheets, office-day", // workloads
                    "unknown", // screen
                    "25s", // time
                    "no", // faster
                    "", // open at once
                    "quiet", // noise
                    "", // a must
                    "", // place
                    "", // size
                    "none", // lights
                    "closed", // side
                    "", // colour
                    "", // storage
                    "no", // wireless
                    "", // front
                    "yes", // system
                    "", // keep
                    "", // avoid
                    "10", // days
                    "2", // shops
                    "long life, value", // wishes
                    "", // more
                    "1600", // ceiling
                    "", // overrun
                    ""); // write

    private static Catalogue catalogue;

    @TempDir Path folder;
    private Path out;

    @BeforeAll
    static void read() throws BadInput {
        catalogue = CatalogueReader.read(Path.of("catalog-sample"));
    }

    @BeforeEach
    void name() {
        out = folder.resolve("desk.yaml");
    }

    private Captured asked(List<String> lines) {
        return new Captured().input(String.join("\n", lines) + "\n");
    }

    private Path kept() {
        return folder.resolve("desk.yaml.answers");
    }

    @Test
    void piped_answers_become_a_brief_without_faults_and_the_next_command_is_named()
            throws BadInput {
        var captured = asked(DESK);

        var status = captured.run("intake", "--out", out.toString());

        assertThat(status).as(captured.err()).isEqualTo(ExitStatus.DONE);
        Brief brief = BriefReader.read(out, catalogue);
        assertThat(brief.client()).isEqualTo("Fenwick and Daughters");
        assertThat(brief.quantity()).isEqualTo(2);
        assertThat(brief.noise().mustDba()).hasValue(33);
        assertThat(brief.workloads().get(0).must().orElseThrow().finishWithinS()).hasValue(25);
        assertThat(brief.wishes().weight("lifetime")).isEqualTo(5);
        assertThat(captured.out()).endsWith("Next: rigbrief propose " + out + "\n");
        assertThat(captured.err()).isEmpty();
        assertThat(kept()).doesNotExist();
    }

    @Test
    void two_runs_with_the_same_answers_are_the_same_byte_by_byte() throws IOException {
        var first = asked(DESK);
        first.run("intake", "--out", out.toString());
        byte[] brief = Files.readAllBytes(out);

        var second = asked(DESK);
        second.run("intake", "--out", out.toString(), "--force");

        assertThat(Files.readAllBytes(out)).isEqualTo(brief);
        assertThat(second.out()).isEqualTo(first.out());
    }

    @Test
    void in_german_the_same_answers_write_the_same_brief_byte_by_byte() throws IOException {
        asked(DESK).run("intake", "--out", out.toString());
        byte[] brief = Files.readAllBytes(out);

        var captured = asked(DESK);
        var status = captured.run("intake", "--out", out.toString(), "--force", "--language", "de");

        assertThat(status).as(captured.err()).isEqualTo(ExitStatus.DONE);
        assertThat(Files.readAllBytes(out)).isEqualTo(brief);
        assertThat(captured.out().replaceAll("\\s+", " "))
                .contains("Mit diesen Antworten sind es mindestens ")
                .endsWith("Next: rigbrief propose " + out + " --language de ");
        assertThat(captured.out().lines().filter(line -> !line.contains(folder.toString())))
                .allMatch(line -> line.length() <= 80);
    }

    @Test
    void every_line_of_the_interview_fits_80_columns() {
        var captured = asked(DESK);

        captured.run("intake", "--out", "/dev/null/no/where.yaml");

        captured = asked(DESK);
        captured.run("intake", "--out", out.toString());
        assertThat(captured.out().lines().filter(line -> !line.contains(folder.toString())))
                .isNotEmpty()
                .allMatch(line -> line.length() <= 80);
    }

    @Test
    void the_least_money_is_shown_with_what_an_answer_changed_and_before_money_is_asked() {
        var captured = asked(DESK);

        captured.run("intake", "--out", out.toString());

        String flat = captured.out().replaceAll("\\s+", " ");
        assertThat(flat)
                .contains("= Least so far: EUR ")
                .contains(" more than before.")
                .contains("With these answers the least is EUR ");
    }

    @Test
    void back_and_a_question_mark_work_in_a_pipe_too() throws BadInput {
        List<String> lines = new ArrayList<>(DESK);
        lines.addAll(2, List.of("back", "?", "3"));

        var captured = asked(lines);
        captured.run("intake", "--out", out.toString());

        assertThat(BriefReader.read(out, catalogue).quantity()).isEqualTo(3);
        assertThat(captured.out()).contains("  ? All of them will be built from the same parts");
    }

    @Test
    void a_pipe_that_ends_early_is_a_fault_whose_answers_are_kept_and_taken_up_again()
            throws BadInput, IOException {
        var early = asked(DESK.subList(0, 12));

        var status = early.run("intake", "--out", out.toString());

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(early.err()).startsWith("-:13:1: side: found nothing, expected an answer to ");
        assertThat(out).doesNotExist();
        assertThat(Files.readAllLines(kept())).hasSize(13).contains("quantity = 2");

        var late = asked(DESK.subList(12, DESK.size()));
        status = late.run("intake", "--out", out.toString(), "--resume");

        assertThat(status).as(late.err()).isEqualTo(ExitStatus.DONE);
        assertThat(late.out()).contains("12 answers taken up from ");
        Path whole = folder.resolve("whole/desk.yaml");
        asked(DESK).run("intake", "--out", whole.toString());
        assertThat(Files.readAllBytes(out)).isEqualTo(Files.readAllBytes(whole));
        assertThat(kept()).doesNotExist();
    }

    @Test
    void answers_that_an_earlier_run_kept_are_neither_used_nor_lost_without_resume()
            throws IOException {
        asked(DESK.subList(0, 12)).run("intake", "--out", out.toString());
        byte[] before = Files.readAllBytes(kept());

        var captured = asked(DESK);
        var status = captured.run("intake", "--out", out.toString());

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.err())
                .contains(kept() + ": found answers of a run that was stopped, expected none; ")
                .contains("--resume")
                .contains("--force");
        assertThat(captured.out()).isEmpty();
        assertThat(out).doesNotExist();
        assertThat(kept()).hasBinaryContent(before);
    }

    @Test
    void force_begins_anew_without_the_answers_that_an_earlier_run_kept() throws BadInput {
        asked(List.of("Somebody else", "9")).run("intake", "--out", out.toString());

        var status = asked(DESK).run("intake", "--out", out.toString(), "--force");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(BriefReader.read(out, catalogue).client()).isEqualTo("Fenwick and Daughters");
        assertThat(kept()).doesNotExist();
    }

    @Test
    void answers_behind_one_that_no_longer_holds_are_kept_until_their_questions_come()
            throws IOException {
        asked(DESK.subList(0, 12)).run("intake", "--out", out.toString());
        String changed = Files.readString(kept()).replace("quantity = 2", "quantity = none");
        Files.writeString(kept(), changed);

        asked(List.of("4")).run("intake", "--out", out.toString(), "--resume");

        assertThat(Files.readString(kept()))
                .isEqualTo(changed.replace("quantity = none", "quantity = 4"));
    }

    @Test
    void a_line_that_is_no_answer_stops_a_script_at_that_line() {
        List<String> lines = new ArrayList<>(DESK);
        lines.set(4, "soonish");

        var captured = asked(lines);
        var status = captured.run("intake", "--out", out.toString());

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(captured.err())
                .startsWith(
                        "-:5:1: time ledger-sheets: found \"soonish\", expected a time above 0");
        assertThat(out).doesNotExist();
    }

    @Test
    void a_brief_that_is_there_is_refused_before_the_first_question() throws IOException {
        Files.writeString(out, "mine");

        var captured = asked(DESK);
        var status = captured.run("intake", "--out", out.toString());

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.out()).isEmpty();
        assertThat(Files.readString(out)).isEqualTo("mine");
    }

    @Test
    void a_control_character_in_an_answer_neither_acts_nor_gets_into_the_brief() {
        var captured = asked(List.of("Fen\u001b[2Jwick"));

        var status = captured.run("intake", "--out", out.toString());

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(captured.out() + captured.err()).doesNotContain("\u001b");
    }

    @Test
    void a_ceiling_below_the_least_is_taken_and_its_consequence_said() {
        List<String> lines = new ArrayList<>(DESK);
        lines.set(24, "100");

        var captured = asked(lines);
        var status = captured.run("intake", "--out", out.toString());

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(captured.out().replaceAll("\\s+", " "))
                .contains("below the least: no computer can be proposed");
    }

    @Test
    void the_form_is_written_without_a_question_and_never_over_another_file() throws IOException {
        Path form = folder.resolve("form.html");
        var captured = new Captured();

        var status = captured.run("intake", "--form", form.toString());
        var again = new Captured().run("intake", "--form", form.toString());

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(Files.readString(form))
                .startsWith("<!DOCTYPE html>")
                .contains("Harbour of Glass");
        assertThat(captured.out()).endsWith("Next: rigbrief propose BRIEF\n");
        assertThat(again).isEqualTo(ExitStatus.WRONG_USE);
    }

    @Test
    void resume_with_nothing_to_resume_says_so_and_begins() {
        var captured = asked(DESK);

        var status = captured.run("intake", "--out", out.toString(), "--resume");

        assertThat(status).isEqualTo(ExitStatus.DONE);
        assertThat(captured.err()).contains("found no answers to go on from");
    }

    @Test
    void a_file_in_the_place_of_the_answers_that_holds_none_is_left_alone() throws IOException {
        Files.writeString(kept(), "questions = mine\n");

        var captured = asked(DESK.subList(0, 3));
        var status = captured.run("intake", "--out", out.toString());

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.err())
                .contains(kept() + ": found a file that holds no answers, expected ");
        assertThat(kept()).hasContent("questions = mine");
    }

    @Test
    void a_file_of_gb_in_the_place_of_the_answers_is_left_alone_unread() throws IOException {
        Files.writeString(
                kept(), "# Answers of rigbrief intake so far; --resume.\nclient = Wren\n");
        try (var large = new RandomAccessFile(kept().toFile(), "rw")) {
            large.setLength(3L << 30);
        }

        var status = asked(DESK).run("intake", "--out", out.toString(), "--resume");

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(kept()).hasSize(3L << 30);
        assertThat(out).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u2066b\u200Fc", "a\u001B[2Jc", "a\nb"})
    void a_name_that_would_act_on_a_terminal_is_printed_spelt_out(String odd) {
        out = folder.resolve(odd + ".yaml");
        var early = asked(DESK.subList(0, 12));
        early.run("intake", "--out", out.toString());
        var late = asked(DESK.subList(12, DESK.size()));
        var page = new Captured();

        var status = late.run("intake", "--out", out.toString(), "--resume");
        page.run("intake", "--form", folder.resolve(odd + ".html").toString());

        assertThat(status).isEqualTo(ExitStatus.DONE);
        for (Captured captured : List.of(early, late, page)) {
            assertThat(captured.out() + captured.err())
                    .contains(Quotation.visible(odd))
                    .doesNotContain(odd);
        }
    }
}
