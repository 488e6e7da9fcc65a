package rigbrief.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Files of one folder that are written together: all are on the disk before the first is put in its
 * place, so that a full disk leaves every old one; and no other run that writes the same set comes
 * between them.
 *
 * <p>Stopped between two of them a program leaves some new and some old. Where they mean something
 * only together, a mark says so from before the first until after the last.
 */
public final class FileSet {
    private final Path folder;
    private final String name;
    private final Optional<String> mark;
    private final SafeWriter writer;
    private final Map<String, String> textByName = new LinkedHashMap<>();

    private FileSet(Path folder, String name, Optional<String> mark, SafeWriter.Watch watch) {
        this.folder = folder;
        this.name = name;
        this.mark = mark;
        this.writer = new SafeWriter(watch);
    }

    /**
     * A set of files each of which stands for itself.
     *
     * @param name what the set is called among runs that write the same
     */
    public static FileSet of(Path folder, String name) {
        return new FileSet(folder, name, Optional.empty(), (path, step) -> {});
    }

    /**
     * A set that is of use only whole.
     *
     * @param mark name of the file that says that it is not
     */
    static FileSet marked(Path folder, String name, String mark, SafeWriter.Watch watch) {
        return new FileSet(folder, name, Optional.of(mark), watch);
    }

    /** Adds a file, in UTF-8. */
    public void add(String file, String text) {
        textByName.put(file, text);
    }

    /**
     * Writes them.
     *
     * @param force whether files that are there may be replaced
     * @throws FileRefused when one is there and may not
     * @throws IOException when one can't be written; unless it happens between two moves, none is
     */
    public void write(boolean force) throws IOException {
        if (textByName.isEmpty()) {
            return;
        }
        SafeWriter.createFolders(folder);
        List<SafeWriter.Ready> ready = new ArrayList<>();
        try (FileHold set = FileHold.of(folder.resolve(name))) {
            set.during(() -> put(force, ready));
        } finally {
            for (SafeWriter.Ready file : ready) {
                file.close();
            }
        }
    }

    private void put(boolean force, List<SafeWriter.Ready> ready) throws IOException {
        for (Map.Entry<String, String> file : textByName.entrySet()) {
            ready.add(writer.ready(folder.resolve(file.getKey()), file.getValue(), force));
        }
        if (mark.isPresent()) {
            SafeWriter.write(folder.resolve(mark.get()), "", true);
        }
        for (SafeWriter.Ready file : ready) {
            file.put();
        }
        if (mark.isPresent()) {
            Files.deleteIfExists(folder.resolve(mark.get()));
        }
    }
}
