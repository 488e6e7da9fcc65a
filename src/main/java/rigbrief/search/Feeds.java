package rigbrief.search;

/**
 * Supplies with memory, case, cooler and fans, beside a pair of processor and card: what a supply
 * and a rate of memory leave to case and cooler is known by class of rates, and for all supplies at
 * once, so that none of them needs to be tried for it.
 */
final class Feeds extends Couple {
    /**
     * What is known of a pair.
     *
     * @param kits kits of each class by their rate, as domains
     * @param least least price of case, cooler and fans, by class and supplier set
     * @param net most net gain of the same, by class, worth and supplier set
     */
    record Known(long[][] kits, long[][] least, double[][][] net) {}

    /**
     * What is left of a slot.
     *
     * @param domain candidates that are left
     * @param losses what each of them is known to lose by now; null for nothing
     */
    record Left(long[] domain, double[] losses) {}

    private final SlotTable supplies;
    private final SlotTable kits;
    private final double[] worth;
    private final double[] supplyGain;
    private final long[] leastBelow;
    private final double[][] netBelow;

    Feeds(SlotTable supplies, SlotTable kits, double[] worth, int sets) {
        super(worth.length, sets);
        this.supplies = supplies;
        this.kits = kits;
        this.worth = worth;
        this.supplyGain = new double[supplies.size()];
        this.leastBelow = new long[sets];
        this.netBelow = new double[worth.length][sets];
    }

    @Override
    long leastWith(int supply, int set) {
        return leastBelow[set] == Long.MAX_VALUE
                ? Long.MAX_VALUE
                : supplies.candidate(supply).minorBySet()[set] + leastBelow[set];
    }

    @Override
    double netWith(int supply, int w, int set) {
        return supplyGain[supply]
                - worth[w] * supplies.candidate(supply).minorBySet()[set]
                + netBelow[w][set];
    }

    /** Takes what is left of supplies and kits, for the supplier sets that are alive. */
    void fill(Bounder.AliveSets alive, Known known, Left suppliesLeft, Left kitsLeft) {
        for (int i = 0; i < supplyGain.length; i++) {
            supplyGain[i] =
                    suppliesLeft.losses() == null
                            ? supplies.openGain(i)
                            : supplies.gain(i) + suppliesLeft.losses()[i];
        }
        clear(least, net);
        clear(leastBelow, netBelow);
        for (int r = 0; r < known.kits().length; r++) {
            long[] some = kitsLeft.domain().clone();
            for (int i = 0; i < some.length; i++) {
                some[i] &= known.kits()[r][i];
            }
            if (!SlotTable.empty(some)) {
                offer(alive, new Left(some, kitsLeft.losses()), known.least()[r], known.net()[r]);
            }
        }
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            if (leastBelow[s] != Long.MAX_VALUE) {
                least[s] = supplies.leastMinor(suppliesLeft.domain(), s) + leastBelow[s];
            }
            for (int w = 0; w < worth.length; w++) {
                net[w][s] =
                        supplies.mostNet(suppliesLeft.domain(), s, w, suppliesLeft.losses())
                                + netBelow[w][s];
            }
        }
    }

    /** Offers the kits of a class on top of what is below them. */
    private void offer(Bounder.AliveSets alive, Left some, long[] leastOf, double[][] netOf) {
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            if (leastOf[s] != Long.MAX_VALUE) {
                long minor = kits.leastMinor(some.domain(), s);
                leastBelow[s] = Math.min(leastBelow[s], minor + leastOf[s]);
            }
            for (int w = 0; w < worth.length; w++) {
                double most = kits.mostNet(some.domain(), s, w, some.losses());
                netBelow[w][s] = Math.max(netBelow[w][s], most + netOf[w][s]);
            }
        }
    }
}
