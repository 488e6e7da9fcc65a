package rigbrief.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.assess.Demand.Use;
import rigbrief.assess.FrameModel.SceneTime;
import rigbrief.assess.Promise.Measure;
import rigbrief.assess.SpeedModel.Rig;
import rigbrief.brief.Brief;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.model.speed.SceneMix;

/** Predicts the frame rate of one workload of a brief. */
final class FramePredictor {
    /** Memory rate at which demands are stated, in MT/s. */
    static final double REFERENCE_MTS = 4_800;

    /** Main memory that the processor's own graphics may borrow, in GB. Common practice. */
    static final double BORROWED_GB = 4;

    /** Share of a processor's power that one busy thread draws. Common practice. */
    static final double ONE_THREAD_USE = 0.35;

    private final Brief brief;
    private final Use use;
    private final FrameRate frames;

    FramePredictor(Brief brief, Use use, FrameRate frames) {
        this.brief = brief;
        this.use = use;
        this.frames = frames;
    }

    Prediction predict(MachineRates machine) {
        FrameLoad load = load(machine);
        return predict(FrameModel.scenes(frames, load, machine), load.vramGb());
    }

    private FrameLoad load(MachineRates machine) {
        return FrameLoad.of(
                frames,
                use.need().settings(),
                SpeedModel.shownMegapixels(brief),
                machine.picture().upscales());
    }

    private Prediction predict(List<SceneTime> scenes, double vramGb) {
        double totalS = 0;
        double processorBusyS = 0;
        double graphicsBusyS = 0;
        SceneTime slowest = scenes.get(0);
        for (SceneTime it : scenes) {
            slowest = it.frameS() > slowest.frameS() ? it : slowest;
            double shownS =
                    Math.max(it.frameS(), 1 / frames.engineCapFps().orElse(Double.MAX_VALUE));
            double share = it.scene().share();
            totalS += share;
            processorBusyS += share * (it.serialS() * ONE_THREAD_USE + it.parallelS()) / shownS;
            graphicsBusyS += share * it.cardS() / shownS;
        }
        if (!Double.isFinite(slowest.frameS())) {
            return prediction(0, 0, 0, 0, vramGb, slowest.scene().name());
        }
        SceneMix.Rates rates =
                FrameModel.rates(
                        scenes,
                        frames.engineCapFps().orElse(Double.POSITIVE_INFINITY),
                        frames.shape().spread());
        return prediction(
                rates.averagePerS(),
                rates.lowPerS(),
                Math.min(1, processorBusyS / totalS),
                Math.min(1, graphicsBusyS / totalS),
                vramGb,
                slowest.scene().name());
    }

    /** The values between parts and rate, for whoever wants to redo them. */
    FrameSteps steps(Rig rig) {
        MachineRates machine = MachineRates.of(rig);
        FrameLoad load = load(machine);
        FrameWork work = frames.work();
        return new FrameSteps(
                load.megapixels(),
                work.gflop().at(load.megapixels()) * load.graphics(),
                machine.picture().tflops(),
                work.gbyte().at(load.megapixels()) * load.graphics(),
                machine.picture().bandwidthGbs(),
                work.rays().at(load.megapixels()) * load.rays(),
                machine.picture().rayRate(),
                work.fixedMs(),
                load.vramGb(),
                machine.picture().vramGb(),
                frames.shape().overflowPenalty(),
                work.serial() * load.processor(),
                work.parallel() * load.processor(),
                machine.mts(),
                REFERENCE_MTS,
                work.memoryExponent(),
                frames.scenes(),
                frames.engineCapFps(),
                frames.shape().overlap(),
                frames.shape().spread());
    }

    private Prediction prediction(
            double average,
            double low,
            double processorUse,
            double graphicsUse,
            double vramGb,
            String slowest) {
        List<Promise> promises = new ArrayList<>(4);
        addPromises(promises, use.need().must(), true, average, low);
        addPromises(promises, use.need().wish(), false, average, low);
        return new Prediction(
                use.valued(),
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
