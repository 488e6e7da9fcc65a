package rigbrief.bench.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The best sound build known over time, by processor seconds. */
final class Trace {
    private record Moment(double cpuS, long figure) {}

    private final List<Moment> moments = new ArrayList<>();

    /**
     * A sound build that was known by then.
     *
     * @param figure what it reaches; more is better
     */
    void known(double cpuS, long figure) {
        moments.add(new Moment(cpuS, figure));
    }

    /** The best figure by a time; the least number when no build was known. */
    long by(double cpuS) {
        long best = Long.MIN_VALUE;
        for (Moment moment : moments) {
            best = moment.cpuS <= cpuS ? Math.max(best, moment.figure) : best;
        }
        return best;
    }

    /** The best figure of all. */
    long best() {
        return by(Double.POSITIVE_INFINITY);
    }

    /** When a figure was first reached. */
    OptionalDouble reached(long figure) {
        return moments.stream()
                .filter(moment -> moment.figure >= figure)
                .mapToDouble(Moment::cpuS)
                .min();
    }
}
