package rigbrief.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Workload;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Tree;
import rigbrief.part.Kind;

/** Reads a catalogue folder, and the overlays that are laid over it. */
public final class CatalogueReader {
    static final String WORKLOADS = "workloads.yaml";
    private static final String HEAD = "catalog.yaml";

    private final Path folder;
    private final List<Path> overlays;
    private final Faults faults = new Faults();
    private final Map<String, String> digestByName = new TreeMap<>();

    private CatalogueReader(Path folder, List<Path> overlays) {
        this.folder = folder;
        this.overlays = overlays;
    }

    /**
     * A catalogue with the remarks on its files that do not refuse it.
     *
     * @param catalogue the catalogue
     * @param notes unknown columns, in the order in which they were met
     */
    public record Reading(Catalogue catalogue, List<Fault> notes) {
        /** Copies the notes. */
        public Reading {
            notes = List.copyOf(notes);
        }
    }

    /**
     * Reads all files of a folder.
     *
     * @throws BadInput with all faults of all files
     */
    public static Catalogue read(Path folder) throws BadInput {
        return readNoted(folder).catalogue();
    }

    /**
     * Reads all files of a folder, and keeps the remarks.
     *
     * @throws BadInput with all faults of all files
     */
    public static Reading readNoted(Path folder) throws BadInput {
        return readNoted(List.of(folder));
    }

    /**
     * Reads all files of a folder, then those of the overlays, each in place of what lies below it.
     *
     * <p>An overlay holds {@code workloads.yaml} with workloads in place of those of the same id,
     * {@code rates.csv} with rates of parts in place of those of their sheets, or both. The digest
     * covers the files of all folders, in their order.
     *
     * @param folders the catalogue, then overlays from the lowest to the topmost
     * @throws BadInput with all faults of all files
     */
    public static Reading readNoted(List<Path> folders) throws BadInput {
        return new CatalogueReader(folders.get(0), folders.subList(1, folders.size())).readAll();
    }

    /**
     * Reads all files of all folders for somebody who has other files to read too.
     *
     * @param folders the catalogue, then overlays from the lowest to the topmost
     * @param faults where their faults and remarks go
     */
    public static Known read(List<Path> folders, Faults faults) {
        try {
            Reading reading = readNoted(folders);
            reading.notes().forEach(faults::note);
            return Known.of(reading.catalogue());
        } catch (BadInput bad) {
            faults.addAll(bad);
            return new Known(headAlone(folders.get(0)), false);
        }
    }

    /** So that amounts elsewhere are read in the right currency, if that can be told. */
    private static Catalogue headAlone(Path folder) {
        CatalogueReader reader = new CatalogueReader(folder, List.of());
        CatalogueHead head =
                reader.keys(HEAD).map(CatalogueHead::read).orElseGet(CatalogueHead::unreadable);
        Layers nothing = new Layers(List.of(), List.of(), reader.faults);
        return reader.catalogue(head, nothing, List.of());
    }

    private Reading readAll() throws BadInput {
        if (!Files.isDirectory(folder)) {
            String found = Files.exists(folder) ? "a file" : "";
            String advice = "name the folder of the catalogue";
            throw new BadInput(
                    new Fault(folder.toString(), 1, 1, "catalogue", found, "a folder", advice));
        }
        CatalogueHead head =
                keys(HEAD).map(CatalogueHead::read).orElseGet(CatalogueHead::unreadable);
        KindFile parts = parts();
        List<Offer> offers =
                source(OfferFile.NAME)
                        .map(source -> new OfferFile(head, parts, faults).read(source))
                        .orElse(List.of());
        List<Workload> workloads = keys(WORKLOADS).map(WorkloadFile::read).orElse(List.of());
        Layers layers = new Layers(parts.parts(), workloads, faults);
        for (int i = 0; i < overlays.size(); i++) {
            layers.add(new OverlayFolder(overlays.get(i), faults), "overlay-" + (i + 1));
        }
        digestByName.putAll(layers.digestByName());
        faults.throwIfAny();
        return new Reading(catalogue(head, layers, offers), faults.notes());
    }

    private KindFile parts() {
        KindFile parts = new KindFile(faults);
        for (Kind kind : Kind.values()) {
            if (Files.exists(folder.resolve(kind.fileName()))) {
                source(kind.fileName()).ifPresent(source -> parts.read(kind, source));
            }
        }
        return parts;
    }

    private Catalogue catalogue(CatalogueHead head, Layers layers, List<Offer> offers) {
        return new Catalogue(
                head.name(),
                head.currencyOrStandIn(),
                head.asOf(),
                digest(),
                head.reference(),
                head.suppliers(),
                layers.parts(),
                offers,
                layers.workloads());
    }

    /**
     * The digest of the list of the files' digests, in name order, each line as the usual checksum
     * programs print it: digest, two blanks, name.
     */
    private String digest() {
        List<String> lines = new ArrayList<>();
        digestByName.forEach((name, digest) -> lines.add(digest + "  " + name + "\n"));
        return "sha256:" + Sha256.of(String.join("", lines).getBytes(StandardCharsets.UTF_8));
    }

    private Optional<SourceText> source(String name) {
        Optional<SourceText> source = SourceText.readRegular(folder.resolve(name), faults);
        source.ifPresent(read -> digestByName.put(name, read.sha256()));
        return source;
    }

    private Optional<Keys> keys(String name) {
        return source(name)
                .flatMap(
                        source ->
                                Tree.read(source.file(), source.text(), faults)
                                        .map(root -> Keys.of(source.file(), root, faults)));
    }
}
