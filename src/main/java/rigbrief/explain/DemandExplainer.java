package rigbrief.explain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.assess.Demand.Use;
import rigbrief.assess.FrameLoad;
import rigbrief.assess.FrameModel;
import rigbrief.assess.Workings;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.Workload;
import rigbrief.part.Slot;

/** Explains how much memory, graphics memory and drive space the work of the brief needs. */
final class DemandExplainer implements Explainer {
    private static final String PRACTICE = "common practice";

    @Override
    public List<Topic> topics(Assessment it) {
        return List.of(
                new Topic("demand.memory-gb", "Memory the work needs", () -> memory(it)),
                new Topic(
                        "demand.graphics-gb", "Graphics memory the work needs", () -> graphics(it)),
                new Topic("demand.storage-gb", "Drive space planned", () -> storage(it)));
    }

    private static Explanation memory(Assessment it) {
        Derivation how =
                new Derivation(
                        "demand.memory-gb",
                        "Memory the work needs",
                        "the greediest workload in front + those open beside it + the system",
                        "catalogue, workloads; 4 GB for the system are common practice");
        List<Object> values = new ArrayList<>();
        for (Use use : it.demand().uses()) {
            values.add(memory(how, use.workload(), "in front"));
        }
        String front = values.isEmpty() ? "0" : "max(" + holes(values.size(), ", ") + ")";
        List<String> beside = it.brief().atOnce();
        for (String id : beside) {
            values.add(memory(how, workload(it, id), "open beside"));
        }
        how.given("the system", Workings.SYSTEM_MEMORY_GB, "GB", PRACTICE);
        values.add(Workings.SYSTEM_MEMORY_GB);
        return how.gives(
                it.demand().memoryGb(),
                1,
                "GB",
                front + " + " + holes(beside.size() + 1, " + "),
                values.toArray());
    }

    private static double memory(Derivation how, Workload workload, String where) {
        return how.given(
                workload.id() + ", " + where,
                workload.memoryGb(),
                "GB",
                of(workload) + "memory-gb");
    }

    private static Explanation graphics(Assessment it) {
        Derivation how =
                new Derivation(
                        "demand.graphics-gb",
                        "Graphics memory the work needs",
                        "the most of any workload; of a title (fixed + per megapixel x megapixels"
                                + " drawn) x preset",
                        "catalogue, workloads");
        List<Object> values = new ArrayList<>();
        boolean upscales = upscales(it);
        for (Use use : it.demand().uses()) {
            values.add(
                    use.workload() instanceof FrameRate title
                            ? title(how, it.brief(), use, title, upscales)
                            : how.given(
                                    use.workload().id(),
                                    use.workload().vramGb(),
                                    "GB",
                                    of(use.workload()) + "vram-gb"));
        }
        if (!upscales) {
            how.remark("nothing here upscales, so every pixel shown is drawn");
        }
        return how.gives(
                graphicsGb(it),
                1,
                "GB",
                values.isEmpty() ? "0" : "max(" + holes(values.size(), ", ") + ")",
                values.toArray());
    }

    /** What the work needs of this build's graphics, in GB. */
    static double graphicsGb(Assessment it) {
        return upscales(it) ? it.demand().vramGb() : it.demand().vramWithoutUpscalingGb();
    }

    private static boolean upscales(Assessment it) {
        return it.build().has(Slot.GRAPHICS) && it.build().graphics().upscaling().isPresent();
    }

    private static double title(
            Derivation how, Brief brief, Use use, FrameRate title, boolean upscales) {
        String preset = use.need().settings().preset().orElse(title.referencePreset());
        FrameLoad load =
                FrameLoad.of(
                        title, use.need().settings(), FrameModel.shownMegapixels(brief), upscales);
        String name = title.id();
        how.given(name + ", fixed", title.vram().fixed(), "GB", of(title) + "vram-gb");
        how.given(
                name + ", for a megapixel",
                title.vram().perMegapixel(),
                "GB",
                of(title) + "vram-gb");
        how.given(
                name + ", megapixels drawn", load.megapixels(), "", "brief, display and upscaling");
        double factor = title.presets().get(preset).vram();
        how.given(name + ", preset " + preset, factor, "", of(title) + "presets");
        return how.step(
                "graphics memory of " + name,
                load.vramGb(),
                "GB",
                "({} + {} x {}) x {}",
                title.vram().fixed(),
                title.vram().perMegapixel(),
                load.megapixels(),
                factor);
    }

    private static Explanation storage(Assessment it) {
        Derivation how =
                new Derivation(
                        "demand.storage-gb",
                        "Drive space planned",
                        "what the brief asks, or (installed + growth over the years + the system)"
                                + " / share that may be filled, the more",
                        "catalogue, workloads; 60 GB for the system and 15 % kept free are common"
                                + " practice");
        int years = it.brief().storage().years();
        double asked =
                how.given(
                        "asked",
                        it.brief().storage().atLeastGb(),
                        "GB",
                        "brief, storage, at-least");
        List<Object> values = new ArrayList<>(List.of(asked, Workings.SYSTEM_DISK_GB));
        how.given("the system", Workings.SYSTEM_DISK_GB, "GB", PRACTICE);
        how.given("years", years, "", "brief, storage, years");
        StringBuilder sum = new StringBuilder("max({}, ({}");
        for (Workload workload : installed(it).values()) {
            values.add(how.given(workload.id(), workload.diskGb(), "GB", of(workload) + "disk-gb"));
            sum.append(" + {}");
            if (workload instanceof Capacity capacity && capacity.growthGbPerYear() > 0) {
                values.add(
                        how.given(
                                workload.id() + ", growth a year",
                                capacity.growthGbPerYear(),
                                "GB",
                                of(workload) + "growth-gb-per-year"));
                values.add(years);
                sum.append(" + {} x {}");
            }
        }
        how.given("share that may be filled", Workings.FILLED_SHARE, "", PRACTICE);
        values.add(Workings.FILLED_SHARE);
        return how.gives(
                it.demand().storageGb(),
                1,
                "GB",
                sum.append(") / {})").toString(),
                values.toArray());
    }

    private static Map<String, Workload> installed(Assessment it) {
        Map<String, Workload> installed = new LinkedHashMap<>();
        for (String id : it.brief().storage().roomFor()) {
            installed.put(id, workload(it, id));
        }
        for (Use use : it.demand().uses()) {
            if (use.workload() instanceof Capacity) {
                installed.put(use.workload().id(), use.workload());
            }
        }
        return installed;
    }

    private static Workload workload(Assessment it, String id) {
        Optional<Workload> workload = it.catalogue().workload(id);
        return workload.orElseThrow();
    }

    private static String of(Workload workload) {
        return "catalogue, workload " + workload.id() + ", ";
    }

    private static String holes(int count, String between) {
        return String.join(between, Collections.nCopies(count, "{}"));
    }
}
