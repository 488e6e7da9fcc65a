package rigbrief.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One run's hold on a file: while it lasts, no other run changes the file, so that what is read,
 * changed and written back is never laid over a change of somebody else.
 *
 * <p>The system locks {@code .NAME.lock} beside the file, and lets go of it when the program ends,
 * however it ends. The last one removes it; one that a killed program left does no harm. Where the
 * file system knows no locks, writing goes on without.
 */
public final class FileHold implements AutoCloseable {
    private static final int PAUSE_MS = 20;
    private static final int MOST_TRIES = 3_000; // a minute

    /** Beyond what is written: some systems let nobody read what is locked. */
    private static final long LOCKED_BYTE = 1L << 40;

    private static final int QUESTIONS = 3;
    private static final int MOST_LENGTH = 4_096;
    private static final SplittableRandom LENGTHS = new SplittableRandom();

    /** The system's locks are those of the whole process; this one parts its threads. */
    private static final ReentrantLock ONE_THREAD = new ReentrantLock();

    /** Lock files that are held, by the thread that has the lock above. */
    private static final Set<Path> HELD = new HashSet<>();

    private final Path file;
    private final Path lock;
    private final FileChannel channel;

    /** A hold within a hold has no channel of its own. */
    private FileHold(Path file, Path lock, FileChannel channel) {
        this.file = file;
        this.lock = lock;
        this.channel = channel;
    }

    /**
     * Holds a file, there or not, whose folder is there; waits for others to let go of it.
     *
     * @throws FileRefused when another run holds it for a minute
     * @throws IOException when nothing can be written in the folder
     */
    public static FileHold of(Path file) throws IOException {
        return of(file, MOST_TRIES);
    }

    /** The same with a patience of one's own, in tries. */
    static FileHold of(Path file, int tries) throws IOException {
        Path folder = file.toAbsolutePath().getParent().toRealPath();
        Path lock = folder.resolve("." + file.getFileName() + ".lock");
        ONE_THREAD.lock();
        try {
            // Whoever holds a file may hold it again: nothing is locked twice.
            FileChannel channel = HELD.contains(lock) ? null : locked(file, lock, tries);
            HELD.add(lock);
            return new FileHold(file, lock, channel);
        } catch (IOException | RuntimeException failed) {
            ONE_THREAD.unlock();
            throw failed;
        }
    }

    private static FileChannel locked(Path file, Path lock, int tries) throws IOException {
        for (int i = 0; i < tries; i++) {
            FileChannel channel =
                    FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            try {
                if (isHeld(channel, lock)) {
                    return channel;
                }
            } catch (IOException | RuntimeException failed) {
                channel.close();
                throw failed;
            }
            channel.close();
            pause();
        }
        throw new FileRefused(
                file
                        + ": found that another run of rigbrief has been changing it for a minute,"
                        + " expected it to end; end it, or run the command again");
    }

    private static boolean isHeld(FileChannel channel, Path lock) throws IOException {
        FileLock held;
        try {
            held = channel.tryLock(LOCKED_BYTE, 1, false);
        } catch (IOException noLocks) {
            return true;
        }
        return held != null && isStillThere(channel, lock);
    }

    /**
     * Whether the name still leads to what was locked: whoever held it before may have removed it,
     * and somebody else made another. Java can't ask a channel which file it has, and reading the
     * file by name would let go of the lock; so the channel's file is given lengths that another
     * has by chance alone, and the name must show each.
     */
    private static boolean isStillThere(FileChannel channel, Path lock) throws IOException {
        try {
            for (int i = 0; i < QUESTIONS; i++) {
                long length = 1 + LENGTHS.nextInt(MOST_LENGTH);
                channel.truncate(0);
                channel.write(ByteBuffer.allocate(1), length - 1);
                if (Files.size(lock) != length) {
                    return false;
                }
            }
            return true;
        } catch (NoSuchFileException removed) {
            return false;
        } catch (IOException full) {
            removeEmpty(lock);
            throw full;
        }
    }

    /** On a full disk nobody's answer gets in, so that an empty lock is nobody's. */
    private static void removeEmpty(Path lock) throws IOException {
        if (Files.exists(lock) && Files.size(lock) == 0) {
            Files.deleteIfExists(lock);
        }
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while waiting for another run", e);
        }
    }

    /** Work on files. */
    @FunctionalInterface
    public interface Work {
        /** Does it. */
        void run() throws IOException;
    }

    /** Works on several files under one hold, so that no other run comes between them. */
    public void during(Work work) throws IOException {
        work.run();
    }

    /** Puts a file that is written beside it in its place, in one step. */
    void put(Path beside) throws IOException {
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Lets go of it. */
    @Override
    public void close() throws IOException {
        try {
            if (channel != null) {
                HELD.remove(lock);
                release();
            }
        } finally {
            ONE_THREAD.unlock();
        }
    }

    private void release() throws IOException {
        try {
            // Before the lock goes, or it could be somebody else's that is removed.
            Files.deleteIfExists(lock);
        } catch (FileSystemException stays) {
            // It does no harm, and the file is written.
            return;
        } finally {
            channel.close();
        }
    }
}
