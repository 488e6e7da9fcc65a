package rigbrief.search;

import rigbrief.assess.Pricing;

/**
 * Coolers with fans in one case: a cooler that is quiet only with fans has to pay for them.
 * Mutable: filled anew for each case.
 */
final class Coolings extends Couple {
    /** What a cooler loses in the case; minus infinity where it won't do. */
    interface Inside {
        /** With the best fans. */
        double best(int cooler);

        /** Without any fans added. */
        double bare(int cooler);
    }

    private final SlotTable coolers;
    private final double[] worth;
    private final FansApart fans;
    private boolean any;

    Coolings(SlotTable coolers, double[] worth, int sets, FansApart fans) {
        super(coolers.size(), worth.length, sets);
        this.coolers = coolers;
        this.worth = worth;
        this.fans = fans;
    }

    /** Begins with no cooler seen. */
    void begin(Bounder.AliveSets alive) {
        any = false;
        clear(alive);
    }

    /**
     * Whether a cooler could be better than those seen for some figure.
     *
     * @param mostGain the most points it could have, fans left out
     */
    boolean couldPass(Bounder.AliveSets alive, int cooler, double mostGain) {
        long[] minor = coolers.candidate(cooler).minorBySet();
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            if (minor[s] + (fans.noneLeft() ? 0 : fans.least(s)) < least[s]) {
                return true;
            }
        }
        double none = fans.noneLeft() ? fans.noneGain() : Double.NEGATIVE_INFINITY;
        for (int w = 0; w < worth.length; w++) {
            double each = worth[w];
            double[] seen = net[w];
            double[] fansNet = fans.net(w);
            for (int k = 0; k < alive.count(); k++) {
                int s = alive.get(k);
                if (mostGain - each * minor[s] + Math.max(none, fansNet[s]) > seen[s]) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Takes a cooler in; false when neither with fans nor without will it do.
     *
     * @param all whether figures with each cooler are wanted too
     */
    boolean take(Bounder.AliveSets alive, int cooler, Inside inside, boolean all) {
        double best = inside.best(cooler);
        if (best == Double.NEGATIVE_INFINITY) {
            return false;
        }
        double gain = coolers.gain(cooler);
        // Fewer fans are no quieter and no cooler: where the best ones bring nothing, none don't.
        if (!all && any && !couldPass(alive, cooler, gain + best)) {
            return true;
        }
        double bare = fans.noneLeft() ? inside.bare(cooler) : Double.NEGATIVE_INFINITY;
        boolean bareDoes = bare != Double.NEGATIVE_INFINITY;
        boolean does = bareDoes;
        long[] minor = coolers.candidate(cooler).minorBySet();
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            long more = bareDoes ? 0 : fans.least(s);
            does |= more < Pricing.notToBeHad();
            leastWith[cooler][s] = minor[s] + more;
            least[s] = Math.min(least[s], leastWith[cooler][s]);
        }
        for (int w = 0; w < worth.length; w++) {
            double each = worth[w];
            double[] with = netWith[cooler][w];
            double[] seen = net[w];
            double[] fansNet = fans.net(w);
            for (int k = 0; k < alive.count(); k++) {
                int s = alive.get(k);
                double most = Math.max(bare + fans.noneGain(), best + fansNet[s]);
                with[s] = gain - each * minor[s] + most;
                seen[s] = Math.max(seen[s], with[s]);
            }
        }
        any |= does;
        return does;
    }
}
