package rigbrief.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;

/**
 * A file's text, whole.
 *
 * @param file name for faults
 * @param text content without a byte order mark
 * @param sha256 digest of the bytes, hexadecimal
 */
record SourceText(String file, String text, String sha256) {
    /** What is read takes up several times its length: a larger file would exhaust the memory. */
    private static final int SHARE_OF_MEMORY = 8;

    private static final int MOST_BYTES =
            (int) Math.min(512 << 20, Runtime.getRuntime().maxMemory() / SHARE_OF_MEMORY);

    private static final char REPLACEMENT = '\uFFFD';
    private static final char MARK = '\uFEFF';

    /** Reads a file; empty, with a fault, when it is missing, too large or not UTF-8. */
    static Optional<SourceText> read(Path path, Faults faults) {
        return bytes(path, faults).flatMap(bytes -> text(bytes, path.toString(), faults));
    }

    /**
     * Reads a file that is found in a folder or named in another file; a pipe or a device, which
     * might never end or never begin, is refused.
     */
    static Optional<SourceText> readRegular(Path path, Faults faults) {
        return refusesSpecial(path, faults) ? Optional.empty() : read(path, faults);
    }

    /** Whether something is there that is no file one could read twice; reported if so. */
    static boolean refusesSpecial(Path path, Faults faults) {
        boolean special =
                Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path);
        if (special) {
            refuse(faults, path.toString(), "a pipe or a device", "a file", "copy it into a file");
        }
        return special;
    }

    /** Reads a file's bytes; empty, with a fault, when it is missing or too large. */
    static Optional<byte[]> bytes(Path path, Faults faults) {
        String file = path.toString();
        if (Files.isDirectory(path)) {
            return refuse(faults, file, "a folder", "a file", "name a file inside it");
        }
        try (InputStream in = Files.newInputStream(path)) {
            if (Files.size(path) > MOST_BYTES) {
                return tooLarge(faults, file);
            }
            return bytes(in, file, faults);
        } catch (NoSuchFileException missing) {
            return refuse(faults, file, "", "a file of this name", "check the name and the folder");
        } catch (IOException unreadable) {
            return refuse(
                    faults,
                    file,
                    "a file that can't be opened",
                    "a file that may be read",
                    "check its permissions");
        }
    }

    /** Reads a stream to its end; empty, with a fault, when it breaks off. */
    static Optional<SourceText> readStream(InputStream in, String file, Faults faults) {
        try {
            return bytes(in, file, faults).flatMap(bytes -> text(bytes, file, faults));
        } catch (IOException broken) {
            return refuse(faults, file, "a broken stream", "a stream with an end", "try again");
        }
    }

    private static Optional<byte[]> bytes(InputStream in, String file, Faults faults)
            throws IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        return bytes.length > MOST_BYTES ? tooLarge(faults, file) : Optional.of(bytes);
    }

    private static Optional<SourceText> text(byte[] bytes, String file, Faults faults) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        Optional<Fault> foreign =
                text.indexOf(REPLACEMENT) < 0 ? Optional.empty() : foreign(bytes, file);
        if (foreign.isPresent()) {
            faults.add(foreign.get());
            return Optional.empty();
        }
        boolean marked = !text.isEmpty() && text.charAt(0) == MARK;
        return Optional.of(
                new SourceText(file, marked ? text.substring(1) : text, Sha256.of(bytes)));
    }

    /** Where the first bytes stand that are no UTF-8; nothing when the file itself has U+FFFD. */
    private static Optional<Fault> foreign(byte[] bytes, String file) {
        CharsetDecoder strict = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = strict.decode(in, out, true);
        if (!result.isError()) {
            return Optional.empty();
        }
        String before = out.flip().toString();
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        int column = before.length() - before.lastIndexOf('\n');
        String found = "byte 0x%02X".formatted(bytes[in.position()] & 0xFF);
        return Optional.of(
                new Fault(file, line, column, "file", found, "UTF-8", "save the file as UTF-8"));
    }

    private static <T> Optional<T> tooLarge(Faults faults, String file) {
        int most = MOST_BYTES >> 20;
        return refuse(
                faults,
                file,
                "more than %d MiB".formatted(most),
                "at most %d MiB, an eighth of the memory allowed".formatted(most),
                "split the file, or allow more: RIGBRIEF_JAVA_OPTIONS=-Xmx2g");
    }

    private static <T> Optional<T> refuse(
            Faults faults, String file, String found, String expected, String advice) {
        faults.add(new Fault(file, 1, 1, "file", found, expected, advice));
        return Optional.empty();
    }
}
