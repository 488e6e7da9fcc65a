package rigbrief.model.power;

import rigbrief.model.Expect;

/**
 * What one mains circuit bears for hours, and what a machine takes of it.
 *
 * <p>Formula: continuous limit = breaker current x voltage x share; mains current = load /
 * efficiency / (voltage x power factor).
 *
 * <p>Source: NEC (NFPA 70) 210.19(A)(1), a load of three hours or more stays within 80 % of the
 * overcurrent device; the 80 % is the rule of that code alone. Every statement defers to local
 * codes and licensed practice.
 */
public final class CircuitLoad {
    /** The share of a North American branch circuit for a load of three hours or more. */
    public static final double NORTH_AMERICAN_SHARE = 0.8;

    /** The sentence that goes with every statement about a circuit. */
    public static final String DEFERRAL =
            "Local electrical codes, the equipment's instructions and licensed practice decide.";

    private static final long MILLIWATTS = 1_000;

    private CircuitLoad() {}

    /**
     * A load set against a circuit.
     *
     * @param loadMw everything on the circuit, mW
     * @param limitMw what the circuit bears for hours, mW
     * @param text the statement, the deferral included
     */
    public record Statement(long loadMw, long limitMw, String text) {
        /**
         * Tells whether the load is within the limit, equality allowed.
         *
         * @return true when it is
         */
        public boolean fits() {
            return loadMw <= limitMw;
        }
    }

    /**
     * Gives what a circuit bears for hours.
     *
     * @param breakerA rating of the overcurrent device, A
     * @param mainsV nominal voltage, V
     * @param share share of the rating, above 0 to 1
     * @return W
     * @throws IllegalArgumentException for a value that is not above 0
     */
    public static double continuousW(double breakerA, double mainsV, double share) {
        Expect.positive(breakerA, "breakerA");
        Expect.positive(mainsV, "mainsV");
        return breakerA * mainsV * Expect.positive(Expect.share(share, "share"), "share");
    }

    /**
     * Gives the mains current of a load.
     *
     * @param acW mains power, W
     * @param mainsV voltage, V
     * @param powerFactor real over apparent power, above 0 to 1
     * @return A
     * @throws IllegalArgumentException for a negative power or a factor outside 0 to 1
     */
    public static double mainsA(double acW, double mainsV, double powerFactor) {
        Expect.notNegative(acW, "acW");
        Expect.positive(Expect.share(powerFactor, "powerFactor"), "powerFactor");
        return acW / (Expect.positive(mainsV, "mainsV") * powerFactor);
    }

    /**
     * Sets a load against a circuit.
     *
     * @param acW everything on the circuit, W
     * @param breakerA rating of the overcurrent device, A
     * @param mainsV nominal voltage, V
     * @param share share of the rating for a load of hours
     * @return the statement, deferral included
     * @throws IllegalArgumentException as for {@link #continuousW}
     */
    public static Statement statement(double acW, double breakerA, double mainsV, double share) {
        long loadMw = Math.round(Expect.notNegative(acW, "acW") * MILLIWATTS);
        long limitMw = Math.round(continuousW(breakerA, mainsV, share) * MILLIWATTS);
        String text =
                "%d W of the %d W that the circuit bears for hours. %s"
                        .formatted(toWatts(loadMw), toWatts(limitMw), DEFERRAL);
        return new Statement(loadMw, limitMw, text);
    }

    private static long toWatts(long milliwatts) {
        return Math.round((double) milliwatts / MILLIWATTS);
    }
}
