package rigbrief.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A program that runs the command lines it is sent, one a line, its words apart by tabulators. The
 * first word is a file to put standard output into, the second a file of standard input; either may
 * be empty. It answers with the exit status and, behind a tabulator, standard error in one line.
 */
public final class Obedient {
    private Obedient() {}

    /** Obeys until there is nothing more to do. */
    public static void main(String... arguments) throws IOException {
        // As the program's own entry does.
        Locale.setDefault(Locale.ROOT);
        BufferedReader orders =
                new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = orders.readLine(); line != null; line = orders.readLine()) {
            List<String> words = Arrays.asList(line.split("\t", -1));
            Captured console = new Captured();
            if (!words.get(1).isEmpty()) {
                console.input(Files.readString(Path.of(words.get(1))));
            }
            ExitStatus status = console.run(words.subList(2, words.size()).toArray(String[]::new));
            if (!words.get(0).isEmpty()) {
                Files.write(Path.of(words.get(0)), console.bytes());
            }
            System.out.println(status + "\t" + console.err().replace("\n", " / "));
            System.out.flush();
        }
    }
}
