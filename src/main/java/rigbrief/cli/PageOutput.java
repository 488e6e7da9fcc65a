package rigbrief.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import rigbrief.file.SafeWriter;
import rigbrief.report.page.Page;
import rigbrief.report.page.PageWriter;
import rigbrief.report.page.Words;

/** Where a page goes: into a file, or to standard output byte for byte. */
final class PageOutput {
    private final Console console;
    private final boolean force;

    /**
     * A place for pages.
     *
     * @param force whether a file that is there may be replaced
     */
    PageOutput(Console console, boolean force) {
        this.console = console;
        this.force = force;
    }

    /** Refuses to begin work whose result could not be kept. */
    static void refuseIfTaken(Path file, boolean force) throws NotWritten {
        if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new NotWritten(
                    file + ": found a file of that name; choose another --out, or add --force");
        }
    }

    /** Writes a page as HTML or PDF. */
    static byte[] bytes(Page page, Words words, boolean pdf) {
        return pdf
                ? PageWriter.pdf(page, words)
                : PageWriter.html(page, words).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Writes bytes whole.
     *
     * @param file where to; null for standard output
     */
    void write(byte[] bytes, Path file) throws NotWritten {
        if (file == null) {
            console.print("");
            console.out().write(bytes, 0, bytes.length);
            return;
        }
        try {
            SafeWriter.write(file, bytes, force);
        } catch (IOException e) {
            throw NotWritten.of(file, e, "choose another --out");
        }
        console.remark("written: " + file);
    }
}
