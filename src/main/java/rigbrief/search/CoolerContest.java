package rigbrief.search;

import java.util.Arrays;
import rigbrief.assess.Pricing;

/**
 * Finds out what the best coolers with fans come to in one case, for every worth and supplier set:
 * a cooler's level is asked for only where by what is known it could be better than the best.
 *
 * <p>A cooler that is quiet only with fans has to pay for them. Mutable: begun anew for each case.
 */
final class CoolerContest {
    /** What a cooler loses in the case; minus infinity where it won't do. */
    interface Inside {
        /** No less than any cooler loses by its sound; asked where only the best case counts. */
        double mostOfAll();

        /** With the best fans. */
        double best(int cooler);

        /** Without any fans added. */
        double bare(int cooler);

        /** No less than with the best fans, by what is known by now. */
        double most(int cooler);

        /** No less than without any fans added, by what is known by now. */
        double mostBare(int cooler);
    }

    private final SlotTable coolers;
    private final double[] worth;
    private final FansApart fans;
    private final double[] gain;
    private final int[] priced;
    private int time;
    private long asked;
    private Bounder.AliveSets alive;
    private int count;
    private final long[][] minor;
    private final double[][] cheapest;
    private final long[] least;
    private final double[][] net;
    private final Bar withFans;
    private final Bar bare;

    /** What a cooler has to pass, with fans or without, for the k-th set alive. */
    private static final class Bar {
        private final long[] least;
        private final double[][] net;
        private final double[] lowest;
        private int lastW;

        Bar(int worths, int sets) {
            least = new long[sets];
            net = new double[worths][sets];
            lowest = new double[worths];
        }
    }

    CoolerContest(SlotTable coolers, double[] worth, int sets, FansApart fans) {
        this.coolers = coolers;
        this.worth = worth;
        this.fans = fans;
        this.gain = new double[coolers.size()];
        this.priced = new int[coolers.size()];
        this.minor = new long[coolers.size()][];
        this.cheapest = new double[coolers.size()][worth.length];
        this.least = new long[sets];
        this.net = new double[worth.length][sets];
        this.withFans = new Bar(worth.length, sets);
        this.bare = new Bar(worth.length, sets);
        for (int i = 0; i < gain.length; i++) {
            gain[i] = coolers.gain(i);
        }
    }

    /** Looks at some supplier sets from now on. */
    void among(Bounder.AliveSets sets) {
        alive = sets;
        count = sets.count();
        time++;
    }

    /** Begins a case with no cooler seen. */
    void begin() {
        for (int k = 0; k < count; k++) {
            least[k] = Long.MAX_VALUE;
        }
        for (double[] each : net) {
            Arrays.fill(each, 0, count, Double.NEGATIVE_INFINITY);
        }
        raise();
    }

    /** Begins a case as if a cooler of such figures had been seen. */
    void begin(Couple best, long[] caseMinor, double caseGain) {
        for (int k = 0; k < count; k++) {
            int s = alive.get(k);
            least[k] =
                    best.least(s) == Long.MAX_VALUE ? Long.MAX_VALUE : best.least(s) - caseMinor[s];
            for (int w = 0; w < worth.length; w++) {
                net[w][k] = best.net(w, s) - (caseGain - worth[w] * caseMinor[s]);
            }
        }
        raise();
    }

    /** Least price of cooler and fans for the k-th set alive. */
    long least(int k) {
        return least[k];
    }

    /** Most net gain of cooler and fans at a worth for the k-th set alive. */
    double net(int w, int k) {
        return net[w][k];
    }

    private void raise() {
        for (int k = 0; k < count; k++) {
            least(k, least[k]);
        }
        for (int w = 0; w < worth.length; w++) {
            raise(w);
        }
    }

    private void least(int k, long minor) {
        least[k] = minor;
        bare.least[k] = minor;
        withFans.least[k] = minor == Long.MAX_VALUE ? minor : minor - fans.least(alive.get(k));
    }

    private void raise(int w) {
        double lowestWith = Double.POSITIVE_INFINITY;
        double lowestBare = Double.POSITIVE_INFINITY;
        double[] fansNet = fans.net(w);
        for (int k = 0; k < count; k++) {
            double with = net[w][k] - fansNet[alive.get(k)];
            double without = net[w][k] - fans.noneGain();
            withFans.net[w][k] = with;
            bare.net[w][k] = without;
            lowestWith = Math.min(lowestWith, with);
            lowestBare = Math.min(lowestBare, without);
        }
        withFans.lowest[w] = lowestWith;
        bare.lowest[w] = lowestBare;
    }

    private void price(int cooler) {
        priced[cooler] = time;
        long[] all = coolers.candidate(cooler).minorBySet();
        if (minor[cooler] == null || minor[cooler].length < count) {
            minor[cooler] = new long[count];
        }
        for (int k = 0; k < count; k++) {
            minor[cooler][k] = all[alive.get(k)];
        }
        long low = Long.MAX_VALUE;
        for (int k = 0; k < count; k++) {
            low = Math.min(low, minor[cooler][k]);
        }
        for (int w = 0; w < worth.length; w++) {
            cheapest[cooler][w] = worth[w] * low;
        }
    }

    private boolean passes(int cooler, double points, Bar bar) {
        return passes(cooler, points, bar, bar.lastW)
                || cheaper(cooler, bar)
                || passesAny(cooler, points, bar);
    }

    private boolean passesAny(int cooler, double points, Bar bar) {
        for (int w = 0; w < worth.length; w++) {
            if (passes(cooler, points, bar, w)) {
                bar.lastW = w;
                return true;
            }
        }
        return false;
    }

    private boolean passes(int cooler, double points, Bar bar, int w) {
        if (points - cheapest[cooler][w] <= bar.lowest[w]) {
            return false;
        }
        double each = worth[w];
        long[] of = minor[cooler];
        double[] over = bar.net[w];
        for (int k = 0; k < count; k++) {
            if (points - each * of[k] > over[k]) {
                return true;
            }
        }
        return false;
    }

    private boolean cheaper(int cooler, Bar bar) {
        long[] of = minor[cooler];
        for (int k = 0; k < count; k++) {
            if (of[k] < bar.least[k]) {
                return true;
            }
        }
        return false;
    }

    /**
     * Takes a cooler in where it could be better than those seen for some figure.
     *
     * @param most no less than it loses with the best fans
     */
    void offer(int cooler, double most, Inside inside) {
        if (most == Double.NEGATIVE_INFINITY) {
            return;
        }
        if (priced[cooler] != time) {
            price(cooler);
        }
        double best = Double.NEGATIVE_INFINITY;
        double atMost = most;
        if (passes(cooler, gain[cooler] + most, withFans)) {
            atMost = Math.min(most, inside.most(cooler));
            if (atMost != Double.NEGATIVE_INFINITY
                    && passes(cooler, gain[cooler] + atMost, withFans)) {
                best = best(cooler, inside);
                atMost = best;
            }
        }
        // Fewer fans are no quieter and no cooler: where the best ones bring nothing, none don't.
        double without = Double.NEGATIVE_INFINITY;
        if (atMost != Double.NEGATIVE_INFINITY
                && fans.noneLeft()
                && passes(cooler, gain[cooler] + atMost, bare)) {
            double mostBare = Math.min(atMost, inside.mostBare(cooler));
            if (mostBare != Double.NEGATIVE_INFINITY
                    && passes(cooler, gain[cooler] + mostBare, bare)) {
                without = bare(cooler, inside);
            }
        }
        take(cooler, best, without);
    }

    /** Takes a cooler in; false when neither with fans nor without will it do. */
    boolean take(int cooler, Inside inside) {
        if (priced[cooler] != time) {
            price(cooler);
        }
        double best = best(cooler, inside);
        double without =
                best != Double.NEGATIVE_INFINITY && fans.noneLeft()
                        ? bare(cooler, inside)
                        : Double.NEGATIVE_INFINITY;
        return take(cooler, best, without);
    }

    private double best(int cooler, Inside inside) {
        asked++;
        return inside.best(cooler);
    }

    private double bare(int cooler, Inside inside) {
        asked++;
        return inside.bare(cooler);
    }

    /** How many levels were asked for so far. */
    long asked() {
        return asked;
    }

    private boolean take(int cooler, double best, double without) {
        boolean bareDoes = without != Double.NEGATIVE_INFINITY;
        if (!bareDoes && best == Double.NEGATIVE_INFINITY) {
            return false;
        }
        boolean does = bareDoes;
        for (int k = 0; k < count; k++) {
            long more = bareDoes ? 0 : fans.least(alive.get(k));
            does |= more < Pricing.notToBeHad();
            long with = minor[cooler][k] + more;
            if (with < least[k]) {
                least(k, with);
            }
        }
        for (int w = 0; w < worth.length; w++) {
            double each = worth[w];
            long[] of = minor[cooler];
            double[] fansNet = fans.net(w);
            double[] seen = net[w];
            boolean raised = false;
            for (int k = 0; k < count; k++) {
                double with =
                        gain[cooler]
                                - each * of[k]
                                + Math.max(without + fans.noneGain(), best + fansNet[alive.get(k)]);
                if (with > seen[k]) {
                    seen[k] = with;
                    raised = true;
                }
            }
            if (raised) {
                raise(w);
            }
        }
        return does;
    }
}
