package rigbrief.explain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.FrameSteps;
import rigbrief.assess.Prediction;
import rigbrief.assess.Workings;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.model.speed.FrameTime;
import rigbrief.model.speed.MemoryOverflow;
import rigbrief.model.speed.NormalDistribution;
import rigbrief.model.speed.PredictionRange;
import rigbrief.model.speed.SceneMix;
import rigbrief.part.Processor;
import rigbrief.part.Slot;

/** How the two frame rates of one workload came about. */
final class FrameExplanation {
    private static final String SOURCE =
            "roofline (published) for the card; percentiles counted in frames (published"
                    + " methodology); the p-norm between card and processor and the lognormal"
                    + " spread are common practice";

    private final Assessment it;
    private final Prediction prediction;
    private final String name;
    private final FrameSteps steps;
    private double cardTimeMs;

    FrameExplanation(Assessment it, Prediction prediction, String name) {
        this.it = it;
        this.prediction = prediction;
        this.name = name;
        this.steps = Workings.frames(it, prediction);
    }

    FrameSteps steps() {
        return steps;
    }

    Explanation average() {
        Derivation how =
                derivation(
                        ".average",
                        ", average",
                        "frames of all scenes over their time; a scene's frame time is (card^p +"
                                + " processor^p)^(1/p), p the title's overlap");
        if (prediction.averageFps() == 0) {
            return cannot(how);
        }
        List<Object> values = new ArrayList<>();
        for (Timed scene : scenes(how)) {
            values.add(scene.share());
            values.add(shownMs(how, scene));
        }
        int count = values.size() / 2;
        for (Scene scene : steps.scenes()) {
            values.add(scene.share());
        }
        return how.gives(
                prediction.averageFps(),
                1,
                "fps",
                "1000 x (" + repeated("{} / {}", count) + ") / (" + repeated("{}", count) + ")",
                values.toArray());
    }

    Explanation low() {
        Derivation how =
                derivation(
                        ".low",
                        ", 1 % low",
                        "1000 / T, T the frame time in ms which 1 % of all frames exceed; within"
                                + " a scene the logarithm of frame times is spread normally");
        if (prediction.lowFps() == 0) {
            return cannot(how);
        }
        List<Timed> scenes = scenes(how);
        double sigma =
                how.given(
                        "spread within a scene",
                        steps.sceneSigma(),
                        "",
                        "catalogue, workload " + prediction.workload().id() + ", shape");
        double cap = steps.capFps().orElse(Double.POSITIVE_INFINITY);
        // A frame as short as the cap allows may come out a last binary digit beside it.
        if (prediction.lowFps() >= cap * (1 - 1e-9)) {
            how.remark("even the slowest frames are faster than the engine draws");
            return how.gives(prediction.lowFps(), 1, "fps", "{}", cap);
        }
        double slowest = 1_000 / prediction.lowFps();
        if (sigma < SceneMix.NO_SPREAD) {
            how.remark("without a spread T is the frame time of the scene that 1 % lies beyond");
            how.given("T", slowest, "ms", "one of the scenes' frame times");
            return how.gives(prediction.lowFps(), 1, "fps", "1000 / {}", slowest);
        }
        how.given("T", slowest, "ms", "found by trial: the next step gives 0.01");
        List<Object> values = new ArrayList<>();
        for (Timed scene : scenes) {
            values.addAll(List.of(scene.share(), shownMs(how, scene)));
            values.addAll(List.of(scene.ms(), sigma, slowest, sigma));
        }
        int count = scenes.size();
        for (int i = 0; i < count; i++) {
            values.add(values.get(6 * i));
            values.add(values.get(6 * i + 1));
        }
        how.step(
                "share of frames longer than T",
                0.01,
                "",
                "("
                        + repeated("{} / {} x normal((ln({}) - {}^2 / 2 - ln({})) / {})", count)
                        + ") / ("
                        + repeated("{} / {}", count)
                        + ")",
                values.toArray());
        return how.gives(prediction.lowFps(), 1, "fps", "1000 / {}", slowest);
    }

    Derivation derivation(String measure, String words, String formula) {
        Derivation how =
                new Derivation(
                        name + measure, prediction.workload().title() + words, formula, SOURCE);
        how.remark(PredictionRange.SIGMA.remark(prediction.workload().fitted().sigma()));
        how.remark(MemoryOverflow.NEEDED_SHARE.remark(steps.vramGb() / steps.vramThereGb()));
        return how;
    }

    private static Explanation cannot(Derivation how) {
        how.remark("the machine has no means to draw this workload at all");
        return how.gives(0, 1, "fps", "0");
    }

    /** The card's time for a frame of a typical scene in ms, once the scenes were worked out. */
    double cardTimeMs() {
        return cardTimeMs;
    }

    /** A scene with its mean frame time before any cap. */
    record Timed(String name, double share, double ms) {}

    List<Timed> scenes(Derivation how) {
        double cardMs = cardMs(how);
        cardTimeMs = cardMs;
        double processorMs = processorMs(how);
        List<Timed> scenes = new ArrayList<>();
        double overlap =
                how.given(
                        "overlap of card and processor",
                        steps.overlap(),
                        "",
                        "catalogue, workload " + prediction.workload().id() + ", shape");
        String from = "catalogue, workload " + prediction.workload().id() + ", scenes";
        for (Scene scene : steps.scenes()) {
            how.fact(
                    "scene " + scene.name() + ": share, card, processor",
                    "%s, %s, %s"
                            .formatted(
                                    Derivation.print(scene.share()),
                                    Derivation.print(scene.graphics()),
                                    Derivation.print(scene.processor())),
                    "",
                    from);
            double ms =
                    FrameTime.together(
                            cardMs * scene.graphics(), processorMs * scene.processor(), overlap);
            frame(how, scene, ms, cardMs, processorMs);
            scenes.add(new Timed(scene.name(), scene.share(), ms));
        }
        return scenes;
    }

    private void frame(Derivation how, Scene scene, double ms, double cardMs, double processorMs) {
        String name = "frame in " + scene.name();
        double p = steps.overlap();
        if (p >= FrameTime.OVERLAP.high()) {
            how.remark("card and processor overlap wholly: only the longer time counts");
            how.step(
                    name,
                    ms,
                    "ms",
                    "max({} x {}, {} x {})",
                    cardMs,
                    scene.graphics(),
                    processorMs,
                    scene.processor());
            return;
        }
        how.step(
                name,
                ms,
                "ms",
                "(({} x {})^{} + ({} x {})^{})^(1/{})",
                cardMs,
                scene.graphics(),
                p,
                processorMs,
                scene.processor(),
                p,
                p);
    }

    private double cardMs(Derivation how) {
        String work = "catalogue, workload " + prediction.workload().id() + ", at these settings";
        boolean card = it.build().has(Slot.GRAPHICS);
        String means = card ? it.build().graphics().id() : it.build().processor().id();
        how.given("pixels drawn", steps.megapixels(), "million", "brief, display and upscaling");
        how.given("arithmetic of a frame", steps.gflop(), "GFLOP", work);
        how.given(
                "rate",
                steps.tflops(),
                "TFLOP/s",
                means + (card ? ", tflops" : ", integrated_graphics_tflops"));
        how.given("memory traffic of a frame", steps.gbyte(), "GB", work);
        how.given(
                "bandwidth",
                steps.bandwidthGbs(),
                "GB/s",
                card ? means + ", bandwidth_gbs" : "memory rate x 16 bytes");
        how.given("time no card shortens", steps.fixedMs(), "ms", work);
        how.given("graphics memory wanted", steps.vramGb(), "GB", work);
        how.given(
                "graphics memory there",
                steps.vramThereGb(),
                "GB",
                card ? means + ", vram_gb" : "borrowed, common practice");
        double raysMs = 0;
        if (steps.rays() > 0) {
            how.given("ray work of a frame", steps.rays(), "", work);
            how.given("ray rate", steps.rayRate(), "1/s", means + ", ray_rate");
            raysMs =
                    how.step(
                            "rays",
                            steps.rays() / steps.rayRate() * 1_000,
                            "ms",
                            "{} / {} x 1000",
                            steps.rays(),
                            steps.rayRate());
        }
        double rooflineMs =
                how.step(
                        "arithmetic or traffic, the longer",
                        Math.max(
                                steps.gflop() / steps.tflops(),
                                steps.gbyte() / steps.bandwidthGbs() * 1_000),
                        "ms",
                        "max({} / {}, {} / {} x 1000)",
                        steps.gflop(),
                        steps.tflops(),
                        steps.gbyte(),
                        steps.bandwidthGbs());
        double overflow =
                how.step(
                        "graphics memory overflow",
                        MemoryOverflow.factor(
                                steps.vramGb(), steps.vramThereGb(), steps.overflowPenalty()),
                        "",
                        "max(1, 1 + {} x ({} / {} - 1))",
                        steps.overflowPenalty(),
                        steps.vramGb(),
                        steps.vramThereGb());
        return how.step(
                "card, typical scene",
                (rooflineMs + raysMs + steps.fixedMs()) * overflow,
                "ms",
                "({} + {} + {}) x {}",
                rooflineMs,
                raysMs,
                steps.fixedMs(),
                overflow);
    }

    private double processorMs(Derivation how) {
        Processor processor = it.build().processor();
        String work = "catalogue, workload " + prediction.workload().id() + ", at these settings";
        how.given("work on one thread", steps.serial(), "", work);
        how.given("work on all threads", steps.parallel(), "", work);
        how.given(
                "rate of one thread",
                processor.rateSingle(),
                "1/s",
                processor.id() + ", rate_single");
        how.given("rate of all threads", processor.rateAll(), "1/s", processor.id() + ", rate_all");
        how.given("memory rate", steps.mts(), "MT/s", "memory.mts; half with a single module");
        how.given("memory exponent", steps.memoryExponent(), "", work);
        double ms =
                (steps.serial() / processor.rateSingle() + steps.parallel() / processor.rateAll())
                        * 1_000
                        * Math.pow(
                                steps.referenceMts() / Math.max(1, steps.mts()),
                                steps.memoryExponent());
        return how.step(
                "processor, typical scene",
                ms,
                "ms",
                "({} / {} + {} / {}) x 1000 x ({} / {})^{}",
                steps.serial(),
                processor.rateSingle(),
                steps.parallel(),
                processor.rateAll(),
                steps.referenceMts(),
                steps.mts(),
                steps.memoryExponent());
    }

    /** The mean frame time with frames shorter than the engine's cap allows lifted to it. */
    private double shownMs(Derivation how, Timed scene) {
        if (steps.capFps().isEmpty()) {
            return scene.ms();
        }
        double capMs = 1_000 / steps.capFps().getAsDouble();
        double sigma = steps.sceneSigma();
        double z = (Math.log(capMs) - Math.log(scene.ms()) + sigma * sigma / 2) / sigma;
        how.step(
                "z of the engine's cap in " + scene.name(),
                z,
                "",
                "(ln({}) - ln({}) + {}^2 / 2) / {}",
                capMs,
                scene.ms(),
                sigma,
                sigma);
        return how.step(
                "frame shown in " + scene.name(),
                capMs * NormalDistribution.atMost(z)
                        + scene.ms() * NormalDistribution.atMost(sigma - z),
                "ms",
                "{} x normal({}) + {} x normal({} - {})",
                capMs,
                z,
                scene.ms(),
                sigma,
                z);
    }

    private static String repeated(String template, int times) {
        return String.join(" + ", Collections.nCopies(times, template));
    }
}
