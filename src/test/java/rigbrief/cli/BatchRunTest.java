package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Many briefs on one command line; impossible ones, since these are answered soonest. */
class BatchRunTest {
    private static final String NARROW =
            "client: Ida\ncurrency: EUR\nceiling: 900\nmemory: { at-least: 4000 }\n";

    @TempDir Path folder;

    private final Captured captured = new Captured();
    private Path briefs;
    private Path out;

    @BeforeEach
    void twoBriefs() throws IOException {
        briefs = Files.createDirectories(folder.resolve("briefs"));
        out = folder.resolve("out");
        Files.writeString(briefs.resolve("a.yaml"), NARROW);
        Files.writeString(briefs.resolve("b.yaml"), NARROW);
    }

    private ExitStatus run(Captured console, String... more) {
        List<String> line = new ArrayList<>(List.of("propose", briefs.toString()));
        line.addAll(List.of("--out", out.toString()));
        line.addAll(List.of(more));
        return console.run(line.toArray(String[]::new));
    }

    @Test
    void each_brief_of_a_folder_has_a_result_and_a_line_of_the_summary() {
        var status = run(captured, "--format", "json");

        assertThat(status).isEqualTo(ExitStatus.IMPOSSIBLE);
        assertThat(out.resolve("a/a.json")).isNotEmptyFile();
        assertThat(out.resolve("b/result.sha256")).isNotEmptyFile();
        assertThat(out.resolve("summary.csv")).content().hasLineCount(3);
        assertThat(captured.out()).startsWith("2 briefs: 2 impossible.\n");
        assertThat(captured.err()).doesNotContain("fault");
    }

    @Test
    void a_rerun_answers_what_is_new_alone() throws IOException {
        run(new Captured());
        Files.writeString(briefs.resolve("c.yaml"), NARROW);

        run(captured);

        assertThat(captured.out())
                .startsWith("3 briefs: 3 impossible. 2 of them were answered before.\n");
    }

    @Test
    void a_bad_brief_is_told_at_the_end_and_the_others_are_answered() throws IOException {
        Path bad = Files.writeString(briefs.resolve("aa.yaml"), "ceiling: -5\n");

        var status = run(captured);

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(captured.out())
                .startsWith("3 briefs: 2 impossible, 1 bad input.\n")
                .contains("\nWithout a result\n" + bad + ": bad input\n  " + bad + ":1:")
                .endsWith("again: what is answered is kept\n");
        assertThat(out.resolve("b")).isDirectory();
    }

    @Test
    void a_share_is_answered_alone_and_has_a_summary_of_its_own() {
        run(captured, "--shard", "2/2");

        assertThat(out.resolve("b")).isDirectory();
        assertThat(out.resolve("a")).doesNotExist();
        assertThat(out.resolve("summary-2-of-2.csv")).content().hasLineCount(2);
    }

    @Test
    void a_catalogue_that_cannot_be_read_begins_nothing() {
        var status = run(captured, "--catalog", folder.resolve("none").toString());

        assertThat(status).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(out).doesNotExist();
    }

    @Test
    void a_strange_file_in_the_place_of_the_summary_stays() throws IOException {
        Files.createDirectories(out);
        Path mine = Files.writeString(out.resolve("summary.csv"), "my own\n");

        var status = run(captured);

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(mine).hasContent("my own");
        assertThat(out.resolve("a")).doesNotExist();
    }

    @Test
    void several_briefs_need_a_folder_for_their_results() {
        var status = captured.run("propose", briefs.toString());

        assertThat(status).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.err()).contains("expected the folder of their results");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0/2", "3/2", "1", "1/0", "x/y", "1/99999999"})
    void a_share_that_is_none_is_wrong_use(String share) {
        assertThat(run(captured, "--shard", share)).isEqualTo(ExitStatus.WRONG_USE);
        assertThat(captured.err()).contains("write 3/10");
    }
}
