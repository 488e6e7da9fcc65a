package rigbrief.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import rigbrief.file.FileRefused;

/**
 * A file that the command line asks for can't be written; its message says which, why, what to do.
 */
final class NotWritten extends Exception {
    private static final long serialVersionUID = 1L;

    NotWritten(String message) {
        super(message);
    }

    /**
     * A file that could not be written.
     *
     * @param why what the system said, or what stands in the file's place
     * @param advice what to do
     */
    static NotWritten of(Path file, IOException why, String advice) {
        return new NotWritten(
                why instanceof FileRefused
                        ? why.getMessage()
                        : "%s: can't be written (%s); %s".formatted(file, cause(why), advice));
    }

    /** The cause in words; the system's own exceptions often hold no more than a name. */
    static String cause(IOException why) {
        if (why instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (why instanceof FileAlreadyExistsException taken) {
            return taken.getFile() + " is a file, not a folder";
        }
        return why instanceof FileSystemException known && known.getReason() != null
                ? known.getReason()
                : why.getMessage();
    }
}
