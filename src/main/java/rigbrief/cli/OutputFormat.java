package rigbrief.cli;

import java.util.Locale;

/** How a result is printed. */
enum OutputFormat {
    TEXT,
    JSON;

    /** As it is spelt on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
