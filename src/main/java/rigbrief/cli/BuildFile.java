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
import rigbrief.file.FileRefused;
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
     * @throws BadInput when it can't be used
     * @throws NotWritten when it is no file that could be written back
     */
    static BuildFile read(String name, Catalogue catalogue, Console console)
            throws BadInput, NotWritten {
        if (name.equals("-")) {
            throw new NotWritten(
                    "found -, expected a build file, since it is written back; name the file");
        }
        Path path = Path.of(name);
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(path);
        } catch (IOException unreadable) {
            // Reading it by name tells what is wrong with it, in the usual words.
            BuildReader.read(path, catalogue);
            throw new NotWritten(name + ": can't be read (" + unreadable.getMessage() + ")");
        }
        if (BuildReader.isPlainList(new String(bytes, StandardCharsets.UTF_8))) {
            throw new NotWritten(
                    name
                            + ": found a list of part ids, expected a build file, as propose --out"
                            + " writes them");
        }
        console.progress("reading the build " + name);
        BuildRecord record = BuildReader.read(new ByteArrayInputStream(bytes), name, catalogue);
        return new BuildFile(path, bytes, record);
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
