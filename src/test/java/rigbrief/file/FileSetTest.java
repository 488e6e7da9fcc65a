package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileSetTest {
    private static final String MARK = ".set.unfinished";
    private static final int STEPS = 2 * SafeWriter.Step.values().length;

    @TempDir Path folder;

    private FileSet set(SafeWriter.Watch watch) {
        FileSet set = FileSet.marked(folder, "set", MARK, watch);
        set.add("a", "new a");
        set.add("b", "new b");
        return set;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(it -> it.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void a_set_is_written_whole_and_nothing_stays_beside_it() throws IOException {
        set((path, step) -> {}).write(false);

        assertThat(folder.resolve("a")).hasContent("new a");
        assertThat(folder.resolve("b")).hasContent("new b");
        assertThat(names()).containsExactly("a", "b");
    }

    @Test
    void what_another_run_begins_once_a_file_is_in_its_place_is_left_to_it() throws IOException {
        Path theirs = folder.resolve(".a.0.part");

        set((path, step) -> {
                    if (step == SafeWriter.Step.MOVED) {
                        Files.writeString(theirs, "theirs");
                    }
                })
                .write(false);

        assertThat(theirs).hasContent("theirs");
    }

    @Test
    void one_file_in_the_way_keeps_all_from_being_written() throws IOException {
        Files.writeString(folder.resolve("b"), "mine");

        assertThatThrownBy(() -> set((path, step) -> {}).write(false))
                .isInstanceOf(FileRefused.class);

        assertThat(names()).containsExactly("b");
        assertThat(folder.resolve("b")).hasContent("mine");
    }

    /** Old and new are never side by side without the mark, whatever step comes to be the last. */
    @Test
    void a_set_broken_off_after_any_step_is_old_new_or_marked() throws IOException {
        int mixed = 0;
        for (int last = 0; last < STEPS; last++) {
            Files.deleteIfExists(folder.resolve(MARK));
            Files.writeString(folder.resolve("a"), "old a");
            Files.writeString(folder.resolve("b"), "old b");

            FileSet broken = set(new Countdown(last));
            assertThatThrownBy(() -> broken.write(true)).hasMessage("broken off");

            boolean newA = Files.readString(folder.resolve("a")).equals("new a");
            boolean newB = Files.readString(folder.resolve("b")).equals("new b");
            boolean marked = Files.exists(folder.resolve(MARK));
            assertThat(newA == newB || marked).as("after step %d", last).isTrue();
            assertThat(names()).doesNotContain(".a.0.part", ".b.0.part", ".set.lock");
            mixed += newA == newB ? 0 : 1;
        }
        assertThat(mixed).as("steps between the two moves").isEqualTo(1);
    }
}
