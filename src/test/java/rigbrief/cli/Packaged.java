package rigbrief.cli;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The packaged program, started as a shell starts it. */
final class Packaged {
    private final Map<String, String> environment = new LinkedHashMap<>();
    private Path launcher = Path.of(System.getProperty("rigbrief.launcher", "target/rigbrief"));
    private Path folder = Path.of("").toAbsolutePath();
    private String input = "";

    /**
     * What a run left behind.
     *
     * @param status exit status
     * @param out standard output, read as UTF-8
     * @param err standard error, likewise
     */
    record Run(int status, String out, String err) {}

    /** Starts it from another place. */
    Packaged launcher(Path path) {
        launcher = path;
        return this;
    }

    /** The launcher itself. */
    Path launcher() {
        return launcher.toAbsolutePath();
    }

    /** Starts it in another folder. */
    Packaged in(Path path) {
        folder = path;
        return this;
    }

    /** Gives it standard input. */
    Packaged input(String text) {
        input = text;
        return this;
    }

    /** Sets a variable of its environment. */
    Packaged with(String name, String value) {
        environment.put(name, value);
        return this;
    }

    /** Runs it to its end. */
    Run run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(launcher().toString());
        command.addAll(List.of(arguments));
        Path in = write(input);
        Path out = Files.createTempFile("rigbrief", ".out");
        Path err = Files.createTempFile("rigbrief", ".err");
        ProcessBuilder builder =
                new ProcessBuilder(command)
                        .directory(folder.toFile())
                        .redirectInput(in.toFile())
                        .redirectOutput(out.toFile())
                        .redirectError(err.toFile());
        builder.environment().remove("NO_COLOR");
        builder.environment().remove("RIGBRIEF_DEBUG");
        builder.environment().putAll(environment);
        int status = builder.start().waitFor();
        Run run = new Run(status, read(out), read(err));
        for (Path file : List.of(in, out, err)) {
            Files.delete(file);
        }
        return run;
    }

    private static Path write(String text) throws IOException {
        File file = File.createTempFile("rigbrief", ".in");
        return Files.writeString(file.toPath(), text);
    }

    private static String read(Path file) throws IOException {
        return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    }
}
