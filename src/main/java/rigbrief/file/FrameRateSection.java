package rigbrief.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.catalogue.FrameRate.PerPixel;
import rigbrief.catalogue.FrameRate.RayStep;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.catalogue.FrameRate.Setting;
import rigbrief.catalogue.FrameRate.Shape;
import rigbrief.catalogue.FrameRate.Step;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Text;
import rigbrief.part.Cells;

/** Reads one frame-rate workload of {@code workloads.yaml}. */
final class FrameRateSection {
    private static final long WHOLE_MILLIONTHS = 1_000_000;
    private static final double MOST_FACTOR = 20;

    private FrameRateSection() {}

    static FrameRate read(String id, String title, Keys keys) {
        double memoryGb = WorkloadFile.memoryGb(keys);
        PerPixel vram = perPixel(keys.required("vram-gb"), 256);
        double diskGb = WorkloadFile.diskGb(keys);
        Map<String, Factors> presets = presets(keys);
        return new FrameRate(
                id,
                title,
                memoryGb,
                vram,
                diskGb,
                WorkloadFile.fitted(keys.required("fitted")),
                engineCap(keys),
                work(keys.required("work")),
                referencePreset(keys, presets),
                presets,
                rays(keys),
                upscaling(keys),
                scenes(keys),
                settings(keys),
                shape(keys));
    }

    private static OptionalDouble engineCap(Keys keys) {
        return keys.has("engine-cap")
                ? OptionalDouble.of(keys.cells().number("engine-cap", 10, 2_000))
                : OptionalDouble.empty();
    }

    private static PerPixel perPixel(Keys keys, double most) {
        PerPixel amount =
                new PerPixel(
                        keys.cells().numberOr("fixed", 0, most, 0),
                        keys.cells().numberOr("per-megapixel", 0, most, 0));
        keys.finish();
        return amount;
    }

    private static PerPixel optionalPerPixel(Keys keys, String key) {
        return keys.keys(key).map(inner -> perPixel(inner, 1e6)).orElse(new PerPixel(0, 0));
    }

    private static FrameWork work(Keys keys) {
        Cells cells = keys.cells();
        FrameWork work =
                new FrameWork(
                        cells.numberOr("fixed-ms", 0, 1_000, 0),
                        perPixel(keys.required("gflop"), 1e6),
                        perPixel(keys.required("gbyte"), 1e6),
                        optionalPerPixel(keys, "rays"),
                        cells.number("serial", 0, 1e6),
                        cells.number("parallel", 0, 1e6),
                        cells.numberOr("memory-exponent", 0, 2, 0));
        keys.finish();
        return work;
    }

    private static Shape shape(Keys keys) {
        return keys.keys("shape").map(FrameRateSection::shapeOf).orElse(Shape.USUAL);
    }

    private static Shape shapeOf(Keys keys) {
        Cells cells = keys.cells();
        Shape usual = Shape.USUAL;
        Shape shape =
                new Shape(
                        cells.numberOr("overlap", 1, 40, usual.overlap()),
                        cells.numberOr("spread", 0, 0.5, usual.spread()),
                        cells.numberOr("overflow-penalty", 0, 20, usual.overflowPenalty()));
        keys.finish();
        return shape;
    }

    private static Map<String, Factors> presets(Keys keys) {
        Map<String, Factors> presets = new LinkedHashMap<>();
        keys.named("presets")
                .forEach(
                        (name, inner) -> {
                            Cells cells = inner.cells();
                            presets.put(
                                    name,
                                    new Factors(
                                            factor(cells, "graphics"),
                                            factor(cells, "processor"),
                                            factor(cells, "vram")));
                            inner.finish();
                        });
        if (!keys.has("presets")) {
            keys.fault("presets", "at least the reference preset", "write its factors, all 1");
        }
        return presets;
    }

    private static double factor(Cells cells, String key) {
        return cells.number(key, 0, MOST_FACTOR);
    }

    private static String referencePreset(Keys keys, Map<String, Factors> presets) {
        Optional<Text> text =
                keys.oneText("reference-preset", "the name of a preset", "write it in");
        text.ifPresent(it -> checkReference(it, presets));
        return text.map(Text::text).orElse("");
    }

    private static void checkReference(Text name, Map<String, Factors> presets) {
        Factors factors = presets.get(name.text());
        if (factors == null && !presets.isEmpty()) {
            name.unknown("one of the presets", List.copyOf(presets.keySet()));
        } else if (factors != null && !factors.equals(new Factors(1, 1, 1))) {
            name.fault(
                    "a preset whose factors are all 1",
                    "divide the factors of all presets by those of this one");
        }
    }

    private static Map<String, RayStep> rays(Keys keys) {
        Map<String, RayStep> rays = new LinkedHashMap<>();
        rays.put("off", new RayStep(0, 1, 1));
        keys.named("rays")
                .forEach(
                        (name, inner) -> {
                            Cells cells = inner.cells();
                            rays.put(
                                    name,
                                    new RayStep(
                                            factor(cells, "rays"),
                                            factor(cells, "graphics"),
                                            factor(cells, "processor")));
                            inner.finish();
                        });
        return rays;
    }

    private static Map<String, Double> upscaling(Keys keys) {
        Map<String, Double> ratios = new LinkedHashMap<>();
        keys.keys("upscaling")
                .ifPresent(
                        inner ->
                                inner.names()
                                        .forEach(
                                                name ->
                                                        ratios.put(
                                                                name,
                                                                inner.cells()
                                                                        .number(name, 0.1, 1))));
        return ratios;
    }

    private static List<Scene> scenes(Keys keys) {
        List<Scene> scenes = new ArrayList<>();
        long millionths = 0;
        for (Keys inner : keys.listOfKeys("scenes")) {
            Cells cells = inner.cells();
            Scene scene =
                    new Scene(
                            cells.text("name"),
                            cells.number("share", 0, 1),
                            factor(cells, "graphics"),
                            factor(cells, "processor"));
            scenes.add(scene);
            millionths += Math.round(scene.share() * WHOLE_MILLIONTHS);
            inner.finish();
        }
        // Each share may have been rounded to a millionth.
        if (Math.abs(millionths - WHOLE_MILLIONTHS) > scenes.size()) {
            keys.fault("scenes", "shares that make 1 together", "correct the shares");
        }
        return scenes;
    }

    private static List<Setting> settings(Keys keys) {
        List<Setting> settings = new ArrayList<>();
        for (Keys inner : keys.listOfKeys("settings")) {
            settings.add(
                    new Setting(
                            inner.cells().text("name"),
                            inner.cells().whole("visible", 0, 3),
                            steps(inner),
                            inner.cells().yes("stands-in-for-rays")));
            inner.finish();
        }
        return settings;
    }

    private static List<Step> steps(Keys keys) {
        List<Step> steps = new ArrayList<>();
        for (Keys inner : keys.listOfKeys("steps")) {
            Cells cells = inner.cells();
            steps.add(
                    new Step(
                            cells.text("name"),
                            cells.number("graphics", 0, 1),
                            cells.number("processor", 0, 1)));
            inner.finish();
        }
        if (!keys.has("steps")) {
            keys.fault("steps", "at least one step", "write {name, graphics, processor} for each");
        }
        return steps;
    }
}
