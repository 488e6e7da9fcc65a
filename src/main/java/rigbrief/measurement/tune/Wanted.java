package rigbrief.measurement.tune;

import java.util.List;
import java.util.OptionalDouble;
import rigbrief.assess.FrameModel;
import rigbrief.assess.FrameModel.SceneTime;
import rigbrief.model.speed.SceneMix;

/**
 * What a choice of settings has to hold. Rates are compared in hundredths of a frame a second.
 *
 * @param heldFps rate in so much of the title as has to hold it
 * @param averageFps average over all scenes; empty when not asked
 * @param lowFps 1 % low over all scenes; empty when not asked
 */
record Wanted(double heldFps, OptionalDouble averageFps, OptionalDouble lowFps) {
    private static final double HUNDREDTHS = 100;

    /** A rate to hold and nothing else. */
    static Wanted held(double fps) {
        return new Wanted(fps, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Whether a sure rate reaches it. */
    boolean heldBy(double sureFps) {
        return reaches(sureFps, heldFps);
    }

    /**
     * Whether the figures over all scenes hold.
     *
     * @param sureShare what of a predicted rate is sure
     * @param capFps most frames per second the engine draws
     * @param spread of frame times within a scene
     */
    boolean mixHeldBy(List<SceneTime> scenes, double sureShare, double capFps, double spread) {
        if (averageFps.isEmpty() && lowFps.isEmpty()) {
            return true;
        }
        SceneMix.Rates rates = FrameModel.rates(scenes, capFps, spread);
        return reaches(rates.averagePerS() * sureShare, averageFps.orElse(0))
                && reaches(rates.lowPerS() * sureShare, lowFps.orElse(0));
    }

    static boolean reaches(double fps, double wantedFps) {
        return hundredths(fps) >= hundredths(wantedFps);
    }

    /** A rate in hundredths of a frame a second. */
    static long hundredths(double fps) {
        return Math.round(fps * HUNDREDTHS);
    }
}
