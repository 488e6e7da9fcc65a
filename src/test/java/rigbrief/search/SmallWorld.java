package rigbrief.search;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Wishes;
import rigbrief.brief.WorkloadNeed;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.part.Board;
import rigbrief.part.Kind;
import rigbrief.part.Memory;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.quantity.Money;

/**
 * Small catalogues and briefs drawn by a seed from the sample catalogue and the scenarios: a few
 * parts of each kind, so that every build can be tried.
 */
public final class SmallWorld {
    private static final Path SAMPLE = Path.of("catalog-sample");
    private static final List<String> SCENARIOS =
            List.of(
                    "potter",
                    "writer",
                    "editor",
                    "competitor",
                    "living-room",
                    "cad",
                    "tight-600",
                    "streamer");
    private static Catalogue sample;

    private SmallWorld() {}

    /** The whole sample. */
    public static synchronized Catalogue sample() {
        try {
            sample = sample == null ? CatalogueReader.read(SAMPLE) : sample;
            return sample;
        } catch (rigbrief.diagnostic.BadInput bad) {
            throw new IllegalStateException(bad);
        }
    }

    /** A scenario's brief. */
    public static Brief scenario(String name, Catalogue catalogue) {
        try {
            return BriefReader.read(Path.of("scenarios", name + ".yaml"), catalogue);
        } catch (rigbrief.diagnostic.BadInput bad) {
            throw new IllegalStateException(bad);
        }
    }

    /** A few parts of each kind that have a chance to fit. */
    public static Catalogue catalogue(Random random) {
        Catalogue all = sample();
        List<Part> parts = new ArrayList<>();
        List<Part> processors = offered(all, Kind.PROCESSOR);
        Processor lead = (Processor) processors.get(random.nextInt(processors.size()));
        parts.add(lead);
        parts.addAll(
                some(
                        processors.stream()
                                .filter(
                                        p ->
                                                ((Processor) p).socket().equals(lead.socket())
                                                        && p != lead)
                                .toList(),
                        1 + random.nextInt(2),
                        random));
        List<Part> boards =
                some(
                        offered(all, Kind.BOARD).stream()
                                .filter(b -> ((Board) b).socket().equals(lead.socket()))
                                .toList(),
                        2 + random.nextInt(2),
                        random);
        parts.addAll(boards);
        parts.addAll(
                some(
                        offered(all, Kind.MEMORY).stream()
                                .filter(
                                        m ->
                                                boards.stream()
                                                        .anyMatch(
                                                                b ->
                                                                        ((Board) b).memoryType()
                                                                                == ((Memory) m)
                                                                                        .type()))
                                .toList(),
                        2,
                        random));
        parts.addAll(some(offered(all, Kind.GRAPHICS), 2, random));
        parts.addAll(some(offered(all, Kind.DRIVE), 2, random));
        parts.addAll(some(offered(all, Kind.SUPPLY), 2 + random.nextInt(2), random));
        parts.addAll(some(offered(all, Kind.COOLER), 2, random));
        parts.addAll(some(offered(all, Kind.CASE), 2 + random.nextInt(2), random));
        for (Kind kind : List.of(Kind.FAN, Kind.WIRELESS, Kind.BRACE, Kind.CABLES, Kind.SYSTEM)) {
            parts.addAll(some(offered(all, kind), 1, random));
        }
        parts.addAll(some(offered(all, Kind.DISPLAY), 2, random));
        List<Offer> offers = new ArrayList<>();
        for (Part part : parts) {
            offers.addAll(all.offers(part.id()));
        }
        return new Catalogue(
                "small",
                all.currency(),
                all.asOf(),
                "sha256:none",
                all.reference(),
                all.suppliers(),
                parts,
                offers,
                all.workloads());
    }

    /** A scenario's brief with other money, other weights, and some musts softened. */
    public static Brief brief(Random random, Catalogue catalogue) {
        String name = SCENARIOS.get(random.nextInt(SCENARIOS.size()));
        Brief brief = scenario(name, sample());
        Map<String, Integer> weights = new LinkedHashMap<>();
        for (Goal goal : Goals.ALL) {
            weights.put(goal.info().id(), random.nextInt(5));
        }
        weights.put("workloads", 1 + random.nextInt(4));
        BriefDraft draft =
                new BriefDraft(brief)
                        .ceiling(
                                Money.ofMinor(
                                        brief.ceiling().minorUnits()
                                                * (90 + random.nextInt(120))
                                                / 100,
                                        brief.currency()))
                        .wishes(new Wishes(weights));
        if (random.nextInt(3) > 0) {
            draft.workloads(withoutMusts(brief.workloads()));
            draft.noise(
                    new Brief.Noise(
                            OptionalInt.empty(),
                            brief.noise().wishDba(),
                            brief.noise().seatDistanceM()));
        }
        if (random.nextInt(3) > 0) {
            draft.storage(new Brief.StorageNeed(0, List.of(), 3));
            draft.memory(new Brief.MemoryNeed(0, false));
            draft.size(
                    new Brief.SizeNeed(
                            OptionalInt.empty(),
                            java.util.Optional.empty(),
                            java.util.Optional.empty(),
                            java.util.Optional.empty(),
                            java.util.Optional.empty()));
        }
        return draft.toBrief();
    }

    private static List<WorkloadNeed> withoutMusts(List<WorkloadNeed> needs) {
        return needs.stream()
                .map(
                        need ->
                                new WorkloadNeed(
                                        need.use(),
                                        java.util.Optional.empty(),
                                        need.wish(),
                                        need.weight(),
                                        need.settings()))
                .toList();
    }

    private static List<Part> offered(Catalogue all, Kind kind) {
        return all.parts(kind).stream().filter(p -> !all.offers(p.id()).isEmpty()).toList();
    }

    private static List<Part> some(List<Part> from, int count, Random random) {
        List<Part> shuffled = new ArrayList<>(from);
        Collections.shuffle(shuffled, random);
        return shuffled.subList(0, Math.min(count, shuffled.size()));
    }
}
