package rigbrief.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rigbrief.diagnostic.Quotation;
import rigbrief.report.Style;

/**
 * Where results, remarks and progress go, and where standard input comes from.
 *
 * <p>Text leaves as UTF-8 with line feeds, whatever the locale.
 */
public final class Console {
    /** Set by the launcher, which can ask the shell what Java 17 can't tell. */
    private static final String TERMINALS = "rigbrief.terminals";

    /** Set by the launcher likewise: columns of the terminal that results go to. */
    private static final String COLUMNS = "rigbrief.columns";

    private static final String ERASE_LINE = "\r\u001b[K";

    private final PrintStream out;
    private final PrintStream err;
    private final InputStream in;
    private final Style style;
    private final boolean showsProgress;
    private final boolean interactive;
    private final boolean debug;
    private boolean progressShown;

    private Console(
            OutputStream out,
            OutputStream err,
            InputStream in,
            Style style,
            boolean showsProgress,
            boolean interactive,
            boolean debug) {
        this.out = stream(out);
        this.err = stream(err);
        this.in = in;
        this.style = style;
        this.showsProgress = showsProgress;
        this.interactive = interactive;
        this.debug = debug;
    }

    /** The console of this process. */
    public static Console ofProcess() {
        return of(
                new FileOutputStream(FileDescriptor.out),
                new FileOutputStream(FileDescriptor.err),
                System.in,
                System.getProperty(TERMINALS, ""),
                environment());
    }

    /** What the shell exports; the terminal's own columns where it exports none. */
    private static Map<String, String> environment() {
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.putIfAbsent("COLUMNS", System.getProperty(COLUMNS, ""));
        return environment;
    }

    /**
     * A console over streams.
     *
     * @param terminals names of the streams that are terminals, out of {@code in}, {@code out} and
     *     {@code err}
     * @param environment the process's environment; {@code NO_COLOR}, {@code COLUMNS} and {@code
     *     RIGBRIEF_DEBUG} are read
     */
    static Console of(
            OutputStream out,
            OutputStream err,
            InputStream in,
            String terminals,
            Map<String, String> environment) {
        boolean colours =
                terminals.contains("out") && environment.getOrDefault("NO_COLOR", "").isEmpty();
        return new Console(
                out,
                err,
                in,
                (colours ? Style.TERMINAL : Style.PLAIN)
                        .wide(columns(environment.getOrDefault("COLUMNS", ""))),
                terminals.contains("err"),
                terminals.contains("in") && terminals.contains("out"),
                !environment.getOrDefault("RIGBRIEF_DEBUG", "").isEmpty());
    }

    private static int columns(String figure) {
        return figure.matches("[1-9][0-9]{0,3}") ? Integer.parseInt(figure) : Style.NARROWEST;
    }

    /** The same console without any letters set off. */
    Console plain() {
        return new Console(out, err, in, style.plain(), showsProgress, interactive, debug);
    }

    /** The same console with stack traces for internal faults. */
    Console debugging() {
        return new Console(out, err, in, style, showsProgress, interactive, true);
    }

    private static PrintStream stream(OutputStream stream) {
        return stream instanceof PrintStream known ? known : new ResultStream(stream);
    }

    /** Results. */
    PrintStream out() {
        return out;
    }

    /** Everything else. */
    PrintStream err() {
        return err;
    }

    /** Standard input. */
    InputStream in() {
        return in;
    }

    /** How results are set off. */
    Style style() {
        return style;
    }

    /** Whether somebody sits at a terminal who can be asked. */
    boolean interactive() {
        return interactive;
    }

    /** Whether internal faults come with their stack trace. */
    boolean debug() {
        return debug;
    }

    /** Prints a result that ends its own lines. */
    void print(String result) {
        endProgress();
        out.print(result);
    }

    /** Prints one line of a result, made safe: file names in it may hold anything. */
    void line(String line) {
        print(Quotation.visible(line) + "\n");
    }

    /** Prints one line of remark, made safe. */
    void remark(String line) {
        endProgress();
        err.print(Quotation.visible(line) + "\n");
    }

    /** Shows on a terminal what is being done; the next line printed takes its place. */
    void progress(String doing) {
        if (showsProgress) {
            err.print(ERASE_LINE + Quotation.visible(doing));
            err.flush();
            progressShown = true;
        }
    }

    private void endProgress() {
        if (progressShown) {
            err.print(ERASE_LINE);
            err.flush();
            progressShown = false;
        }
    }

    /** Why results could not be written to their end; empty when they could. */
    Optional<String> failure() {
        return out instanceof ResultStream results ? results.failure() : Optional.empty();
    }

    /** Sends everything on its way. */
    void flush() {
        endProgress();
        out.flush();
        err.flush();
    }
}
