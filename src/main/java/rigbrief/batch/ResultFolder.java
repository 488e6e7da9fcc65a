package rigbrief.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rigbrief.file.BoundedBytes;
import rigbrief.file.FileHold;
import rigbrief.file.FileRefused;
import rigbrief.file.SafeWriter;
import rigbrief.file.Sha256;

/**
 * The folder of one brief's result: there as a whole, or not at all.
 *
 * <p>It is filled beside its place, {@code .NAME.N.part}, and renamed; a killed program may leave
 * such a folder, which nobody reads and which may be removed. Its list of files, {@value
 * ResultList#FILE}, holds the digest of each, so that a result that somebody changed since (an
 * order's states, say) is told from one that is as it was written, and is left alone.
 */
final class ResultFolder {
    private static final int MOST_TRIES = 1_000;

    /** No result has a list or a file that comes near these; what is larger is somebody's own. */
    private static final int MOST_LIST_BYTES = 1 << 20;

    private static final int MOST_FILE_BYTES = 32 << 20;

    private final Path out;
    private final String name;

    ResultFolder(Path out, String name) {
        this.out = out;
        this.name = name;
    }

    /** What there is in the place of a result. */
    enum State {
        /** Nothing. */
        ABSENT,
        /** A result, as it was written. */
        WHOLE,
        /** A result of which a file was changed, added or taken away since. */
        CHANGED,
        /** Something that no batch wrote. */
        FOREIGN
    }

    /** Where the result goes. */
    Path path() {
        return out.resolve(name);
    }

    /** The list of files in place; empty where there is none that can be read. */
    Optional<ResultList> list() throws IOException {
        return list(path());
    }

    private static Optional<ResultList> list(Path folder) throws IOException {
        Path file = folder.resolve(ResultList.FILE);
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                ? BoundedBytes.read(file, MOST_LIST_BYTES)
                        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                        .flatMap(ResultList::read)
                : Optional.empty();
    }

    /** What is there now. */
    State state() throws IOException {
        return state(path());
    }

    private static State state(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return State.ABSENT;
        }
        Optional<ResultList> list = list(folder);
        if (list.isEmpty()) {
            return State.FOREIGN;
        }
        Set<String> found = new TreeSet<>();
        for (Path entry : entries(folder)) {
            found.add(entry.getFileName().toString());
        }
        found.remove(ResultList.FILE);
        Map<String, String> digests = list.get().digests();
        return found.equals(digests.keySet()) && areAsWritten(folder, digests)
                ? State.WHOLE
                : State.CHANGED;
    }

    /** Only files that the list names are read: what else lies there may be of any size. */
    private static boolean areAsWritten(Path folder, Map<String, String> digests)
            throws IOException {
        for (Map.Entry<String, String> each : digests.entrySet()) {
            Path file = folder.resolve(each.getKey());
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    || !BoundedBytes.read(file, MOST_FILE_BYTES)
                            .map(Sha256::of)
                            .equals(Optional.of(each.getValue()))) {
                return false;
            }
        }
        return true;
    }

    /**
     * Puts a result into its place.
     *
     * @param files content by file name
     * @param force whether a result that somebody changed, or a folder that no batch wrote, is
     *     replaced too; files in it that the result has no other of are kept
     * @throws FileRefused when the place is taken
     */
    void write(Map<String, byte[]> files, String origin, Answered answered, boolean force)
            throws IOException {
        refuse(state(), force);
        Path part = beside("part");
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                SafeWriter.write(part.resolve(file.getKey()), file.getValue(), false);
            }
            ResultList list = ResultList.of(origin, answered, files);
            SafeWriter.write(part.resolve(ResultList.FILE), list.text(), false);
            put(part, force);
        } catch (IOException | RuntimeException failed) {
            remove(part);
            throw failed;
        }
    }

    /** Others that have a result for this place wait, and find this one there. */
    private void put(Path part, boolean force) throws IOException {
        try (FileHold hold = FileHold.of(path())) {
            hold.during(() -> putHeld(part, force));
        }
    }

    private void putHeld(Path part, boolean force) throws IOException {
        State state = state();
        refuse(state, force);
        if (state == State.ABSENT) {
            moveIn(part);
        } else {
            replace(part, force);
        }
    }

    /** Refuses to begin a search whose result could not be kept. */
    void refuseIfTaken(boolean force) throws IOException {
        refuse(state(), force);
    }

    private void refuse(State state, boolean force) throws FileRefused {
        if (state != State.ABSENT && !Files.isDirectory(path(), LinkOption.NOFOLLOW_LINKS)) {
            throw new FileRefused(
                    path() + ": found a file, expected a folder; choose another --out");
        }
        refuseStrange(state, force);
    }

    private void refuseStrange(State state, boolean force) throws FileRefused {
        if (!force && (state == State.CHANGED || state == State.FOREIGN)) {
            throw new FileRefused(
                    path()
                            + (state == State.CHANGED
                                    ? ": found a result that was changed since it was written"
                                    : ": found a folder that holds no whole result")
                            + ", expected nothing or a result as it was written;"
                            + " choose another --out, or add --force");
        }
    }

    private void moveIn(Path part) throws IOException {
        try {
            Files.move(part, path(), StandardCopyOption.ATOMIC_MOVE);
        } catch (DirectoryNotEmptyException | FileAlreadyExistsException quicker) {
            throw new FileRefused(
                    path() + ": found that somebody made it meanwhile; run the command again");
        }
    }

    /** Between the two moves there is no result: a run that is killed there is answered anew. */
    private void replace(Path part, boolean force) throws IOException {
        Path old = beside("old");
        Files.move(path(), old, StandardCopyOption.ATOMIC_MOVE);
        Map<String, String> known = list(old).map(list -> list.digests()).orElse(Map.of());
        try {
            // What somebody changed in it since it was looked at shows now, and can't change more.
            refuseStrange(state(old), force);
            moveIn(part);
        } catch (IOException failed) {
            Files.move(old, path(), StandardCopyOption.ATOMIC_MOVE);
            throw failed;
        }
        for (Path entry : entries(old)) {
            String file = entry.getFileName().toString();
            Path place = path().resolve(file);
            boolean ours = known.containsKey(file) || file.equals(ResultList.FILE);
            if (!ours && !Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
                Files.move(entry, place);
            } else if (!Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
                Files.delete(entry);
            }
        }
        Files.delete(old);
    }

    private Path beside(String ending) throws IOException {
        Files.createDirectories(out);
        for (int i = 0; i < MOST_TRIES; i++) {
            Path folder = out.resolve("." + name + "." + i + "." + ending);
            try {
                if (ending.equals("part")) {
                    return Files.createDirectory(folder);
                }
                if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
                    return folder;
                }
            } catch (FileAlreadyExistsException taken) {
                continue;
            }
        }
        throw new FileRefused(
                out + ": found too many unfinished folders, expected none; remove ." + name + ".*");
    }

    /** Where it was moved into its place there is nothing left to remove. */
    private static void remove(Path part) throws IOException {
        if (Files.isDirectory(part, LinkOption.NOFOLLOW_LINKS)) {
            for (Path entry : entries(part)) {
                Files.delete(entry);
            }
            Files.delete(part);
        }
    }

    private static List<Path> entries(Path folder) throws IOException {
        List<Path> entries = new ArrayList<>();
        try (Stream<Path> all = Files.list(folder)) {
            all.forEach(entries::add);
        }
        return entries;
    }
}
