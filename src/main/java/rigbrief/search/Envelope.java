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

        /** Money at which the figure along a line is greatest between its ends; NaN for nowhere. */
        double peak(double atNothing, double perMinor);
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
     * The most that a figure reaches along the envelope between two sums of money: along each
     * stretch at one of its ends or at the figure's peak there.
     */
    double most(double from, double to, Figure figure) {
        double at = from;
        int line = lowest(at);
        double best = on(line, at, figure);
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
            // Where two lines cross one figure stands for both.
            best = Math.max(best, on(line, next, figure));
            double peak = figure.peak(start[line], slope[line]);
            if (peak > at && peak < next) {
                best = Math.max(best, on(line, peak, figure));
            }
            if (then < 0) {
                return best;
            }
            at = next;
            line = then;
        }
    }

    private double on(int line, double money, Figure figure) {
        return figure.of(start[line] + slope[line] * money, money);
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
