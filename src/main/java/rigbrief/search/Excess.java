package rigbrief.search;

import java.util.Arrays;

/** By how much lines of points over money rise above the steps of a front. */
final class Excess {
    private static final double CLOSE = 1e-6;

    /** Totals are rounded to whole minor units, so the one below a step ends half of one before. */
    private static final double HALF = 0.5;

    private final Stairs stairs;
    private final Envelope lines;
    private final FirstFigure figure;

    /**
     * An excess.
     *
     * @param lines refilled before each question
     */
    Excess(Stairs stairs, Envelope lines, FirstFigure figure) {
        this.stairs = stairs;
        this.lines = lines;
        this.figure = figure;
    }

    /**
     * The most that the lines are above the steps.
     *
     * @param from least spent on parts and delivery, in minor units
     * @param to most spent
     * @param enough a lesser figure may be told as minus infinity
     * @param found a figure from this up need not be told higher than it is
     */
    double most(double from, double to, double enough, double found) {
        int last = stairs.size() - 1;
        while (last > 0 && begin(last) > to) {
            last--;
        }
        return most(firstStep(from, last), last, from, to, enough, found, Double.NEGATIVE_INFINITY);
    }

    private double most(
            int first, int last, double from, double to, double enough, double found, double most) {
        double begin = Math.max(from, begin(first));
        double end = Math.min(to, end(last, to));
        if (end < begin) {
            return most;
        }
        double above = lines.most(begin, end, figure) - stairs.points(first);
        double least = most < enough ? enough - CLOSE : Math.max(most, found);
        if (above < least || above <= most) {
            return most;
        }
        if (first == last) {
            return above;
        }
        int middle = (first + last) >>> 1;
        double dearer = most(middle + 1, last, from, to, enough, found, most);
        return most(first, middle, from, to, enough, found, dearer);
    }

    /** The step on which so much is spent; the first one for less than that. */
    private int firstStep(double spend, int last) {
        int low = 0;
        int high = last;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (begin(middle) <= spend) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /**
     * Raises what is open on each step to what the lines reach there.
     *
     * @param most it is known that no step is passed by more points
     * @param gaps points by which the steps could be passed, one entry per step
     */
    void raise(double from, double to, long most, long[] gaps) {
        raise(firstStep(from, gaps.length - 1), gaps.length - 1, from, to, most, gaps);
    }

    private void raise(int first, int last, double from, double to, long most, long[] gaps) {
        double begin = Math.max(from, begin(first));
        double end = Math.min(to, end(last, to));
        if (end < begin) {
            return;
        }
        double reached = Math.floor(lines.most(begin, end, figure) + CLOSE);
        long above = Math.min(most, (long) reached - stairs.points(first));
        if (above <= Arrays.stream(gaps, first, last + 1).min().orElse(0)) {
            return;
        }
        if (first == last) {
            gaps[first] = above;
            return;
        }
        int middle = (first + last) >>> 1;
        raise(first, middle, from, to, most, gaps);
        raise(middle + 1, last, from, to, most, gaps);
    }

    private double begin(int step) {
        return figure.money().spend(stairs.totalMinor(step) - HALF);
    }

    private double end(int step, double to) {
        return step + 1 < stairs.size() ? begin(step + 1) : to;
    }
}
