package rigbrief.cli;

import java.nio.file.Path;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;
import rigbrief.file.CatalogueReader.Reading;

/** Reads the files named on a command line, saying so where somebody watches. */
final class InputFiles {
    private static final String STANDARD_INPUT = "-";

    private final Console console;

    InputFiles(Console console) {
        this.console = console;
    }

    /** The catalogue in a folder; what there is to say about it is counted, not shown. */
    Catalogue catalogue(CatalogueOption option) throws BadInput {
        Reading reading = reading(option);
        if (!reading.notes().isEmpty()) {
            console.remark(
                    "note: %d to see with rigbrief catalog check%s"
                            .formatted(reading.notes().size(), option.repeated()));
        }
        return reading.catalogue();
    }

    /** The catalogue in a folder under its overlays, with remarks. */
    Reading reading(CatalogueOption option) throws BadInput {
        console.progress("reading the catalogue " + option.shown());
        return CatalogueReader.readNoted(option.folders());
    }

    /** A brief. */
    Brief brief(String name, Catalogue catalogue) throws BadInput {
        console.progress("reading the brief " + name);
        return name.equals(STANDARD_INPUT)
                ? BriefReader.read(console.in(), name, catalogue)
                : BriefReader.read(Path.of(name), catalogue);
    }

    /** A build. */
    BuildRecord build(String name, Catalogue catalogue) throws BadInput {
        console.progress("reading the build " + name);
        return name.equals(STANDARD_INPUT)
                ? BuildReader.read(console.in(), name, catalogue)
                : BuildReader.read(Path.of(name), catalogue);
    }
}
