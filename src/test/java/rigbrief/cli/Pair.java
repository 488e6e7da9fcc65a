package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rigbrief.cli.Remote.Answer;

/** Two programs that run a command line each at the same time. */
record Pair(Remote left, Remote right) implements AutoCloseable {
    static Pair started() throws IOException {
        return new Pair(Remote.started(), Remote.started());
    }

    /** What came of both. */
    List<Answer> both(List<String> one, List<String> other) throws IOException {
        left.begin(one.toArray(String[]::new));
        right.begin(other.toArray(String[]::new));
        return List.of(left.answer(), right.answer());
    }

    /** No lock and no half of a file is left anywhere in a folder. */
    static void assertNothingLeft(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            assertThat(files.map(it -> it.getFileName().toString()))
                    .noneMatch(
                            name ->
                                    name.endsWith(".lock")
                                            || name.endsWith(".part")
                                            || name.endsWith(".old"));
        }
    }

    @Override
    public void close() throws IOException {
        left.close();
        right.close();
    }
}
