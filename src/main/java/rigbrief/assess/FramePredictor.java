package rigbrief.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.assess.Demand.Use;
import rigbrief.assess.Promise.Measure;
import rigbrief.assess.SpeedModel.Rig;
import rigbrief.brief.Brief;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.catalogue.FrameRate.RayStep;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.model.speed.FrameTime;
import rigbrief.model.speed.MemoryOverflow;
import rigbrief.model.speed.Roofline;
import rigbrief.model.speed.SceneMix;

/** Predicts the frame rate of one workload of a brief. */
final class FramePredictor {
    /** Memory rate at which demands are stated, in MT/s. */
    static final double REFERENCE_MTS = 4_800;

    /** Spread of frame times within a scene, on the log scale. Common practice. */
    static final double SCENE_SIGMA = 0.12;

    /** How steeply frames slow down when the card's memory is too small. Common practice. */
    static final double OVERFLOW_PENALTY = 2;

    /** Main memory that the processor's own graphics may borrow, in GB. Common practice. */
    static final double BORROWED_GB = 4;

    /** Share of a processor's power that one busy thread draws. Common practice. */
    static final double ONE_THREAD_USE = 0.35;

    private static final RayStep OFF = new RayStep(0, 1, 1);
    private static final double MILLISECONDS = 1_000;

    private final Brief brief;
    private final Use use;
    private final FrameRate frames;
    private final Factors preset;
    private final RayStep rays;
    private final double vramGb;

    FramePredictor(Brief brief, Use use, FrameRate frames) {
        this.brief = brief;
        this.use = use;
        this.frames = frames;
        this.preset =
                frames.presets()
                        .get(use.need().settings().preset().orElse(frames.referencePreset()));
        this.rays = frames.rays().getOrDefault(use.need().settings().rays().orElse("off"), OFF);
        this.vramGb = DemandModel.vramGb(use, brief);
    }

    Prediction predict(Rig rig) {
        double graphicsS = graphicsS(rig);
        List<Scene> scenes = frames.scenes();
        double[] frameMs = new double[scenes.size()];
        double[] shares = new double[scenes.size()];
        double totalS = 0;
        double processorBusyS = 0;
        double graphicsBusyS = 0;
        int slowest = 0;
        for (int i = 0; i < scenes.size(); i++) {
            Scene scene = scenes.get(i);
            double serialS = processorS(rig, frames.work().serial(), 0) * scene.processor();
            double parallelS = processorS(rig, 0, frames.work().parallel()) * scene.processor();
            double cardS = graphicsS * scene.graphics();
            double frameS = FrameTime.together(cardS, serialS + parallelS, FrameTime.USUAL_OVERLAP);
            frameMs[i] = frameS * MILLISECONDS;
            shares[i] = scene.share();
            slowest = frameMs[i] > frameMs[slowest] ? i : slowest;
            double shownS = Math.max(frameS, 1 / frames.engineCapFps().orElse(Double.MAX_VALUE));
            totalS += scene.share();
            processorBusyS += scene.share() * (serialS * ONE_THREAD_USE + parallelS) / shownS;
            graphicsBusyS += scene.share() * cardS / shownS;
        }
        if (!Double.isFinite(frameMs[slowest])) {
            return prediction(0, 0, 0, 0, scenes.get(slowest).name());
        }
        SceneMix.Rates rates =
                SceneMix.rates(
                        frameMs,
                        shares,
                        frames.engineCapFps().orElse(Double.POSITIVE_INFINITY),
                        SCENE_SIGMA);
        return prediction(
                rates.averagePerS(),
                rates.lowPerS(),
                Math.min(1, processorBusyS / totalS),
                Math.min(1, graphicsBusyS / totalS),
                scenes.get(slowest).name());
    }

    /** The values between parts and rate, for whoever wants to redo them. */
    FrameSteps steps(Rig rig) {
        double megapixels = megapixels(rig);
        FrameWork work = frames.work();
        boolean card = rig.graphics() != null;
        double graphicsFactor = preset.graphics() * rays.graphics();
        double processorFactor = preset.processor() * rays.processor();
        return new FrameSteps(
                megapixels,
                work.gflop().at(megapixels) * graphicsFactor,
                card ? rig.graphics().tflops() : rig.processor().integratedTflops(),
                work.gbyte().at(megapixels) * graphicsFactor,
                card ? rig.graphics().bandwidthGbs() : rig.mts() * 16 / 1_000.0,
                work.rays().at(megapixels) * rays.rays(),
                card ? rig.graphics().rayRate() : 0,
                work.fixedMs(),
                vramGb,
                card ? rig.graphics().vramGb() : BORROWED_GB,
                OVERFLOW_PENALTY,
                work.serial() * processorFactor,
                work.parallel() * processorFactor,
                rig.mts(),
                REFERENCE_MTS,
                work.memoryExponent(),
                frames.scenes(),
                frames.engineCapFps(),
                SCENE_SIGMA);
    }

    /** The card's time for a frame of the typical scene, in s; infinite when it lacks the means. */
    private double graphicsS(Rig rig) {
        FrameWork work = frames.work();
        double megapixels = megapixels(rig);
        double factor = preset.graphics() * rays.graphics();
        double tflops =
                rig.graphics() != null
                        ? rig.graphics().tflops()
                        : rig.processor().integratedTflops();
        double bandwidth =
                rig.graphics() != null ? rig.graphics().bandwidthGbs() : rig.mts() * 16 / 1_000.0;
        double rayRate = rig.graphics() != null ? rig.graphics().rayRate() : 0;
        double roofline =
                Roofline.seconds(
                        work.gflop().at(megapixels) * factor,
                        tflops * 1_000,
                        work.gbyte().at(megapixels) * factor,
                        bandwidth);
        double have = rig.graphics() != null ? rig.graphics().vramGb() : BORROWED_GB;
        return FrameTime.graphicsS(
                        roofline,
                        work.rays().at(megapixels) * rays.rays(),
                        rayRate,
                        work.fixedMs() / MILLISECONDS)
                * MemoryOverflow.factor(vramGb, have, OVERFLOW_PENALTY);
    }

    /** A card without any upscaling draws every pixel itself. */
    private double megapixels(Rig rig) {
        boolean upscales = rig.graphics() != null && rig.graphics().upscaling().isPresent();
        return upscales
                ? SpeedModel.internalMegapixels(use, frames, brief)
                : SpeedModel.shownMegapixels(brief);
    }

    private double processorS(Rig rig, double serial, double parallel) {
        double factor = preset.processor() * rays.processor();
        double memory =
                Math.pow(REFERENCE_MTS / Math.max(1, rig.mts()), frames.work().memoryExponent());
        return FrameTime.processorS(
                        serial * factor,
                        rig.processor().rateSingle(),
                        parallel * factor,
                        rig.processor().rateAll())
                * memory;
    }

    private Prediction prediction(
            double average, double low, double processorUse, double graphicsUse, String slowest) {
        List<Promise> promises = new ArrayList<>(4);
        addPromises(promises, use.need().must(), true, average, low);
        addPromises(promises, use.need().wish(), false, average, low);
        return new Prediction(
                use.need(),
                frames,
                average,
                low,
                0,
                processorUse,
                graphicsUse,
                vramGb,
                slowest,
                promises);
    }

    private void addPromises(
            List<Promise> promises,
            Optional<Target> target,
            boolean must,
            double average,
            double low) {
        if (target.isPresent()) {
            add(promises, Measure.AVERAGE, must, average, target.get().averageFps());
            add(promises, Measure.LOW, must, low, target.get().lowFps());
        }
    }

    private void add(
            List<Promise> promises,
            Measure measure,
            boolean must,
            double middle,
            OptionalDouble required) {
        if (required.isPresent()) {
            promises.add(
                    PromiseMaker.of(brief, use, measure, must, middle, required.getAsDouble()));
        }
    }
}
