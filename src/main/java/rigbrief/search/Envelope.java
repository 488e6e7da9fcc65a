package rigbrief.search;

/**
 * The lower envelope of rising lines over money: most points that so much money can buy.
 *
 * <p>Mutable and refilled for each bound; never leaves this package.
 */
final class Envelope {
    private final double[] start;
    private final double[] slope;

    Envelope(int lines) {
        start = new double[lines];
        slope = new double[lines];
    }

    /** What is to be made greatest, of points and money. */
    interface Figure {
        double of(double points, double money);
    }

    /**
     * States a line.
     *
     * @param atNothing points at no money
     * @param perMinor points per minor unit, 0 or more
     */
    void set(int line, double atNothing, double perMinor) {
        start[line] = atNothing;
        slope[line] = perMinor;
    }

    /**
     * A bound on a figure along the envelope between two sums of money.
     *
     * <p>The figure is points + W x points / (points + c x money) less money at a rate. With points
     * on a line that starts at or above 0 it is convex in money, so that the ends of each stretch
     * bound it. On a line that starts below 0 value is concave, but rises with money: then each
     * stretch is bounded by the points and value of its far end and the money of its near one.
     */
    double most(double from, double to, Figure figure) {
        double at = from;
        int line = lowest(at);
        double best = Double.NEGATIVE_INFINITY;
        while (true) {
            double next = to;
            int then = -1;
            for (int other = 0; other < slope.length; other++) {
                if (slope[other] < slope[line]) {
                    double cross = (start[other] - start[line]) / (slope[line] - slope[other]);
                    if (cross < next
                            || (cross == next && then >= 0 && slope[other] < slope[then])) {
                        next = Math.max(at, cross);
                        then = other;
                    }
                }
            }
            double points = start[line] + slope[line] * next;
            best =
                    start[line] < 0
                            ? Math.max(best, concave(line, at, next, figure))
                            : Math.max(
                                    best,
                                    Math.max(
                                            figure.of(start[line] + slope[line] * at, at),
                                            figure.of(points, next)));
            if (then < 0) {
                return best;
            }
            at = next;
            line = then;
        }
    }

    /** Points and value rise along the stretch, what is paid is at least what its start costs. */
    private double concave(int line, double at, double next, Figure figure) {
        double far = start[line] + slope[line] * next;
        return figure.of(far, next) + figure.of(0, at) - figure.of(0, next);
    }

    private int lowest(double money) {
        int lowest = 0;
        for (int line = 1; line < slope.length; line++) {
            double points = start[line] + slope[line] * money;
            double least = start[lowest] + slope[lowest] * money;
            if (points < least || (points == least && slope[line] < slope[lowest])) {
                lowest = line;
            }
        }
        return lowest;
    }
}
