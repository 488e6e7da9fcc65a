package rigbrief.cli;

import java.io.ByteArrayInputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rigbrief.api.Rigbrief;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.file.BriefReader;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;
import rigbrief.file.CatalogueReader.Reading;
import rigbrief.file.Known;

/**
 * Reads the files named on a command line, saying so where somebody watches.
 *
 * <p>Faults are gathered over all files; {@link #refuseFaulty} tells them at once when everything
 * has been looked at.
 */
final class InputFiles {
    static final String STANDARD_INPUT = "-";

    private final Console console;
    private final Faults faults = new Faults();

    InputFiles(Console console) {
        this.console = console;
    }

    /**
     * A build with what it is judged by.
     *
     * @param parts the catalogue
     * @param filed the build
     * @param brief the brief that was named, else the one filed with the build, else an open one
     */
    record Subject(Catalogue parts, BuildRecord filed, Brief brief) {}

    /** The catalogue in a folder under its overlays, where nothing else is read. */
    Catalogue catalogue(CatalogueOption option) throws BadInput {
        Known known = known(option);
        refuseFaulty();
        return known.catalogue();
    }

    /** What can be known of the catalogue; what there is to say about it is counted, not shown. */
    Known known(CatalogueOption option) {
        console.progress("reading the catalogue " + option.shown());
        int before = faults.notes().size();
        Known known = CatalogueReader.read(option.folders(), faults);
        int notes = faults.notes().size() - before;
        if (notes > 0 && known.whole()) {
            console.remark(
                    "note: %d to see with rigbrief catalog check%s"
                            .formatted(notes, option.repeated()));
        }
        return known;
    }

    /** What can be known of another catalogue. */
    Known known(Path folder) {
        console.progress("reading the catalogue " + folder);
        return CatalogueReader.read(List.of(folder), faults);
    }

    /** The catalogue in a folder under its overlays, with remarks. */
    Reading reading(CatalogueOption option) throws BadInput {
        console.progress("reading the catalogue " + option.shown());
        return CatalogueReader.readNoted(option.folders());
    }

    /** A brief; empty where it, or the catalogue, has faults. */
    Optional<Brief> brief(String name, Known known) {
        console.progress("reading the brief " + name);
        return name.equals(STANDARD_INPUT)
                ? BriefReader.read(console.in(), name, known, faults)
                : at(name, path -> BriefReader.read(path, known, faults));
    }

    /** A build; empty where it, or the catalogue, has faults. */
    Optional<BuildRecord> build(String name, Known known) {
        console.progress("reading the build " + name);
        return name.equals(STANDARD_INPUT)
                ? BuildReader.read(console.in(), name, known, faults)
                : at(name, path -> BuildReader.read(path, known, faults));
    }

    /** A build out of the bytes of its file; empty where they, or the catalogue, have faults. */
    Optional<BuildRecord> build(String name, byte[] bytes, Known known) {
        console.progress("reading the build " + name);
        return BuildReader.read(new ByteArrayInputStream(bytes), name, known, faults);
    }

    /**
     * A build with what it is judged by; empty where any of the files has faults.
     *
     * @param brief file of the brief; null where none is named
     */
    Optional<Subject> subject(Known known, String build, String brief) {
        Optional<BuildRecord> filed = build(build, known);
        Optional<Brief> named = brief == null ? Optional.empty() : brief(brief, known);
        if (filed.isEmpty() || brief != null && named.isEmpty()) {
            return Optional.empty();
        }
        Catalogue parts = known.catalogue();
        return Optional.of(
                new Subject(
                        parts,
                        filed.get(),
                        named.orElseGet(() -> Rigbrief.of(parts).briefOf(filed.get()))));
    }

    /** The same, where nothing else is read. */
    Subject subject(CatalogueOption option, String build, String brief) throws BadInput {
        Optional<Subject> subject = subject(known(option), build, brief);
        refuseFaulty();
        return subject.orElseThrow();
    }

    /** What is made of the file of a name; empty, with a fault, where no file can have it. */
    <T> Optional<T> at(String name, Function<Path, Optional<T>> reading) {
        try {
            return reading.apply(Path.of(name));
        } catch (InvalidPathException noName) {
            faults.add(
                    new Fault(name, 1, 1, "file", name, "the name of a file", "name another one"));
            return Optional.empty();
        }
    }

    /** Where what is wrong goes. */
    Faults faults() {
        return faults;
    }

    /** Ends the reading when any file has a fault, and tells those of all files. */
    void refuseFaulty() throws BadInput {
        faults.throwIfAny();
    }
}
