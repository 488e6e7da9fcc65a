package rigbrief.search;

/**
 * Supplies with memory, case, cooler and fans, beside a pair of processor and card: what a supply
 * and a rate of memory leave to case and cooler is known by class, so that no supply needs to be
 * tried for it.
 */
final class Feeds extends KeptCouple {
    /** Stands for a kit that no board takes. */
    static final int NO_CLASS = -1;

    /**
     * What is known of a pair.
     *
     * @param supplyClass class of each supply by its sound
     * @param kitClass class of each kit by its rate, or {@link #NO_CLASS}
     * @param least least price of case, cooler and fans, by supply class, kit class and supplier
     *     set
     * @param net most net gain of the same, by supply class, kit class, worth and supplier set
     */
    record Known(int[] supplyClass, int[] kitClass, long[][][] least, double[][][][] net) {}

    private final SlotTable supplies;
    private final SlotTable kits;
    private final double[] worth;
    private final int sets;

    Feeds(SlotTable supplies, SlotTable kits, double[] worth, int sets) {
        super(supplies.size(), worth.length, sets);
        this.supplies = supplies;
        this.kits = kits;
        this.worth = worth;
        this.sets = sets;
    }

    /**
     * Takes what is left of supplies and kits.
     *
     * @param supplyGain points of each supply while its slot is open
     * @param kitGain points of each kit while its slot is open
     */
    void fill(
            Bounder.AliveSets alive,
            Known known,
            long[] suppliesLeft,
            double[] supplyGain,
            long[] kitsLeft,
            double[] kitGain) {
        int classes = known.least().length;
        long[][] leastBelow = new long[classes][sets];
        double[][][] netBelow = new double[classes][worth.length][sets];
        for (int g = 0; g < classes; g++) {
            clear(leastBelow[g], netBelow[g]);
            for (int m = 0; m < kits.size(); m++) {
                int r = known.kitClass()[m];
                if (r != NO_CLASS && SlotTable.has(kitsLeft, m)) {
                    add(
                            alive,
                            kits.candidate(m).minorBySet(),
                            kitGain[m],
                            known.least()[g][r],
                            known.net()[g][r],
                            leastBelow[g],
                            netBelow[g]);
                }
            }
        }
        clear(alive, suppliesLeft);
        for (int i = 0; i < supplies.size(); i++) {
            if (SlotTable.has(suppliesLeft, i)) {
                int g = known.supplyClass()[i];
                take(alive, i, supplyGain[i], leastBelow[g], netBelow[g]);
            }
        }
    }

    /** Takes in a supply on top of what is below it. */
    private void take(
            Bounder.AliveSets alive,
            int supply,
            double gain,
            long[] leastBelow,
            double[][] netBelow) {
        long[] minor = supplies.candidate(supply).minorBySet();
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            if (leastBelow[s] != Long.MAX_VALUE) {
                leastWith(supply, k, minor[s] + leastBelow[s]);
            }
            for (int w = 0; w < worth.length; w++) {
                netWith(supply, w, k, gain - worth[w] * minor[s] + netBelow[w][s]);
            }
        }
        count(alive, supply);
    }

    /** Offers a kit on top of what is below it. */
    private void add(
            Bounder.AliveSets alive,
            long[] minor,
            double gain,
            long[] leastBelow,
            double[][] netBelow,
            long[] leastBest,
            double[][] netBest) {
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            if (leastBelow[s] != Long.MAX_VALUE) {
                leastBest[s] = Math.min(leastBest[s], minor[s] + leastBelow[s]);
            }
            for (int w = 0; w < worth.length; w++) {
                netBest[w][s] =
                        Math.max(netBest[w][s], gain - worth[w] * minor[s] + netBelow[w][s]);
            }
        }
    }
}
