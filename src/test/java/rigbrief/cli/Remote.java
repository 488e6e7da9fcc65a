package rigbrief.cli;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** An {@link Obedient} in a process of its own, so that many command lines cost one start. */
final class Remote implements AutoCloseable {
    private final Process process;
    private final Writer orders;
    private final BufferedReader answers;

    /**
     * What came of a command line.
     *
     * @param status its exit status
     * @param err standard error in one line
     */
    record Answer(ExitStatus status, String err) {}

    private Remote(Process process) {
        this.process = process;
        this.orders =
                new BufferedWriter(
                        new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8));
        this.answers =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** One on the Java that runs the tests. */
    static Remote started() throws IOException {
        return started(Path.of(System.getProperty("java.home")), Path.of(""), List.of(), List.of());
    }

    /**
     * One of one's own making.
     *
     * @param java home of the Java
     * @param folder where it works
     * @param before command that starts Java with other rights; empty for none
     * @param options of Java
     */
    static Remote started(Path java, Path folder, List<String> before, List<String> options)
            throws IOException {
        List<String> command = new ArrayList<>(before);
        command.add(java.resolve("bin").resolve("java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx768m"));
        command.addAll(options);
        command.addAll(
                List.of(
                        "-cp",
                        System.getProperty(
                                "surefire.test.class.path", System.getProperty("java.class.path")),
                        Obedient.class.getName()));
        return new Remote(
                new ProcessBuilder(command)
                        .directory(folder.toAbsolutePath().toFile())
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start());
    }

    /** Runs a command line to its end. */
    Answer run(String... arguments) throws IOException {
        begin(arguments);
        return answer();
    }

    /** Lets a command line run. */
    void begin(String... arguments) throws IOException {
        begin("", "", arguments);
    }

    /**
     * Lets a command line run.
     *
     * @param out file for standard output; empty for none
     * @param in file of standard input; empty for none
     */
    void begin(String out, String in, String... arguments) throws IOException {
        orders.write(out + "\t" + in + "\t" + String.join("\t", arguments) + "\n");
        orders.flush();
    }

    /** What came of it, as soon as it has ended. */
    Answer answer() throws IOException {
        String line = answers.readLine();
        if (line == null) {
            throw new IOException("the process ended");
        }
        int tab = line.indexOf('\t');
        return new Answer(ExitStatus.valueOf(line.substring(0, tab)), line.substring(tab + 1));
    }

    @Override
    public void close() throws IOException {
        orders.close();
        process.destroy();
    }
}
