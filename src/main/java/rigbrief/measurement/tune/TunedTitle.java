package rigbrief.measurement.tune;

import java.util.List;
import java.util.Optional;
import rigbrief.catalogue.FrameRate;

/**
 * A title's settings and frame cap.
 *
 * @param title the title
 * @param askedFps rate that was to be held, in frames/s
 * @param tunedForFps rate the settings were chosen for; lower where the asked one can't be held,
 *     and 0 where nothing worth naming can
 * @param outcome how it went
 * @param mustsHold whether the brief's average and 1 % low hold at these settings, uncapped; true
 *     where it asks for none
 * @param menu the menu, line by line
 * @param scenes the scenes, in the title's order
 * @param heldFps sure rate in so much of the title as has to hold it, in frames/s
 * @param cap the cap; empty when no steady one is held
 * @param fixedCap the cap for a screen without variable refresh, where nobody said what the screen
 *     has and it is another; else empty
 * @param vramGb graphics memory wanted at these settings, in GB
 * @param vramThereGb graphics memory there, in GB
 * @param uncapped rates over all scenes without a cap of ours
 * @param capped rates over all scenes under the cap; those of {@code uncapped} without one
 */
public record TunedTitle(
        FrameRate title,
        double askedFps,
        double tunedForFps,
        Outcome outcome,
        boolean mustsHold,
        List<MenuLine> menu,
        List<SceneLine> scenes,
        double heldFps,
        Optional<FrameCap> cap,
        Optional<FrameCap> fixedCap,
        double vramGb,
        double vramThereGb,
        Rates uncapped,
        Rates capped) {
    private static final double TENTHS = 10;

    public TunedTitle {
        menu = List.copyOf(menu);
        scenes = List.copyOf(scenes);
    }

    /** Whether more graphics memory is wanted than there is, in tenths of a GB. */
    public boolean overflows() {
        return Math.round(vramGb * TENTHS) > Math.round(vramThereGb * TENTHS);
    }

    /** How choosing went. */
    public enum Outcome {
        /** The target holds, at settings no lower than the brief's own. */
        HELD,
        /** The target holds, but some of the brief's own settings had to be turned down. */
        BELOW_BRIEF,
        /** The target can't be held at any settings; a lower one can. */
        LOWER_TARGET,
        /** No rate worth naming can be held: these are the fastest settings. */
        NOT_HELD
    }

    /**
     * Two rates over all scenes.
     *
     * @param averageFps expected average, total frames over total time
     * @param lowFps expected 1 % low: rate at the 99th percentile of frame time, counted in frames
     */
    public record Rates(double averageFps, double lowFps) {}
}
