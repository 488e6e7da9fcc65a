package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rigbrief.assess.FrameLoad;
import rigbrief.assess.FrameModel;
import rigbrief.assess.FrameModel.SceneTime;
import rigbrief.assess.MachineRates;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Shape;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.Rig;
import rigbrief.model.speed.FrameTime;
import rigbrief.model.speed.SceneMix;
import rigbrief.part.Resolution;

/**
 * A frame rate as the speed model sees it: how it moves when demands and rates are scaled.
 *
 * <p>Formula: card's time of a scene = graphics e^u0 + rays e^u1 + fixed, processor's time =
 * processor e^u2, u each the logarithm of demand over rate, both relative to the catalogue; the
 * parts are read off {@link FrameModel} at three settings of u, so that there is one model.
 */
final class FrameSpeed implements Speed {
    private static final Resolution USUAL_PICTURE = new Resolution(1920, 1080);

    private final SceneTime[] scenes;
    private final double[] graphicsS;
    private final double[] raysS;
    private final double[] fixedS;
    private final double[] processorS;
    private final double[] shares;
    private final double capFps;
    private final Shape shape;
    private final boolean ofLow;

    private FrameSpeed(
            List<SceneTime> plain,
            List<SceneTime> doubled,
            List<SceneTime> doubledRays,
            double capFps,
            Shape shape,
            boolean ofLow) {
        int count = plain.size();
        this.scenes = plain.toArray(new SceneTime[0]);
        this.graphicsS = new double[count];
        this.raysS = new double[count];
        this.fixedS = new double[count];
        this.processorS = new double[count];
        this.shares = new double[count];
        for (int i = 0; i < count; i++) {
            double cardS = scenes[i].cardS();
            raysS[i] = doubledRays.get(i).cardS() - cardS;
            graphicsS[i] = doubled.get(i).cardS() - cardS - raysS[i];
            fixedS[i] = cardS - graphicsS[i] - raysS[i];
            processorS[i] = scenes[i].serialS() + scenes[i].parallelS();
            shares[i] = scenes[i].scene().share();
        }
        this.capFps = capFps;
        this.shape = shape;
        this.ofLow = ofLow;
    }

    /** The average of a measurement, or its low where there is no average or it is asked for. */
    static FrameSpeed of(FrameRate title, Measurement measured, boolean ofLow) {
        Rig rig = measured.rig().orElseThrow();
        MachineRates machine = RigRates.of(rig);
        FrameLoad load =
                FrameLoad.of(
                        title,
                        measured.settings(),
                        measured.resolution().orElse(USUAL_PICTURE).megapixels(),
                        machine.picture().upscales());
        OptionalDouble cap = title.engineCapFps();
        return new FrameSpeed(
                FrameModel.scenes(title, load, machine),
                FrameModel.scenes(title, load, RigRates.slowed(machine, 2, 2)),
                FrameModel.scenes(title, load, RigRates.slowed(machine, 1, 2)),
                cap.orElse(Double.POSITIVE_INFINITY),
                title.shape(),
                ofLow);
    }

    @Override
    public boolean works(Channel channel) {
        double[] times =
                switch (channel) {
                    case GRAPHICS -> graphicsS;
                    case RAYS -> raysS;
                    case PROCESSOR -> processorS;
                    case DRIVE -> new double[0];
                };
        double sum = 0;
        for (double time : times) {
            sum += time;
        }
        return sum > 0 && Double.isFinite(sum);
    }

    @Override
    public boolean possible() {
        for (SceneTime scene : scenes) {
            if (!Double.isFinite(scene.frameS())) {
                return false;
            }
        }
        return true;
    }

    @Override
    public double log(double... loads) {
        double[] frameS = frameS(loads);
        return Math.log(
                ofLow
                        ? rates(frameS, shape.spread()).lowPerS()
                        : FrameModel.averageFps(frameS, shares, capFps, shape.spread()));
    }

    /**
     * The natural logarithm of the 1 % low over the average.
     *
     * @param spread of frame times within a scene
     * @param loads as in {@link #log}
     */
    double logLowShare(double spread, double... loads) {
        SceneMix.Rates rates = rates(frameS(loads), spread);
        return Math.log(rates.lowPerS() / rates.averagePerS());
    }

    private double[] frameS(double[] loads) {
        double graphics = Math.exp(loads[Channel.GRAPHICS.ordinal()]);
        double rays = Math.exp(loads[Channel.RAYS.ordinal()]);
        double processor = Math.exp(loads[Channel.PROCESSOR.ordinal()]);
        double[] times = new double[scenes.length];
        for (int i = 0; i < times.length; i++) {
            double cardS = graphicsS[i] * graphics + raysS[i] * rays + fixedS[i];
            times[i] = FrameTime.together(cardS, processorS[i] * processor, shape.overlap());
        }
        return times;
    }

    private SceneMix.Rates rates(double[] frameS, double spread) {
        List<SceneTime> times = new ArrayList<>(scenes.length);
        for (int i = 0; i < scenes.length; i++) {
            times.add(new SceneTime(scenes[i].scene(), 0, 0, 0, frameS[i]));
        }
        return FrameModel.rates(times, capFps, spread);
    }
}
