package rigbrief.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;

/**
 * The lines of a stream of any length, read in bounded memory: line ends as {@link
 * BufferedReader#readLine} takes them, but a line ends too where it is longer than any that a
 * person or a program writes.
 */
public final class BoundedLines {
    /** Characters of the longest line; whoever gets one more has met something else than lines. */
    public static final int LONGEST = 100_000;

    private final Reader reader;
    private boolean afterReturn;

    /** The lines of a stream in UTF-8. */
    public BoundedLines(InputStream in) {
        this.reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    /** The next line without its end, at most one character longer than the longest; else null. */
    public String next() throws IOException {
        StringBuilder line = new StringBuilder();
        boolean any = false;
        while (line.length() <= LONGEST) {
            int c = reader.read();
            boolean second = c == '\n' && afterReturn;
            afterReturn = c == '\r';
            if (second) {
                continue;
            }
            if (c < 0 || c == '\n' || c == '\r') {
                return c < 0 && !any ? null : line.toString();
            }
            any = true;
            line.append((char) c);
        }
        return line.toString();
    }
}
