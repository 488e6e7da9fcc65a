package rigbrief.file;

import java.io.IOException;
import java.nio.file.Path;

/** Throws after so many steps of writing, as a killed program would stop there. */
final class Countdown implements SafeWriter.Watch {
    private int left;

    Countdown(int left) {
        this.left = left;
    }

    @Override
    public void done(Path target, SafeWriter.Step step) throws IOException {
        if (left-- == 0) {
            throw new IOException("broken off");
        }
    }
}
