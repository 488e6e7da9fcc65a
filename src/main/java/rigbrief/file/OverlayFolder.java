package rigbrief.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Tree;

/**
 * A folder to lay over a catalogue.
 *
 * @param folder the folder
 * @param faults where its faults go
 */
record OverlayFolder(Path folder, Faults faults) {
    private static final String HEAD = "catalog.yaml";

    /** Reports a folder that is none, holds nothing, or is a catalogue of its own. */
    void check() {
        if (!Files.isDirectory(folder)) {
            fault(
                    Files.exists(folder) ? "a file" : "",
                    "a folder",
                    "name the folder it was written to");
        } else if (Files.exists(folder.resolve(HEAD))) {
            fault(
                    "a second catalogue",
                    "an overlay: workloads.yaml, rates.csv or both",
                    "name one catalogue, first, and overlays behind it");
        } else if (holds(OverlayWriter.UNFINISHED)) {
            fault(
                    OverlayWriter.UNFINISHED + ": its writing was broken off",
                    "an overlay whose files were written together",
                    "run rigbrief calibrate again with --force");
        } else if (!holds(CatalogueReader.WORKLOADS) && !holds(RatesFile.NAME)) {
            fault("", "workloads.yaml, rates.csv or both", "name the folder of an overlay");
        }
    }

    private boolean holds(String name) {
        return Files.exists(folder.resolve(name));
    }

    private void fault(String found, String expected, String advice) {
        faults.add(new Fault(folder.toString(), 1, 1, "overlay", found, expected, advice));
    }

    /** A file of it; empty where it has none, with a fault where it can't be read. */
    Optional<SourceText> source(String name) {
        return holds(name)
                ? SourceText.readRegular(folder.resolve(name), faults)
                : Optional.empty();
    }

    /** The keys of a YAML file; empty, with a fault, where it is none. */
    Optional<Keys> keys(SourceText source) {
        return Tree.read(source.file(), source.text(), faults)
                .map(root -> Keys.of(source.file(), root, faults));
    }
}
