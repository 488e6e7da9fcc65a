package rigbrief.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A file's bytes, where there are no more of them than whoever asks can have a use for. */
public final class BoundedBytes {
    private BoundedBytes() {}

    /**
     * Reads a file; what grows while it is read is read no further.
     *
     * @param most bytes
     * @return empty where there are more
     * @throws IOException when it is missing or can't be read
     */
    public static Optional<byte[]> read(Path file, int most) throws IOException {
        if (Files.size(file) > most) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(most + 1);
            return bytes.length > most ? Optional.empty() : Optional.of(bytes);
        }
    }
}
