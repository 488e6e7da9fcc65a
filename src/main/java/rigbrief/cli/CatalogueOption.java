package rigbrief.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option that names the catalogue folder. */
final class CatalogueOption {
    private static final String USUAL = "catalog-sample";

    @Option(
            names = "--catalog",
            paramLabel = "DIR",
            defaultValue = USUAL,
            description = "Folder of the parts catalogue. Default: ${DEFAULT-VALUE}.")
    private Path folder;

    /** The folder. */
    Path folder() {
        return folder;
    }

    /** The option as it has to be repeated in another command; empty for the usual folder. */
    String repeated() {
        return folder.toString().equals(USUAL) ? "" : " --catalog " + ShellWord.of(folder);
    }
}
