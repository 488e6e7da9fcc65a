package rigbrief.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.batch.ResultFolder.State;
import rigbrief.file.FileRefused;

class ResultFolderTest {
    private static final Answered ANSWERED =
            new Answered(
                    Ending.PROPOSED,
                    "EUR",
                    List.of(
                            new TierTotal("lean", "479.63", "0"),
                            new TierTotal("variants", "900.00", "")));

    @TempDir Path out;

    private ResultFolder folder;

    @BeforeEach
    void place() {
        folder = new ResultFolder(out, "desk");
    }

    private void write(String text, boolean force) throws IOException {
        folder.write(
                Map.of("desk.json", text.getBytes(StandardCharsets.UTF_8)),
                "origin",
                ANSWERED,
                force);
    }

    private Path file(String name) {
        return out.resolve("desk").resolve(name);
    }

    @Test
    void what_was_written_is_whole_and_tells_what_it_was_made_from() throws IOException {
        write("{}", false);

        assertThat(folder.state()).isEqualTo(State.WHOLE);
        assertThat(folder.list().orElseThrow().origin()).isEqualTo("origin");
        assertThat(folder.list().orElseThrow().answered()).isEqualTo(ANSWERED);
    }

    @Test
    void the_list_has_the_digests_that_checksum_programs_find() throws IOException {
        write("abc", false);

        // SHA-256 of "abc": FIPS 180-4, example of one block.
        assertThat(Files.readString(file(ResultList.FILE)))
                .endsWith(
                        "\nba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  desk.json\n");
    }

    @Test
    void an_untouched_result_gives_way_to_a_newer_one() throws IOException {
        write("old", false);

        write("new", false);

        assertThat(file("desk.json")).hasContent("new");
        try (Stream<Path> left = Files.list(out)) {
            assertThat(left).containsExactly(out.resolve("desk"));
        }
    }

    @Test
    void a_result_that_somebody_changed_is_left_alone_unless_forced() throws IOException {
        write("old", false);
        Files.writeString(file("desk.json"), "ordered");
        Files.writeString(file("notes"), "mine");

        assertThat(folder.state()).isEqualTo(State.CHANGED);
        assertThatThrownBy(() -> write("new", false))
                .isInstanceOf(FileRefused.class)
                .hasMessageContaining("changed since it was written");
        assertThat(file("desk.json")).hasContent("ordered");

        write("new", true);

        assertThat(file("desk.json")).hasContent("new");
        assertThat(file("notes")).hasContent("mine");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 20, 50, 80, 99})
    void a_list_that_breaks_off_is_none(int percent) throws IOException {
        write("{}", false);
        String list = Files.readString(file(ResultList.FILE));
        Files.writeString(file(ResultList.FILE), list.substring(0, list.length() * percent / 100));

        // A list that breaks off between two lines is one of other files.
        assertThat(folder.state()).isNotEqualTo(State.WHOLE);
    }

    @Test
    void a_file_that_is_missing_or_half_is_no_whole_result() throws IOException {
        write("{}", false);
        Files.writeString(file("desk.json"), "{");
        assertThat(folder.state()).isEqualTo(State.CHANGED);

        Files.delete(file("desk.json"));
        assertThat(folder.state()).isEqualTo(State.CHANGED);
    }

    /** Three times the largest array that Java has: a reader without bounds ends in an error. */
    @ParameterizedTest
    @CsvSource({"desk.json, CHANGED", "notes, CHANGED", ResultList.FILE + ", FOREIGN"})
    void a_file_of_gb_is_told_from_a_result_unread(String name, State state) throws IOException {
        write("{}", false);
        try (RandomAccessFile large = new RandomAccessFile(file(name).toFile(), "rw")) {
            large.setLength(3L * Integer.MAX_VALUE);
        }

        assertThat(folder.state()).isEqualTo(state);
        assertThatThrownBy(() -> write("new", false)).isInstanceOf(FileRefused.class);
    }

    @Test
    void a_name_in_the_list_that_leads_elsewhere_is_no_whole_result() throws IOException {
        write("{}", false);
        Files.writeString(out.resolve("other"), "{}");
        Path list = file(ResultList.FILE);
        Files.writeString(list, Files.readString(list).replace("  desk.json", "  ../other"));
        Files.delete(file("desk.json"));

        assertThat(folder.state()).isEqualTo(State.CHANGED);
    }

    @Test
    void a_folder_of_somebody_else_is_left_alone_and_keeps_its_files_when_forced()
            throws IOException {
        Files.createDirectories(file("letters"));
        Files.writeString(file("letters").resolve("one"), "1");

        assertThat(folder.state()).isEqualTo(State.FOREIGN);
        assertThatThrownBy(() -> write("{}", false)).isInstanceOf(FileRefused.class);

        write("{}", true);

        assertThat(file("desk.json")).hasContent("{}");
        assertThat(file("letters").resolve("one")).hasContent("1");
    }

    @Test
    void a_file_in_the_place_of_the_folder_stays_even_when_forced() throws IOException {
        Files.writeString(out.resolve("desk"), "mine");

        assertThatThrownBy(() -> write("{}", true)).isInstanceOf(FileRefused.class);

        assertThat(out.resolve("desk")).hasContent("mine");
    }

    @Test
    void what_a_killed_run_left_beside_is_no_result_and_stands_in_nobodys_way() throws IOException {
        Files.createDirectories(out.resolve(".desk.0.part"));
        Files.writeString(out.resolve(".desk.0.part").resolve("desk.json"), "{");

        assertThat(folder.state()).isEqualTo(State.ABSENT);
        write("{}", false);

        assertThat(folder.state()).isEqualTo(State.WHOLE);
    }

    @Test
    void a_write_that_fails_leaves_what_was_there_and_nothing_beside_it() throws IOException {
        write("old", false);
        Map<String, byte[]> files = Map.of("x".repeat(300), new byte[0]);

        assertThatThrownBy(() -> folder.write(files, "origin", ANSWERED, false))
                .isInstanceOf(IOException.class);

        assertThat(folder.state()).isEqualTo(State.WHOLE);
        assertThat(file("desk.json")).hasContent("old");
        try (Stream<Path> left = Files.list(out)) {
            assertThat(left).containsExactly(out.resolve("desk"));
        }
    }
}
