package rigbrief.model.speed;

import rigbrief.model.Expect;

/**
 * How much faster work gets when a part of it is spread out.
 *
 * <p>Formula: fixed work 1 / ((1 - f) + f / n), at most 1 / (1 - f); work that grows with the
 * machine (1 - f) + f n.
 *
 * <p>Source: Amdahl's law in university course notes on computational physics; the second form is
 * Gustafson's, from memory.
 */
public final class Amdahl {
    private Amdahl() {}

    /**
     * Gives the speed-up of fixed work.
     *
     * @param parallelShare f, share of the work that can be spread, 0 to 1
     * @param factor n, how many times faster that share runs, 1 or more; may be infinite
     * @return times as fast
     * @throws IllegalArgumentException for a share outside 0 to 1 or a factor below 1
     */
    public static double speedUp(double parallelShare, double factor) {
        Expect.share(parallelShare, "parallelShare");
        return 1 / (1 - parallelShare + parallelShare / atLeastOne(factor));
    }

    /**
     * Gives the speed-up of work that grows with the machine.
     *
     * @param parallelShare f, share of the time on the machine that is spread, 0 to 1
     * @param factor n, how many workers share it, 1 or more
     * @return times the work in the same time
     * @throws IllegalArgumentException for a share outside 0 to 1 or a factor below 1
     */
    public static double scaledSpeedUp(double parallelShare, double factor) {
        Expect.share(parallelShare, "parallelShare");
        return 1 - parallelShare + parallelShare * atLeastOne(factor);
    }

    private static double atLeastOne(double factor) {
        if (!(factor >= 1)) {
            throw new IllegalArgumentException(
                    "factor: found %s, expected 1 or more; give how many times faster it runs"
                            .formatted(factor));
        }
        return factor;
    }
}
