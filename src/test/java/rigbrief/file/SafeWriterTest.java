package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SafeWriterTest {
    @TempDir Path folder;

    @Test
    void a_file_is_written_in_utf_8_with_the_folders_that_lead_to_it() throws IOException {
        Path file = folder.resolve("a/b/out.yaml");

        SafeWriter.write(file, "maker: Grün\n", false);

        assertThat(Files.readAllBytes(file))
                .asString(StandardCharsets.UTF_8)
                .isEqualTo("maker: Grün\n");
    }

    @Test
    void an_existing_file_is_kept_without_force() throws IOException {
        Path file = Files.writeString(folder.resolve("out.yaml"), "old");

        assertThatThrownBy(() -> SafeWriter.write(file, "new", false))
                .isInstanceOf(FileRefused.class)
                .hasMessage(
                        file
                                + ": found a file of that name, expected none; choose another name,"
                                + " or add --force");
        assertThat(file).hasContent("old");
    }

    @Test
    void an_existing_file_is_replaced_with_force() throws IOException {
        Path file = Files.writeString(folder.resolve("out.yaml"), "old");

        SafeWriter.write(file, "new", true);

        assertThat(file).hasContent("new");
    }

    @Test
    void a_symbolic_link_is_replaced_and_what_it_points_at_is_left_alone() throws IOException {
        Path precious = Files.writeString(folder.resolve("precious"), "keep");
        Path link = Files.createSymbolicLink(folder.resolve("out.yaml"), precious);

        SafeWriter.write(link, "new", true);

        assertThat(precious).hasContent("keep");
        assertThat(Files.isSymbolicLink(link)).isFalse();
        assertThat(link).hasContent("new");
    }

    @Test
    void a_dangling_link_counts_as_a_file_of_that_name() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("out"), folder.resolve("nowhere"));

        assertThatThrownBy(() -> SafeWriter.write(link, "new", false))
                .isInstanceOf(FileRefused.class);
        assertThat(Files.exists(link, LinkOption.NOFOLLOW_LINKS)).isTrue();
    }

    @Test
    void a_folder_in_its_place_is_refused_even_with_force() throws IOException {
        Path taken = Files.createDirectory(folder.resolve("out"));

        assertThatThrownBy(() -> SafeWriter.write(taken, "new", true))
                .isInstanceOf(FileRefused.class)
                .hasMessageContaining("found a folder");
    }

    @Test
    void nothing_is_left_beside_the_file() throws IOException {
        SafeWriter.write(folder.resolve("out.yaml"), "new", false);
        SafeWriter.write(folder.resolve("out.yaml"), "newer", true);

        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve("out.yaml"));
        }
    }

    @Test
    void an_unfinished_file_of_somebody_else_is_left_alone() throws IOException {
        Path other = Files.writeString(folder.resolve(".out.yaml.0.part"), "theirs");

        SafeWriter.write(folder.resolve("out.yaml"), "mine", false);

        assertThat(other).hasContent("theirs");
        assertThat(folder.resolve("out.yaml")).hasContent("mine");
    }

    @ParameterizedTest
    @EnumSource(SafeWriter.Step.class)
    void a_write_broken_off_after_any_step_leaves_the_old_file_or_the_new(SafeWriter.Step last)
            throws IOException {
        Path file = Files.writeString(folder.resolve("out.yaml"), "old content");
        SafeWriter breaking =
                new SafeWriter(
                        (path, step) -> {
                            if (step == last) {
                                throw new IOException("broken off");
                            }
                        });

        assertThatThrownBy(() -> breaking.exchange(file, bytes("old content"), bytes("new")))
                .hasMessage("broken off");

        assertThat(file).hasContent(last == SafeWriter.Step.MOVED ? "new" : "old content");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    @Test
    void a_file_that_changed_meanwhile_is_not_replaced() throws IOException {
        Path file = Files.writeString(folder.resolve("out.yaml"), "theirs");

        assertThatThrownBy(() -> SafeWriter.replace(file, bytes("old"), bytes("new")))
                .isInstanceOf(FileRefused.class)
                .hasMessageContaining("changed meanwhile");
        assertThat(file).hasContent("theirs");
    }

    @Test
    void replacing_through_a_symbolic_link_changes_what_it_points_at() throws IOException {
        Path real = Files.writeString(folder.resolve("real.yaml"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("out.yaml"), real);

        SafeWriter.replace(link, bytes("old"), bytes("new"));

        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(real).hasContent("new");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
