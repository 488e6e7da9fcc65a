package rigbrief.proposal.front;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The knee of a front: the point farthest above the chord from its first to its last point, both
 * axes scaled to 0..1.
 *
 * <p>Source: the definition of the largest distance from the chord, after I. Das, "On
 * characterizing the 'knee' of the Pareto curve based on normal-boundary intersection", Structural
 * Optimization 18, 1999 (from memory). The first of equals is taken.
 */
public final class Knee {
    /** The definition in words that a client can follow. */
    public static final String MEANING =
            "the build farthest above the straight line from the cheapest to the best one, money and"
                    + " utility both scaled to 0..1: before it money buys much, after it little";

    /** Where the definition comes from. */
    public static final String SOURCE =
            "the knee: the largest distance from the chord, after I. Das, Structural Optimization"
                    + " 18, 1999 (from memory)";

    private Knee() {}

    /**
     * Index of the knee.
     *
     * @param points a front, cost and gain both rising
     * @param cost what a point costs
     * @param gain what a point gives
     * @return empty when no point lies above the chord
     */
    public static <T> Optional<Integer> of(
            List<T> points, ToDoubleFunction<T> cost, ToDoubleFunction<T> gain) {
        int knee = -1;
        double farthest = 0;
        for (int i = 1; i < points.size() - 1; i++) {
            double offset = offset(points, i, cost, gain);
            if (offset > farthest) {
                farthest = offset;
                knee = i;
            }
        }
        return knee < 0 ? Optional.empty() : Optional.of(knee);
    }

    /** Scaled gain of a point less its scaled cost: its height above the chord. */
    public static <T> double offset(
            List<T> points, int index, ToDoubleFunction<T> cost, ToDoubleFunction<T> gain) {
        T first = points.get(0);
        T last = points.get(points.size() - 1);
        T point = points.get(index);
        return scaled(point, first, last, gain) - scaled(point, first, last, cost);
    }

    private static <T> double scaled(T point, T first, T last, ToDoubleFunction<T> figure) {
        double span = figure.applyAsDouble(last) - figure.applyAsDouble(first);
        return span == 0 ? 0 : (figure.applyAsDouble(point) - figure.applyAsDouble(first)) / span;
    }
}
