package rigbrief.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import rigbrief.build.BuildRecord;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BuildReader;
import rigbrief.file.BuildWriter;
import rigbrief.file.FileHold;
import rigbrief.file.Known;
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
     * @throws BadInput when it, or the catalogue, can't be used
     * @throws NotWritten when it is no file that could be written back
     */
    static BuildFile read(String name, Known known, InputFiles files)
            throws BadInput, NotWritten, IOException {
        if (name.equals(InputFiles.STANDARD_INPUT)) {
            throw new NotWritten(
                    "found -, expected a build file, since it is written back; name the file");
        }
        Optional<Path> path = files.at(name, Optional::of);
        if (path.filter(BuildFile::isSpecial).isPresent()) {
            throw new NotWritten(
                    name + ": found a pipe or a device, expected a file, since it is written back");
        }
        if (!known.whole() || path.filter(Files::isRegularFile).isEmpty()) {
            // Nothing will be written, so nobody need wait: the readers tell what is wrong.
            files.build(name, known);
            files.refuseFaulty();
            throw new NotWritten(name + ": found no file, expected one; name another");
        }
        FileHold hold = hold(path.get());
        try {
            Optional<byte[]> bytes = BuildReader.bytes(path.get(), files.faults());
            files.refuseFaulty();
            refuseList(name, bytes.orElseThrow());
            Optional<BuildRecord> record = files.build(name, bytes.get(), known);
            files.refuseFaulty();
            return new BuildFile(path.get(), hold, bytes.get(), record.orElseThrow());
        } catch (BadInput | NotWritten | RuntimeException failed) {
            hold.close();
            throw failed;
        }
    }

    /** Whether a place for output is the build file itself, and no link that leads to it. */
    static boolean isAt(String name, Path out) {
        try {
            return !name.equals(InputFiles.STANDARD_INPUT)
                    && Files.isRegularFile(out, LinkOption.NOFOLLOW_LINKS)
                    && Path.of(name).toRealPath().equals(out.toRealPath());
        } catch (IOException | InvalidPathException unreadable) {
            // Whoever reads the build tells what is wrong with its name.
            return false;
        }
    }

    private static FileHold hold(Path path) throws NotWritten {
        try {
            return FileHold.of(path.toRealPath());
        } catch (IOException failed) {
            throw NotWritten.of(path, failed, ADVICE);
        }
    }

    private static boolean isSpecial(Path path) {
        return Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path);
    }

    private static void refuseList(String name, byte[] bytes) throws NotWritten {
        if (BuildReader.isPlainList(new String(bytes, StandardCharsets.UTF_8))) {
            throw new NotWritten(
                    name
                            + ": found a list of part ids, expected a build file, as propose --out"
                            + " writes them");
        }
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
