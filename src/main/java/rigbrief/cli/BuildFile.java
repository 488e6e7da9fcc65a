package rigbrief.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BuildReader;
import rigbrief.file.BuildWriter;
import rigbrief.file.FileHold;
import rigbrief.file.SafeWriter;

/**
 * A build file that is read, changed and put back in its place whole. Until it is closed, other
 * runs that mean to change it wait.
 */
final class BuildFile implements AutoCloseable {
    private static final String ADVICE = "look at its folder";

    private final Path path;
    private final FileHold hold;
    private final byte[] before;
    private final BuildRecord record;

    private BuildFile(Path path, FileHold hold, byte[] before, BuildRecord record) {
        this.path = path;
        this.hold = hold;
        this.before = before;
        this.record = record;
    }

    /**
     * Reads a build file.
     *
     * @throws BadInput when it can't be used
     * @throws NotWritten when it is no file that could be written back
     */
    static BuildFile read(String name, Catalogue catalogue, Console console)
            throws BadInput, NotWritten, IOException {
        if (name.equals("-")) {
            throw new NotWritten(
                    "found -, expected a build file, since it is written back; name the file");
        }
        Path path = Path.of(name);
        if (!Files.isRegularFile(path)) {
            // Reading it by name tells what is wrong with it, in the usual words.
            BuildReader.read(path, catalogue);
            throw new NotWritten(name + ": found no file, expected one; name another");
        }
        console.progress("reading the build " + name);
        FileHold hold = hold(path);
        try {
            byte[] bytes = bytes(path, catalogue);
            BuildRecord record = BuildReader.read(new ByteArrayInputStream(bytes), name, catalogue);
            return new BuildFile(path, hold, bytes, record);
        } catch (BadInput | NotWritten | RuntimeException failed) {
            hold.close();
            throw failed;
        }
    }

    private static FileHold hold(Path path) throws NotWritten {
        try {
            return FileHold.of(path.toRealPath());
        } catch (IOException failed) {
            throw NotWritten.of(path, failed, ADVICE);
        }
    }

    private static byte[] bytes(Path path, Catalogue catalogue) throws BadInput, NotWritten {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(path);
        } catch (IOException unreadable) {
            BuildReader.read(path, catalogue);
            throw new NotWritten(path + ": can't be read (" + NotWritten.cause(unreadable) + ")");
        }
        if (BuildReader.isPlainList(new String(bytes, StandardCharsets.UTF_8))) {
            throw new NotWritten(
                    path
                            + ": found a list of part ids, expected a build file, as propose --out"
                            + " writes them");
        }
        return bytes;
    }

    /** The build as it was read. */
    BuildRecord record() {
        return record;
    }

    /**
     * Puts another state of the build in its place, unless somebody changed the file meanwhile who
     * doesn't wait, such as an editor.
     */
    void replace(BuildRecord after) throws NotWritten {
        byte[] bytes = BuildWriter.write(after).getBytes(StandardCharsets.UTF_8);
        try {
            SafeWriter.replace(path, before, bytes);
        } catch (IOException failed) {
            throw NotWritten.of(path, failed, ADVICE);
        }
    }

    /** Lets others change it. */
    @Override
    public void close() throws IOException {
        hold.close();
    }
}
