package rigbrief.assess;

import java.util.ArrayList;
import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.model.speed.FrameTime;
import rigbrief.model.speed.MemoryOverflow;
import rigbrief.model.speed.Roofline;
import rigbrief.model.speed.SceneMix;

/**
 * Frame times of a title, scene by scene, for a load and the rates of a machine.
 *
 * <p>Formula: {@link FrameTime} for a scene, {@link SceneMix} for all of them.
 */
public final class FrameModel {
    /** Memory rate at which demands are stated, in MT/s. */
    public static final double REFERENCE_MTS = FramePredictor.REFERENCE_MTS;

    private static final double MILLISECONDS = 1_000;
    private static final double GIGA = 1_000;

    private FrameModel() {}

    /** Millions of pixels shown on the brief's screen, or on the usual one where it names none. */
    public static double shownMegapixels(Brief brief) {
        return SpeedModel.shownMegapixels(brief);
    }

    /**
     * The times of one scene.
     *
     * @param scene the scene
     * @param cardS the card's time for a frame, in s; infinite when it lacks the means
     * @param serialS the processor's time on one thread, in s
     * @param parallelS its time on all threads, in s
     * @param frameS time of a frame before any cap, in s
     */
    public record SceneTime(
            Scene scene, double cardS, double serialS, double parallelS, double frameS) {
        /** The scene's mean rate before any cap, in frames/s; 0 when it can't be drawn. */
        public double rateFps() {
            return 1 / frameS;
        }

        /** Whether the processor takes longer than the card. */
        public boolean processorBound() {
            return serialS + parallelS > cardS;
        }
    }

    /** The times of all scenes, in the title's order. */
    public static List<SceneTime> scenes(FrameRate title, FrameLoad load, MachineRates machine) {
        double card = cardS(title, load, machine);
        double serial = processorS(title, load, machine, title.work().serial(), 0);
        double parallel = processorS(title, load, machine, 0, title.work().parallel());
        List<SceneTime> times = new ArrayList<>(title.scenes().size());
        for (Scene scene : title.scenes()) {
            times.add(time(scene, card, serial, parallel, title.shape().overlap()));
        }
        return times;
    }

    private static SceneTime time(
            Scene scene, double card, double serial, double parallel, double overlap) {
        double cardS = card * scene.graphics();
        double serialS = serial * scene.processor();
        double parallelS = parallel * scene.processor();
        return new SceneTime(
                scene,
                cardS,
                serialS,
                parallelS,
                FrameTime.together(cardS, serialS + parallelS, overlap));
    }

    /**
     * Average and 1 % low over the mix of scenes.
     *
     * @param capFps most frames per second; infinite for no cap
     * @param spread of frame times within a scene, as the title's shape has it
     * @return both rates; 0 when some scene can't be drawn
     */
    public static SceneMix.Rates rates(List<SceneTime> scenes, double capFps, double spread) {
        double[] frameMs = new double[scenes.size()];
        double[] shares = new double[scenes.size()];
        for (int i = 0; i < frameMs.length; i++) {
            frameMs[i] = scenes.get(i).frameS() * MILLISECONDS;
            shares[i] = scenes.get(i).scene().share();
            if (!Double.isFinite(frameMs[i])) {
                return new SceneMix.Rates(0, 0);
            }
        }
        return SceneMix.rates(frameMs, shares, capFps, spread);
    }

    /**
     * Average over a mix of scenes, without its low.
     *
     * @param frameS time of a frame of each scene before any cap, in s
     * @param shares share of play time of each scene, same order
     * @param capFps most frames per second; infinite for no cap
     * @param spread of frame times within a scene, as the title's shape has it
     * @return the average of {@link #rates} for such scenes, in frames/s
     */
    public static double averageFps(
            double[] frameS, double[] shares, double capFps, double spread) {
        double[] frameMs = new double[frameS.length];
        for (int i = 0; i < frameMs.length; i++) {
            frameMs[i] = frameS[i] * MILLISECONDS;
        }
        return SceneMix.averagePerS(frameMs, shares, capFps, spread);
    }

    /** The card's time for a frame of the typical scene, in s; infinite when it lacks the means. */
    static double cardS(FrameRate title, FrameLoad load, MachineRates machine) {
        FrameWork work = title.work();
        MachineRates.Picture picture = machine.picture();
        double gbyte = work.gbyte().at(load.megapixels()) * load.graphics();
        double roofline =
                Roofline.seconds(
                        work.gflop().at(load.megapixels()) * load.graphics(),
                        picture.tflops() * GIGA,
                        gbyte,
                        picture.bandwidthGbs());
        double alone =
                FrameTime.graphicsS(
                        roofline,
                        work.rays().at(load.megapixels()) * load.rays(),
                        picture.rayRate(),
                        work.fixedMs() / MILLISECONDS);
        return (alone + gbyte * picture.linkS())
                * MemoryOverflow.factor(
                        load.vramGb(),
                        picture.vramGb(),
                        title.shape().overflowPenalty() * picture.overflowTimes());
    }

    private static double processorS(
            FrameRate title, FrameLoad load, MachineRates machine, double serial, double parallel) {
        double memory =
                Math.pow(REFERENCE_MTS / Math.max(1, machine.mts()), title.work().memoryExponent());
        return FrameTime.processorS(
                        serial * load.processor(),
                        machine.rateSingle(),
                        parallel * load.processor(),
                        machine.rateAll())
                * memory;
    }
}
