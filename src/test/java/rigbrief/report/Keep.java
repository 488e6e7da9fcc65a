package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Text that pins wording and layout and proves nothing about numbers.
 *
 * <p>Run the tests with {@code -Drigbrief.keeps=write} to write the keeps anew, then look at the
 * difference.
 */
final class Keep {
    private static final Path FOLDER = Path.of("src/test/resources/rigbrief/report");

    private Keep() {}

    static void assertKept(String name, String text) {
        Path file = FOLDER.resolve(name);
        try {
            if ("write".equals(System.getProperty("rigbrief.keeps"))) {
                Files.createDirectories(FOLDER);
                Files.writeString(file, text);
            }
            assertThat(text).isEqualTo(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
