package rigbrief.rule.need;

/**
 * Computed amounts of memory or space as whole GB, rounded up.
 *
 * <p>A millionth is forgiven, so that the rounding of binary fractions never costs a whole GB.
 */
final class WholeGb {
    private static final double FORGIVEN_GB = 1e-6;

    private WholeGb() {}

    /** An amount in GB, rounded up. */
    static long of(double gb) {
        return (long) Math.ceil(gb - FORGIVEN_GB);
    }
}
