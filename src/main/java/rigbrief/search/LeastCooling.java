package rigbrief.search;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import rigbrief.assess.Pricing;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Coolers with fans in the case that is decided, where only money counts: the cheapest that are
 * cool and quiet enough together, asked for from the cheapest on until none can be cheaper.
 *
 * <p>Mutable: begun anew for what is left, and filled for each case.
 */
final class LeastCooling extends KeptCouple {
    /** So many fans are tried at a time; the others count as if they did. */
    private static final int MOST_FANS = 1_000;

    /** Coolers in cases of which is remembered which fans do. */
    private static final int MOST_KNOWN = 10_000;

    private final SlotTable coolers;
    private final SlotTable fans;
    private final PairTable pairs;
    private final SoundOutlook sound;
    private final double[] worth;
    private final int[] byPrice;
    private final long[] cheapest;
    private final int none;
    private final Map<Combination, Verdicts> known = new HashMap<>();
    private final long[] leastFans;
    private final double[][] netFans;
    private Bounder.AliveSets alive;
    private long[] coolersLeft;
    private long[] fansLeft;
    private long[] fansInCase;
    private boolean noneLeft;
    private long asked;
    private int fansTried;

    /** What it depends on whether fans will do, but for the fans. */
    private record Combination(int besidePair, int likeCase, int likeCooler, double tooLoud) {}

    /** Which fans were asked for, and which of them do. */
    private static final class Verdicts {
        private final long[] asked;
        private final long[] does;

        Verdicts(int fans) {
            asked = new long[(fans + 63) / 64];
            does = new long[asked.length];
        }
    }

    LeastCooling(
            SlotTable coolers,
            SlotTable fans,
            PairTable pairs,
            SoundOutlook sound,
            double[] worth,
            int sets) {
        super(coolers.size(), worth.length, sets);
        this.coolers = coolers;
        this.fans = fans;
        this.pairs = pairs;
        this.sound = sound;
        this.worth = worth;
        this.cheapest =
                IntStream.range(0, coolers.size())
                        .mapToLong(i -> Arrays.stream(minor(i)).min().orElse(0))
                        .toArray();
        this.byPrice =
                IntStream.range(0, coolers.size())
                        .boxed()
                        .sorted((a, b) -> Long.compare(cheapest[a], cheapest[b]))
                        .mapToInt(Integer::intValue)
                        .toArray();
        this.none =
                IntStream.range(0, fans.size())
                        .filter(i -> fans.candidate(i).none())
                        .findFirst()
                        .orElse(-1);
        this.leastFans = new long[sets];
        this.netFans = new double[worth.length][sets];
    }

    private long[] minor(int cooler) {
        return coolers.candidate(cooler).minorBySet();
    }

    /** Looks at what is left of both slots from now on, for some supplier sets. */
    void among(Bounder.AliveSets sets, long[] left, long[] leftOfFans) {
        fansTried = 0;
        alive = sets;
        coolersLeft = left;
        fansLeft = leftOfFans.clone();
        noneLeft = none >= 0 && SlotTable.has(fansLeft, none);
        for (int k = 0; k < sets.count(); k++) {
            int s = sets.get(k);
            for (int w = 0; w < worth.length; w++) {
                netFans[w][s] = fans.mostNet(fansLeft, s, w);
            }
        }
        if (noneLeft) {
            fansLeft[none >> 6] &= ~(1L << none);
        }
        for (int k = 0; k < sets.count(); k++) {
            int s = sets.get(k);
            leastFans[s] = Math.min(Pricing.notToBeHad(), fans.leastMinor(fansLeft, s));
        }
    }

    /** Least price of a cooler with fans, each by itself, for the k-th set alive. */
    private long apart(int cooler, int k) {
        int s = alive.get(k);
        return minor(cooler)[s] + (noneLeft ? 0 : leastFans[s]);
    }

    /** Least price over all coolers with fans, each by itself, for the k-th set alive. */
    long leastApart(int k) {
        int s = alive.get(k);
        return coolers.leastMinor(coolersLeft, s) + (noneLeft ? 0 : leastFans[s]);
    }

    /** Coolers asked for so far. */
    long asked() {
        return asked;
    }

    /** Fills the figures of the case that is decided. */
    void fill(Unfinished it, QuietEnough quiet) {
        clear(alive, coolersLeft);
        long[] least = new long[alive.count()];
        Arrays.fill(least, Long.MAX_VALUE);
        for (int cooler = 0; cooler < coolers.size(); cooler++) {
            for (int k = 0; SlotTable.has(coolersLeft, cooler) && k < alive.count(); k++) {
                leastWith(cooler, k, apart(cooler, k));
                for (int w = 0; w < worth.length; w++) {
                    int s = alive.get(k);
                    double gain = coolers.openGain(cooler) - worth[w] * minor(cooler)[s];
                    netWith(cooler, w, k, gain + netFans[w][s]);
                }
            }
        }
        lower(it, quiet, least, true);
        for (int k = 0; k < alive.count(); k++) {
            this.least[alive.get(k)] = least[k];
            for (double[] bySet : net) {
                bySet[alive.get(k)] = Double.POSITIVE_INFINITY;
            }
        }
    }

    /**
     * Lowers limits, for the k-th set alive, to what cooler and fans cost least in the case that is
     * decided, where that is less.
     */
    void lower(Unfinished it, QuietEnough quiet, long[] limit) {
        lower(it, quiet, limit, false);
    }

    private void lower(Unfinished it, QuietEnough quiet, long[] limit, boolean keeping) {
        Candidate pcCase = it.choices()[Slot.CASE.ordinal()];
        long[] row = pairs.row(pcCase, Slot.COOLER);
        fansInCase = fansLeft.clone();
        long[] fit = pairs.row(pcCase, Slot.FANS);
        for (int i = 0; fit != null && i < fit.length; i++) {
            fansInCase[i] &= fit[i];
        }
        long most = most(limit);
        for (int cooler : byPrice) {
            if (cheapest[cooler] >= most) {
                break;
            }
            boolean fits =
                    SlotTable.has(coolersLeft, cooler)
                            && (row == null || SlotTable.has(row, cooler));
            if (fits && cheaperApart(cooler, limit)) {
                look(it, quiet, cooler, limit);
                most = most(limit);
            }
            // Of a cooler that doesn't fit, any figure is true.
            for (int k = 0;
                    keeping && SlotTable.has(coolersLeft, cooler) && k < limit.length;
                    k++) {
                leastWith(cooler, k, Math.max(apart(cooler, k), limit[k]));
            }
        }
    }

    private static long most(long[] limit) {
        long most = Long.MIN_VALUE;
        for (long each : limit) {
            most = Math.max(most, each);
        }
        return most;
    }

    private boolean cheaperApart(int cooler, long[] limit) {
        for (int k = 0; k < limit.length; k++) {
            if (apart(cooler, k) < limit[k]) {
                return true;
            }
        }
        return false;
    }

    private void look(Unfinished it, QuietEnough quiet, int cooler, long[] limit) {
        asked++;
        long[] minor = minor(cooler);
        if (noneLeft && quiet.bare(cooler)) {
            for (int k = 0; k < limit.length; k++) {
                limit[k] = Math.min(limit[k], minor[alive.get(k)]);
            }
            return;
        }
        if (!quiet.atBest(cooler)) {
            return;
        }
        Verdicts verdicts = verdicts(it, quiet, cooler);
        for (int k = 0; k < limit.length; k++) {
            int s = alive.get(k);
            if (minor[s] + leastFans[s] < limit[k]) {
                long with = leastFans(quiet, verdicts, cooler, s, limit[k] - minor[s]);
                limit[k] = Math.min(limit[k], minor[s] + with);
            }
        }
    }

    /** The least price of fans that do with a cooler; at most a limit is as good. */
    private long leastFans(QuietEnough quiet, Verdicts verdicts, int cooler, int s, long limit) {
        for (int i : fans.byPrice(s)) {
            long price = fans.candidate(i).minorBySet()[s];
            if (price >= limit) {
                return limit;
            }
            if (SlotTable.has(fansInCase, i) && does(quiet, verdicts, cooler, sound.likeFans(i))) {
                return price;
            }
        }
        return limit;
    }

    private boolean does(QuietEnough quiet, Verdicts verdicts, int cooler, int some) {
        if (!SlotTable.has(verdicts.asked, some)) {
            if (fansTried >= MOST_FANS) {
                return true;
            }
            asked++;
            fansTried++;
            verdicts.asked[some >> 6] |= 1L << some;
            verdicts.does[some >> 6] |= quiet.with(cooler, some) ? 1L << some : 0;
        }
        return SlotTable.has(verdicts.does, some);
    }

    private Verdicts verdicts(Unfinished it, QuietEnough quiet, int cooler) {
        if (known.size() >= MOST_KNOWN) {
            known.clear(); // What is forgotten is asked for again.
        }
        return known.computeIfAbsent(
                new Combination(
                        sound.numberBesidePair(it),
                        sound.likeCase(it),
                        sound.likeCooler(cooler),
                        quiet.tooLoudEnergy()),
                any -> new Verdicts(fans.size()));
    }
}
