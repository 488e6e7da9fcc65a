package rigbrief.search;

/**
 * What makes one build better than another once both keep every rule.
 *
 * <p>All in whole numbers, so that two runs never differ by rounding: utility in points (weight
 * times ten-thousandths, summed over the goals), money in minor units.
 */
public sealed interface Objective {
    /** The figure to make greatest. */
    long first(long points, long totalMinor);

    /** The figure that decides between equals. */
    long second(long points, long totalMinor);

    /** Least money; among equals most utility. */
    record LeastMoney() implements Objective {
        @Override
        public long first(long points, long totalMinor) {
            return -totalMinor;
        }

        @Override
        public long second(long points, long totalMinor) {
            return points;
        }
    }

    /** Most utility; among equals least money. */
    record MostUtility() implements Objective {
        @Override
        public long first(long points, long totalMinor) {
            return points;
        }

        @Override
        public long second(long points, long totalMinor) {
            return -totalMinor;
        }
    }

    /**
     * Most of a weighted difference; among equals most utility.
     *
     * @param perPoint worth of a utility point, positive
     * @param perMinor worth of a minor unit saved, positive
     */
    record Weighted(long perPoint, long perMinor) implements Objective {
        @Override
        public long first(long points, long totalMinor) {
            return Math.subtractExact(
                    Math.multiplyExact(perPoint, points), Math.multiplyExact(perMinor, totalMinor));
        }

        @Override
        public long second(long points, long totalMinor) {
            return points;
        }
    }
}
