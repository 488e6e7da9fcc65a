package rigbrief.search;

import rigbrief.assess.Pricing;

/**
 * What fans cost and gain by themselves, by supplier set: none at all, and the best there are.
 * Mutable: taken anew whenever something is decided.
 */
final class FansApart {
    private final SlotTable fans;
    private final double[] worth;
    private final int none;
    private boolean noneLeft;
    private double noneGain;
    private final long[] least;
    private final double[][] net;
    private final double[][] netOrNone;

    FansApart(SlotTable fans, double[] worth, int sets) {
        this.fans = fans;
        this.worth = worth;
        this.least = new long[sets];
        this.net = new double[worth.length][sets];
        this.netOrNone = new double[worth.length][sets];
        int index = -1;
        for (int i = 0; i < fans.size(); i++) {
            index = fans.candidate(i).none() ? i : index;
        }
        this.none = index;
    }

    /** Whether there may be no fans at all. */
    boolean noneLeft() {
        return noneLeft;
    }

    /** Points of no fans at all. */
    double noneGain() {
        return noneGain;
    }

    /** Least price of fans, by supplier set. */
    long least(int set) {
        return least[set];
    }

    /** Most net gain of fans at a worth, by supplier set. */
    double[] net(int w) {
        return net[w];
    }

    /** The same or none at all, whichever is more. */
    double[] netOrNone(int w) {
        return netOrNone[w];
    }

    /** Fans that are left of an open slot. */
    void take(Bounder.AliveSets alive, long[] left) {
        noneLeft = none >= 0 && SlotTable.has(left, none);
        noneGain = noneLeft ? fans.openGain(none) : 0;
        long[] some = left.clone();
        if (noneLeft) {
            some[none >> 6] &= ~(1L << none);
        }
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            least[s] = Math.min(Pricing.notToBeHad(), fans.leastMinor(some, s));
            for (int w = 0; w < worth.length; w++) {
                net[w][s] = fans.mostNet(some, s, w);
                netOrNone[w][s] = noneLeft ? Math.max(noneGain, net[w][s]) : net[w][s];
            }
        }
    }
}
