package rigbrief.model.speed;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How much slower work becomes when what it needs does not fit in memory.
 *
 * <p>Formula: factor = 1 + penalty x (needed / available - 1), and 1 while it fits.
 *
 * <p>Common practice: a straight line whose penalty is fitted for each workload; between a memory
 * and the next slower one lies a factor of ten and more, so beyond a small overflow the number is
 * only a warning.
 */
public final class MemoryOverflow {
    /** Needed over available memory for which the line is a fair guide. */
    public static final Range NEEDED_SHARE = new Range("needed over available memory", 0, 1.5, "");

    private MemoryOverflow() {}

    /**
     * Gives the factor on the time.
     *
     * @param neededGb memory needed, GB
     * @param availableGb memory there, GB, above 0
     * @param penalty added time for each whole memory too much, 0 or more
     * @return 1 or more
     * @throws IllegalArgumentException for a negative value or no memory
     */
    public static double factor(double neededGb, double availableGb, double penalty) {
        Expect.notNegative(neededGb, "neededGb");
        Expect.notNegative(penalty, "penalty");
        double over = neededGb / Expect.positive(availableGb, "availableGb") - 1;
        return over > 0 ? 1 + penalty * over : 1;
    }
}
