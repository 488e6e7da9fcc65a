package rigbrief.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;

/**
 * Writes files whole: beside their place first, down to the disk, then moved into it in one step.
 *
 * <p>Whoever stops the program, at whatever moment, finds the old file or the new one, never a part
 * of one. A file beside it that nobody finished, {@code .NAME.N.part}, may be left, and may be
 * removed.
 */
public final class SafeWriter {
    private static final int MOST_TRIES = 1_000;

    private final Watch watch;

    SafeWriter(Watch watch) {
        this.watch = watch;
    }

    /** The steps of a write, in their order. */
    enum Step {
        /** The old file is looked at. */
        CHECK,
        /** A file beside it is opened, empty. */
        OPEN,
        /** Half of the new bytes are in the file beside it. */
        HALF,
        /** All of them are. */
        WHOLE,
        /** They are on the disk. */
        SETTLED,
        /** The new file is in its place. */
        MOVED
    }

    /** Told of each step when it is done; what it throws breaks the write off there. */
    @FunctionalInterface
    interface Watch {
        void done(Path target, Step step) throws IOException;
    }

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
        new SafeWriter((path, step) -> {}).put(target, bytes, () -> refuseTaken(target, force));
    }

    /**
     * Puts new content in the place of what was read, where a symbolic link points.
     *
     * @param before what the file held when it was read
     * @throws FileRefused when it holds something else now: somebody was quicker
     * @throws IOException when the file can't be written; the old one is still there
     */
    public static void replace(Path target, byte[] before, byte[] bytes) throws IOException {
        new SafeWriter((path, step) -> {}).exchange(target, before, bytes);
    }

    /** Writes a file that must not be there yet. */
    void create(Path target, byte[] bytes) throws IOException {
        put(target, bytes, () -> refuseTaken(target, false));
    }

    /** {@link #replace}, watched. */
    void exchange(Path target, byte[] before, byte[] bytes) throws IOException {
        Path real = target.toRealPath();
        put(real, bytes, () -> refuseChanged(target, real, before));
    }

    /** A look at the old file, which may refuse to have it replaced. */
    @FunctionalInterface
    private interface Check {
        void look() throws IOException;
    }

    private void put(Path target, byte[] bytes, Check check) throws IOException {
        try (Ready ready = ready(target, bytes, check)) {
            ready.put();
        }
    }

    private Ready ready(Path target, byte[] bytes, Check check) throws IOException {
        check.look();
        watch.done(target, Step.CHECK);
        Path folder = target.toAbsolutePath().getParent();
        createFolders(folder);
        return new Ready(target, besides(target, folder, bytes), check);
    }

    /** A file that may not be there yet, or may be replaced, on the disk beside its place. */
    Ready ready(Path target, String text, boolean force) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return ready(target, bytes, () -> refuseTaken(target, force));
    }

    /** New content that is on the disk, beside its place; closing it drops it if it is not put. */
    final class Ready implements AutoCloseable {
        private final Path target;
        private final Path beside;
        private final Check check;
        private boolean isPut;

        private Ready(Path target, Path beside, Check check) {
            this.target = target;
            this.beside = beside;
            this.check = check;
        }

        /** Puts it in its place, after a last look at what is there. */
        void put() throws IOException {
            try (FileHold hold = FileHold.of(target)) {
                check.look(); // somebody may have been quicker; from here on no other run is
                hold.put(beside);
                isPut = true;
                watch.done(target, Step.MOVED);
            }
        }

        @Override
        public void close() throws IOException {
            if (!isPut) {
                // Once it is, the next file of this name beside the place is another run's.
                Files.deleteIfExists(beside);
            }
        }
    }

    /** JDK 17 takes a link to a folder for a file in the way (JDK-8294193). */
    static void createFolders(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
        }
    }

    private static void refuseTaken(Path target, boolean force) throws FileRefused {
        boolean special =
                Files.exists(target, LinkOption.NOFOLLOW_LINKS)
                        && !Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)
                        && !Files.isSymbolicLink(target)
                        && !Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS);
        if (special) {
            throw new FileRefused(
                    target
                            + ": found a pipe or a device, expected a file or none;"
                            + " choose another name, or leave --out out");
        }
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

    private static void refuseChanged(Path named, Path target, byte[] before) throws IOException {
        Optional<byte[]> now;
        try {
            now = BoundedBytes.read(target, before.length);
        } catch (NoSuchFileException gone) {
            throw new FileRefused(named + ": found no file any more, expected it to stay; look");
        }
        if (now.isEmpty() || !Arrays.equals(now.get(), before)) {
            throw new FileRefused(
                    named
                            + ": found that it was changed meanwhile, expected it as it was read;"
                            + " run the command again");
        }
    }

    private Path besides(Path target, Path folder, byte[] bytes) throws IOException {
        for (int i = 0; i < MOST_TRIES; i++) {
            Path beside = folder.resolve("." + target.getFileName() + "." + i + ".part");
            try {
                fill(target, beside, bytes);
                return beside;
            } catch (FileAlreadyExistsException taken) {
                continue;
            } catch (IOException | RuntimeException failed) {
                Files.deleteIfExists(beside);
                throw failed;
            }
        }
        throw new FileRefused(
                folder + ": found too many unfinished files, expected none; remove *.part");
    }

    private void fill(Path target, Path beside, byte[] bytes) throws IOException {
        try (FileChannel channel =
                FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            watch.done(target, Step.OPEN);
            int half = bytes.length / 2;
            write(channel, ByteBuffer.wrap(bytes, 0, half));
            watch.done(target, Step.HALF);
            write(channel, ByteBuffer.wrap(bytes, half, bytes.length - half));
            watch.done(target, Step.WHOLE);
            // Else a power cut could leave the new name on a file whose bytes never arrived.
            channel.force(true);
            watch.done(target, Step.SETTLED);
        }
    }

    private static void write(FileChannel channel, ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }
}
