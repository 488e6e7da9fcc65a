package rigbrief;

import java.util.Locale;
import rigbrief.cli.Console;
import rigbrief.cli.Program;

/** The program's entry. */
public final class Main {
    private Main() {}

    /** Runs the command line and ends the process with its exit status. */
    public static void main(String[] arguments) {
        // Documents follow the brief's locale; everything else is the same bytes on every machine.
        Locale.setDefault(Locale.ROOT);
        System.exit(Program.run(Console.ofProcess(), arguments).code());
    }
}
