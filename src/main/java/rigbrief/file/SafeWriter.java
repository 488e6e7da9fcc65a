package rigbrief.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes files whole: beside their place first, then moved into it in one step. */
public final class SafeWriter {
    private static final int MOST_TRIES = 1_000;

    private SafeWriter() {}

    /** Writes a text in UTF-8; see {@link #write(Path, byte[], boolean)}. */
    public static void write(Path target, String text, boolean force) throws IOException {
        write(target, text.getBytes(StandardCharsets.UTF_8), force);
    }

    /**
     * Writes a file, and the folders that lead to it. A symbolic link in its place is replaced, not
     * followed.
     *
     * @param force whether a file in its place may be replaced
     * @throws FileRefused when there is one and it may not, or when there is a folder
     * @throws IOException when the file can't be written; nothing is left behind
     */
    public static void write(Path target, byte[] bytes, boolean force) throws IOException {
        refuseTaken(target, force);
        Path folder = target.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        Path beside = besides(target, folder, bytes);
        try {
            refuseTaken(target, force); // somebody may have been quicker
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void refuseTaken(Path target, boolean force) throws FileRefused {
        if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileRefused(
                    target + ": found a folder, expected no such name; choose another name");
        }
        if (!force && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileRefused(
                    target
                            + ": found a file of that name, expected none;"
                            + " choose another name, or add --force");
        }
    }

    private static Path besides(Path target, Path folder, byte[] bytes) throws IOException {
        for (int i = 0; i < MOST_TRIES; i++) {
            Path beside = folder.resolve("." + target.getFileName() + "." + i + ".part");
            try {
                Files.write(beside, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                return beside;
            } catch (FileAlreadyExistsException taken) {
                continue;
            } catch (IOException failed) {
                Files.deleteIfExists(beside);
                throw failed;
            }
        }
        throw new FileRefused(
                folder + ": found too many unfinished files, expected none; remove *.part");
    }
}
