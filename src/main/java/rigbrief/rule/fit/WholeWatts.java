package rigbrief.rule.fit;

/**
 * Computed watts as whole ones, always to the careful side.
 *
 * <p>A microwatt is forgiven, so that the rounding of binary fractions never costs a watt.
 */
final class WholeWatts {
    private static final double FORGIVEN_W = 1e-6;

    private WholeWatts() {}

    /** A load in W, rounded up. */
    static long load(double watts) {
        return (long) Math.ceil(watts - FORGIVEN_W);
    }

    /** What a source gives in W, rounded down. */
    static long given(double watts) {
        return (long) Math.floor(watts + FORGIVEN_W);
    }
}
