package rigbrief.measurement.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.measurement.tune.FrameCap.SteadyBy;

/**
 * The highest steady frame cap that a title holds.
 *
 * <p>A screen without variable refresh is steady at its refresh rate and whole fractions of it, and
 * a frame that comes late waits for the next refresh: there a cap is held only in full. A screen
 * with variable refresh waits for the frame: there a cap counts as held from nine tenths of it on,
 * and lies three below the refresh rate, where the screen still waits. Where nothing is known of
 * the screen, all of these rates will do.
 *
 * <p>Common practice: the usual rates, the three frames and the nine tenths.
 */
final class CapFinder {
    /**
     * Share of a cap from which a screen that waits for frames counts as holding it, in percent.
     */
    static final int WAITING_PERCENT = 90;

    /** How far under the refresh rate a screen that waits for frames is kept, in frames/s. */
    static final int BELOW_REFRESH = 3;

    /** Rates that titles and drivers offer. */
    static final List<Integer> USUAL =
            List.of(30, 40, 50, 60, 72, 80, 90, 100, 120, 144, 165, 180, 200, 240, 300, 360);

    /** Below this a cap is no longer worth setting. */
    private static final int LEAST_FPS = 24;

    private static final int PERCENT = 100;
    private static final long HUNDREDTHS = 100;

    private final ScreenPace screen;
    private final long engineCap;

    /**
     * A finder.
     *
     * @param engineCapFps most frames per second the engine draws; infinite for no cap
     */
    CapFinder(ScreenPace screen, double engineCapFps) {
        this.screen = screen;
        this.engineCap =
                Double.isFinite(engineCapFps) ? Wanted.hundredths(engineCapFps) : Long.MAX_VALUE;
    }

    /**
     * The highest cap that is held; empty when no steady one is.
     *
     * @param heldHundredthsFps rate that is held, in hundredths of a frame/s
     * @param targetFps a rate that was asked for, to be tried beside the usual ones
     */
    Optional<FrameCap> highest(long heldHundredthsFps, double targetFps) {
        return best(candidates(targetFps), heldHundredthsFps);
    }

    /** The highest cap that a screen without variable refresh would hold. */
    Optional<FrameCap> highestFixed(long heldHundredthsFps) {
        List<FrameCap> caps = new ArrayList<>();
        addFractions(caps, 1);
        return caps.stream()
                .filter(cap -> cap.hundredthsFps() <= Math.min(engineCap, heldHundredthsFps))
                .findFirst();
    }

    private Optional<FrameCap> best(List<FrameCap> caps, long held) {
        FrameCap best = null;
        for (FrameCap cap : caps) {
            boolean higher = best == null || cap.hundredthsFps() > best.hundredthsFps();
            if (higher && cap.hundredthsFps() <= engineCap && isHeld(cap, held)) {
                best = cap;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Whether a rate holds a cap on this screen. */
    boolean isHeld(FrameCap cap, long hundredthsFps) {
        int percent = screen.fixed() ? PERCENT : WAITING_PERCENT;
        return hundredthsFps * PERCENT >= cap.hundredthsFps() * percent;
    }

    private List<FrameCap> candidates(double targetFps) {
        List<FrameCap> caps = new ArrayList<>();
        if (screen.fixed()) {
            addFractions(caps, 1);
            return caps;
        }
        SteadyBy by = screen.variable() ? SteadyBy.VARIABLE : SteadyBy.USUAL;
        List<Long> rates = new ArrayList<>();
        rates.add(Wanted.hundredths(targetFps));
        USUAL.forEach(rate -> rates.add(rate * HUNDREDTHS));
        screen.refreshHz().ifPresent(hz -> rates.add((hz - BELOW_REFRESH) * HUNDREDTHS));
        for (long rate : rates) {
            if (followed(rate)) {
                caps.add(new FrameCap(rate, by, 1));
            }
        }
        addFractions(caps, screen.variable() ? 2 : 1);
        return caps;
    }

    /** Below its range a screen shows each frame twice, if that is within its range. */
    private boolean followed(long rate) {
        if (rate < LEAST_FPS * HUNDREDTHS) {
            return false;
        }
        if (screen.refreshHz().isEmpty()) {
            return true;
        }
        long refresh = screen.refreshHz().getAsInt() * HUNDREDTHS;
        long from = screen.variableFromHz().orElse(0) * HUNDREDTHS;
        return rate <= refresh - BELOW_REFRESH * HUNDREDTHS
                && (rate >= from || 2 * rate <= refresh);
    }

    private void addFractions(List<FrameCap> caps, int first) {
        if (screen.refreshHz().isEmpty()) {
            return;
        }
        long refresh = screen.refreshHz().getAsInt() * HUNDREDTHS;
        for (int n = first; refresh >= n * LEAST_FPS * HUNDREDTHS; n++) {
            SteadyBy by = n == 1 ? SteadyBy.REFRESH : SteadyBy.DIVISOR;
            caps.add(new FrameCap(refresh / n, by, n));
        }
    }
}
