package rigbrief.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import rigbrief.build.BuildRecord;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BuildReader;
import rigbrief.file.BuildWriter;
import rigbrief.file.FileRefused;
import rigbrief.file.Known;
import rigbrief.file.SafeWriter;

/** A build file that is read, changed and put back in its place whole. */
final class BuildFile {
    private final Path path;
    private final byte[] before;
    private final BuildRecord record;

    private BuildFile(Path path, byte[] before, BuildRecord record) {
        this.path = path;
        this.before = before;
        this.record = record;
    }

    /**
     * Reads a build file.
     *
     * @throws BadInput when it, or the catalogue, can't be used
     * @throws NotWritten when it is no file that could be written back
     */
    static BuildFile read(String name, Known known, InputFiles files) throws BadInput, NotWritten {
        if (name.equals(InputFiles.STANDARD_INPUT)) {
            throw new NotWritten(
                    "found -, expected a build file, since it is written back; name the file");
        }
        Optional<Path> path = files.at(name, Optional::of);
        if (path.isPresent() && Files.exists(path.get()) && isSpecial(path.get())) {
            throw new NotWritten(
                    name + ": found a pipe or a device, expected a file, since it is written back");
        }
        files.build(name, known);
        files.refuseFaulty();
        try {
            // Once more from bytes that are kept: the file may have changed since it was looked at.
            byte[] bytes = Files.readAllBytes(path.orElseThrow());
            refuseList(name, bytes);
            InputStream in = new ByteArrayInputStream(bytes);
            BuildRecord record = BuildReader.read(in, name, known.catalogue());
            return new BuildFile(path.get(), bytes, record);
        } catch (IOException unreadable) {
            throw new NotWritten(name + ": can't be read (" + unreadable.getMessage() + ")");
        }
    }

    private static boolean isSpecial(Path path) {
        return !Files.isRegularFile(path) && !Files.isDirectory(path);
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

    /** Puts another state of the build in its place, unless somebody changed the file meanwhile. */
    void replace(BuildRecord after) throws NotWritten {
        byte[] bytes = BuildWriter.write(after).getBytes(StandardCharsets.UTF_8);
        try {
            SafeWriter.replace(path, before, bytes);
        } catch (FileRefused refused) {
            throw new NotWritten(refused.getMessage());
        } catch (IOException failed) {
            throw new NotWritten(
                    path + ": can't be written (" + failed.getMessage() + "); look at its folder");
        }
    }
}
