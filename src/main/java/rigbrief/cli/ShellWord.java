package rigbrief.cli;

import java.nio.file.Path;

/** A word that a POSIX shell takes as it is. */
final class ShellWord {
    private static final String PLAIN = "[A-Za-z0-9_./:=@%+,-]+";

    private ShellWord() {}

    /** The word, in single quotes where the shell would otherwise read it in its own way. */
    static String of(String word) {
        return word.matches(PLAIN) ? word : "'" + word.replace("'", "'\\''") + "'";
    }

    /** A path as a word. */
    static String of(Path path) {
        return of(path.toString());
    }
}
