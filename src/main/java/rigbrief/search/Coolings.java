package rigbrief.search;

import rigbrief.assess.Pricing;

/**
 * Coolers with fans in the case that is decided: a cooler that is quiet only with fans has to pay
 * for them. Mutable: filled anew for each case.
 */
final class Coolings extends KeptCouple {
    private final SlotTable coolers;
    private final double[] worth;
    private final FansApart fans;

    Coolings(SlotTable coolers, double[] worth, int sets, FansApart fans) {
        super(coolers.size(), worth.length, sets);
        this.coolers = coolers;
        this.worth = worth;
        this.fans = fans;
    }

    /** Begins with no cooler seen. */
    void begin(Bounder.AliveSets alive, long[] left) {
        clear(alive, left);
    }

    /** Takes a cooler in; false when neither with fans nor without will it do. */
    boolean take(Bounder.AliveSets alive, int cooler, CoolerContest.Inside inside) {
        double best = inside.best(cooler);
        if (best == Double.NEGATIVE_INFINITY) {
            return false;
        }
        double gain = coolers.gain(cooler);
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
            leastWith(cooler, k, with);
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
                netWith(cooler, w, k, with);
            }
        }
        return does;
    }
}
