package rigbrief.proposal.front;

import java.util.ArrayList;
import java.util.List;
import rigbrief.search.Certificate;
import rigbrief.search.Objective;

/**
 * What certificates prove about every build: lines over which no build lies in money and utility.
 *
 * <p>A certificate says that worth of points less worth of money is at most its bound, for every
 * build within its limit. So points at a total are at most (bound + money's worth of the total)
 * over the points' worth, and the least of several lines bounds the front from above.
 */
final class Ceilings {
    private record Line(long perPoint, long perMinor, double bound, long limitMinor) {}

    private final List<Line> lines = new ArrayList<>();
    private long leastMinor;

    /** Remembers that no build is cheaper. */
    void atLeast(long boundMinor) {
        leastMinor = Math.max(leastMinor, boundMinor);
    }

    /** Remembers what a search proved, whether it was completed or not. */
    void add(Objective objective, long limitMinor, Certificate certificate) {
        boolean nothing = certificate.best().isEmpty() && certificate.complete();
        double bound = bound(objective, certificate, nothing);
        if (objective.perPoint() == 0) {
            leastMinor =
                    Math.max(
                            leastMinor, nothing ? limitMinor + 1 : (long) Math.ceil(-bound - 1e-6));
        } else {
            lines.add(new Line(objective.perPoint(), objective.perMinor(), bound, limitMinor));
        }
    }

    private static double bound(Objective objective, Certificate certificate, boolean nothing) {
        if (nothing) {
            return Double.NEGATIVE_INFINITY;
        }
        if (!certificate.complete() || certificate.best().isEmpty()) {
            return certificate.bound();
        }
        // A completed search has no better build; what the best one reaches is the bound.
        return objective.first(
                certificate.best().get().points(), certificate.best().get().totalMinor());
    }

    /** No build is cheaper, in minor units. */
    long leastMinor() {
        return leastMinor;
    }

    /** No build that costs at most so much has more points; at most {@code most}. */
    long pointsAt(long totalMinor, long most) {
        if (totalMinor < leastMinor) {
            return -1;
        }
        double least = most;
        for (Line line : lines) {
            if (totalMinor <= line.limitMinor()) {
                double spend = line.perMinor() * (double) totalMinor;
                least = Math.min(least, (line.bound() + spend) / line.perPoint());
            }
        }
        return least < 0 ? -1 : (long) Math.floor(least + 1e-6);
    }
}
