package rigbrief.search;

import rigbrief.assess.Pricing;

/**
 * Coolers with fans in one case: a cooler that is quiet only with fans has to pay for them.
 * Mutable: filled anew for each case.
 */
final class Coolings extends KeptCouple {
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
    private int lastK;
    private int lastW;

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

    /** The same, with figures for each of the coolers that are left. */
    void begin(Bounder.AliveSets alive, long[] left) {
        any = false;
        clear(alive, left);
    }

    /**
     * Whether a cooler could be better than those seen for some figure.
     *
     * @param mostGain the most points it could have, fans left out
     */
    boolean couldPass(Bounder.AliveSets alive, int cooler, double mostGain) {
        long[] minor = coolers.candidate(cooler).minorBySet();
        int count = alive.count();
        // Whatever let the last cooler pass is likely to let this one.
        if (lastK < count && passes(alive.get(lastK), lastW, minor, mostGain)) {
            return true;
        }
        for (int k = 0; k < count; k++) {
            int s = alive.get(k);
            if (minor[s] + (fans.noneLeft() ? 0 : fans.least(s)) < least[s]) {
                return true;
            }
        }
        for (int w = 0; w < worth.length; w++) {
            double each = worth[w];
            double[] seen = net[w];
            double[] fansNet = fans.netOrNone(w);
            for (int k = 0; k < count; k++) {
                int s = alive.get(k);
                if (mostGain - each * minor[s] + fansNet[s] > seen[s]) {
                    lastK = k;
                    lastW = w;
                    return true;
                }
            }
        }
        return false;
    }

    private boolean passes(int s, int w, long[] minor, double mostGain) {
        return mostGain - worth[w] * minor[s] + fans.netOrNone(w)[s] > net[w][s];
    }

    /**
     * Takes a cooler in; false when neither with fans nor without will it do.
     *
     * @param all whether figures with each cooler are kept too
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
            long with = minor[s] + more;
            least[s] = Math.min(least[s], with);
            if (all) {
                leastWith(cooler, k, with);
            }
        }
        for (int w = 0; w < worth.length; w++) {
            double each = worth[w];
            double[] seen = net[w];
            double[] fansNet = fans.net(w);
            for (int k = 0; k < alive.count(); k++) {
                int s = alive.get(k);
                double most = Math.max(bare + fans.noneGain(), best + fansNet[s]);
                double with = gain - each * minor[s] + most;
                seen[s] = Math.max(seen[s], with);
                if (all) {
                    netWith(cooler, w, k, with);
                }
            }
        }
        any |= does;
        return does;
    }
}
