package rigbrief.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** The option that names the catalogue folder, and the overlays to lay over it. */
final class CatalogueOption {
    private static final String USUAL = "catalog-sample";

    @Option(
            names = "--catalog",
            paramLabel = "DIR",
            defaultValue = USUAL,
            description =
                    "Folder of the parts catalogue; again for each overlay over it."
                            + " Default: ${DEFAULT-VALUE}.")
    private List<Path> folders;

    /** The folders: the catalogue, then overlays from the lowest to the topmost. */
    List<Path> folders() {
        return folders;
    }

    /** The catalogue's own folder, below all overlays. */
    Path folder() {
        return folders.get(0);
    }

    /** The folders' names, as they are shown. */
    String shown() {
        return folders.stream().map(Path::toString).collect(Collectors.joining(" + "));
    }

    /** The option as it has to be repeated in another command; empty for the usual folder. */
    String repeated() {
        boolean usual = folders.size() == 1 && shown().equals(USUAL);
        return usual ? "" : spelt();
    }

    /** The option spelt out, the usual folder too. */
    String spelt() {
        return folders.stream()
                .map(folder -> " --catalog " + ShellWord.of(folder))
                .collect(Collectors.joining());
    }
}
