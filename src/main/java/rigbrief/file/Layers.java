package rigbrief.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rigbrief.catalogue.PartRates;
import rigbrief.catalogue.Workload;
import rigbrief.diagnostic.Faults;
import rigbrief.part.Part;

/** Parts and workloads of a catalogue under the overlays laid over it so far. */
final class Layers {
    private final Faults faults;
    private final Map<String, Workload> workloads = new LinkedHashMap<>();
    private final Map<String, String> digestByName = new TreeMap<>();
    private List<Part> parts;

    Layers(List<Part> parts, List<Workload> workloads, Faults faults) {
        this.parts = parts;
        this.faults = faults;
        workloads.forEach(it -> this.workloads.put(it.id(), it));
    }

    /** Lays an overlay over what is there. */
    void add(OverlayFolder overlay, String name) {
        overlay.check();
        List<String> known = List.copyOf(workloads.keySet());
        overlay.source(CatalogueReader.WORKLOADS)
                .ifPresent(
                        source -> {
                            note(name, CatalogueReader.WORKLOADS, source);
                            overlay.keys(source)
                                    .map(root -> WorkloadFile.read(root, known))
                                    .orElse(List.of())
                                    .forEach(it -> workloads.replace(it.id(), it));
                        });
        overlay.source(RatesFile.NAME)
                .ifPresent(
                        source -> {
                            note(name, RatesFile.NAME, source);
                            rate(new RatesFile(parts, faults).read(source));
                        });
    }

    private void note(String overlay, String file, SourceText source) {
        digestByName.put(overlay + "/" + file, source.sha256());
    }

    private void rate(Map<String, PartRates> ratesByPart) {
        List<Part> rated = new ArrayList<>(parts.size());
        for (Part part : parts) {
            PartRates rates = ratesByPart.get(part.id());
            rated.add(rates == null ? part : rates.applyTo(part));
        }
        parts = rated;
    }

    /** The parts, in the catalogue's order. */
    List<Part> parts() {
        return parts;
    }

    /** The workloads, in the catalogue's order. */
    List<Workload> workloads() {
        return List.copyOf(workloads.values());
    }

    /** Digests of the overlays' files. */
    Map<String, String> digestByName() {
        return digestByName;
    }
}
