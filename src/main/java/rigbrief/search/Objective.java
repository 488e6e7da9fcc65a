package rigbrief.search;

/**
 * What makes one build better than another once both keep every rule: a first figure to make
 * greatest, and a second that decides between equals.
 *
 * <p>Each is a weighted difference of utility and money, all in whole numbers, so that two runs
 * never differ by rounding.
 *
 * @param perPoint worth of a utility point in the first figure, 0 or more
 * @param perMinor worth of a minor unit saved in the first figure, 0 or more
 * @param perPointBetweenEquals worth of a utility point in the second figure, 0 or more
 * @param perMinorBetweenEquals worth of a minor unit saved in the second figure, 0 or more
 */
public record Objective(
        long perPoint, long perMinor, long perPointBetweenEquals, long perMinorBetweenEquals) {
    /** Least money; among equals most utility. */
    public static Objective leastMoney() {
        return new Objective(0, 1, 1, 0);
    }

    /** Most utility; among equals least money. */
    public static Objective mostUtility() {
        return new Objective(1, 0, 0, 1);
    }

    /** Most of a weighted difference; among equals most utility. */
    public static Objective weighted(long perPoint, long perMinor) {
        return new Objective(perPoint, perMinor, 1, 0);
    }

    /** The figure to make greatest. */
    public long first(long points, long totalMinor) {
        return Math.subtractExact(
                Math.multiplyExact(perPoint, points), Math.multiplyExact(perMinor, totalMinor));
    }

    /** The figure that decides between equals. */
    public long second(long points, long totalMinor) {
        return perPointBetweenEquals * points - perMinorBetweenEquals * totalMinor;
    }
}
