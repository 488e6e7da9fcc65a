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
     * The most that the lines are above the steps; where that is less than one point, 0 or any
     * lesser figure.
     *
     * @param from least spent on parts and delivery, in minor units
     * @param to most spent
     */
    double most(double from, double to) {
        return most(0, stairs.size() - 1, from, to, Double.NEGATIVE_INFINITY);
    }

    private double most(int first, int last, double from, double to, double found) {
        double begin = Math.max(from, begin(first));
        double end = Math.min(to, end(last, to));
        if (end < begin) {
            return found;
        }
        double above = lines.most(begin, end, figure) - stairs.points(first);
        if (above <= found || above < 1 - 2 * CLOSE) {
            return Math.max(found, Math.min(above, 0));
        }
        if (first == last) {
            return above;
        }
        int middle = (first + last) >>> 1;
        double dearer = most(middle + 1, last, from, to, found);
        return most(first, middle, from, to, dearer);
    }

    /**
     * Raises what is open on each step to what the lines reach there.
     *
     * @param gaps points by which the steps could be passed, one entry per step
     */
    void raise(double from, double to, long[] gaps) {
        raise(0, gaps.length - 1, from, to, gaps);
    }

    private void raise(int first, int last, double from, double to, long[] gaps) {
        double begin = Math.max(from, begin(first));
        double end = Math.min(to, end(last, to));
        if (end < begin) {
            return;
        }
        double reached = Math.floor(lines.most(begin, end, figure) + CLOSE);
        long above = (long) reached - stairs.points(first);
        if (above <= Arrays.stream(gaps, first, last + 1).min().orElse(0)) {
            return;
        }
        if (first == last) {
            gaps[first] = above;
            return;
        }
        int middle = (first + last) >>> 1;
        raise(first, middle, from, to, gaps);
        raise(middle + 1, last, from, to, gaps);
    }

    private double begin(int step) {
        return figure.money().spend(stairs.totalMinor(step) - HALF);
    }

    private double end(int step, double to) {
        return step + 1 < stairs.size() ? begin(step + 1) : to;
    }
}
