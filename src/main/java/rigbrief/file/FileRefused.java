package rigbrief.file;

import java.io.IOException;

/** A file that is not written, because of what stands in its place; the message says what to do. */
public final class FileRefused extends IOException {
    private static final long serialVersionUID = 1L;

    /** Says which file, what was found and what to do. */
    public FileRefused(String message) {
        super(message);
    }
}
