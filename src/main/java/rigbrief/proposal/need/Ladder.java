package rigbrief.proposal.need;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Usual steps of a figure: what people ask for next when they ask for more or less. */
enum Ladder {
    /** Frames per second. Common practice: what displays and talk go by. */
    FPS(24, 30, 45, 60, 75, 90, 100, 120, 144, 165, 180, 200, 240, 300, 360, 480),
    /** Seconds. Common practice. */
    SECONDS(
            1, 2, 3, 5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 90, 120, 150, 180, 240, 300, 420, 600,
            900, 1200, 1800, 2700, 3600, 5400, 7200),
    /** Memory in GB: what kits make. */
    MEMORY_GB(4, 8, 16, 24, 32, 48, 64, 96, 128, 192, 256),
    /** Storage in GB: what drives have. */
    STORAGE_GB(120, 250, 500, 1000, 2000, 3000, 4000, 6000, 8000, 12000, 16000),
    /** Volume in tenths of a litre. Common practice. */
    DECILITRES(50, 80, 100, 120, 150, 180, 200, 250, 300, 350, 400, 450, 500, 600, 700, 800),
    /** Lead time in days. Common practice. */
    DAYS(1, 2, 3, 5, 7, 10, 14, 21, 28, 42),
    /** Refresh rates of displays, in Hz. */
    HERTZ(50, 60, 75, 100, 120, 144, 165, 180, 240, 300, 360);

    private final int[] steps;

    Ladder(int... steps) {
        this.steps = steps;
    }

    /** The next step under a value. */
    OptionalInt under(double value) {
        OptionalInt found = OptionalInt.empty();
        for (int step : steps) {
            if (step < value) {
                found = OptionalInt.of(step);
            }
        }
        return found;
    }

    /** The next step over a value. */
    OptionalInt over(double value) {
        for (int step : steps) {
            if (step > value) {
                return OptionalInt.of(step);
            }
        }
        return OptionalInt.empty();
    }

    /** All steps under a value, the nearest first. */
    List<Integer> allUnder(double value) {
        List<Integer> under = new ArrayList<>();
        for (int i = steps.length - 1; i >= 0; i--) {
            if (steps[i] < value) {
                under.add(steps[i]);
            }
        }
        return under;
    }

    /** All steps over a value, the nearest first. */
    List<Integer> allOver(double value) {
        List<Integer> over = new ArrayList<>();
        for (int step : steps) {
            if (step > value) {
                over.add(step);
            }
        }
        return over;
    }
}
