package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds within one process; those of several are shown by {@code TwoRunsIT}. */
class FileHoldTest {
    @TempDir Path folder;

    private Path file;
    private Path lock;

    @BeforeEach
    void name() {
        file = folder.resolve("desk.yaml");
        lock = folder.resolve(".desk.yaml.lock");
    }

    @Test
    void a_lock_lies_beside_the_file_while_it_is_held_and_no_longer() throws IOException {
        try (FileHold hold = FileHold.of(file)) {
            assertThat(hold).isNotNull();
            assertThat(lock).exists();
        }

        assertThat(files()).isEmpty();
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    @Test
    void whoever_holds_a_file_may_hold_it_again() throws IOException {
        try (FileHold outer = FileHold.of(file)) {
            try (FileHold inner = FileHold.of(file)) {
                assertThat(inner).isNotSameAs(outer);
            }
            assertThat(lock).as("the outer hold lasts").exists();
        }

        assertThat(files()).isEmpty();
    }

    @Test
    void a_lock_that_a_killed_program_left_is_taken_and_removed() throws IOException {
        Files.writeString(lock, "left");

        FileHold.of(file, 1).close();

        assertThat(files()).isEmpty();
    }

    @Test
    void one_that_is_held_too_long_is_refused() throws Exception {
        // Java refuses a second lock of one process at once, so that another has to hold it.
        Process other = holding();
        try {
            assertThatThrownBy(() -> FileHold.of(file, 2))
                    .isInstanceOf(FileRefused.class)
                    .hasMessageContaining("another run of rigbrief");
            assertThat(lock).as("not ours to remove").exists();
        } finally {
            other.destroyForcibly().waitFor();
        }

        FileHold.of(file, 1).close();
        assertThat(files()).as("a killed program holds nothing").isEmpty();
    }

    private Process holding() throws IOException {
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty(
                                        "surefire.test.class.path",
                                        System.getProperty("java.class.path")),
                                Holder.class.getName(),
                                lock.toString())
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        assertThat(process.getInputStream().read()).isEqualTo('h');
        return process;
    }

    /** A program that locks a file and sits on it. */
    static final class Holder {
        private Holder() {}

        public static void main(String... arguments) throws Exception {
            try (FileChannel channel =
                            FileChannel.open(
                                    Path.of(arguments[0]),
                                    StandardOpenOption.CREATE,
                                    StandardOpenOption.WRITE);
                    FileLock held = channel.lock(1L << 40, 1, false)) {
                System.out.print(held.isValid() ? "h" : "-");
                System.out.flush();
                Thread.sleep(600_000);
            }
        }
    }

    @Test
    void threads_hold_a_file_one_after_the_other() throws Exception {
        Files.writeString(file, "0");
        ExecutorService threads = Executors.newFixedThreadPool(8);
        List<Callable<Void>> work = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            work.add(this::addOne);
        }

        for (Future<Void> done : threads.invokeAll(work)) {
            done.get();
        }
        threads.shutdown();

        assertThat(file).hasContent("200");
        assertThat(files()).containsExactly(file);
    }

    private Void addOne() throws IOException {
        try (FileHold hold = FileHold.of(file)) {
            hold.during(
                    () -> {
                        int before = Integer.parseInt(Files.readString(file));
                        SafeWriter.write(file, Integer.toString(before + 1), true);
                    });
        }
        return null;
    }
}
