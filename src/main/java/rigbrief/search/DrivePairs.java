package rigbrief.search;

import java.nio.LongBuffer;
import java.util.HashMap;
import java.util.Map;
import rigbrief.part.Drive;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * The least that both drives cost together, and the most they gain, by supplier set: over all first
 * drives, and with each of them.
 *
 * <p>A small first drive is cheap and so is no second one, but not both at once.
 */
final class DrivePairs extends Couple {
    /** Points that both drives lose in places on a board. */
    interface PlacesLoss {
        double of(boolean firstInM2, boolean secondInM2);
    }

    static final PlacesLoss NO_LOSS = (first, second) -> 0;

    private DrivePairs(int drives, int worths, int sets) {
        super(drives, worths, sets);
        clear(least, net);
        for (int i = 0; i < drives; i++) {
            clear(leastWith[i], netWith[i]);
        }
    }

    /** Bounds pairs of drives out of what is left of both slots. */
    static final class Bounds {
        private final SlotTable firsts;
        private final SlotTable seconds;
        private final PairTable pairs;
        private final double[] worth;
        private final int sets;
        private final long[] secondsInM2;

        Bounds(SlotTable firsts, SlotTable seconds, PairTable pairs, double[] worth, int sets) {
            this.firsts = firsts;
            this.seconds = seconds;
            this.pairs = pairs;
            this.worth = worth;
            this.sets = sets;
            this.secondsInM2 = new long[(seconds.size() + 63) / 64];
            for (int j = 0; j < seconds.size(); j++) {
                if (inM2(seconds.candidate(j))) {
                    secondsInM2[j >> 6] |= 1L << j;
                }
            }
        }

        private static boolean inM2(Candidate candidate) {
            return !candidate.none() && ((Drive) candidate.partOrNull()).form().m2();
        }

        /**
         * The bounds.
         *
         * @param firstLeft what is left of the first drive's slot
         * @param secondLeft what is left of the second drive's slot
         * @param firstGain points of each first drive while its slot is open
         * @param places what two drives lose together in places
         * @param beside second drives that find a place beside each first one; null for all
         */
        DrivePairs of(
                long[] firstLeft,
                long[] secondLeft,
                double[] firstGain,
                PlacesLoss places,
                long[][] beside) {
            DrivePairs all = new DrivePairs(firsts.size(), worth.length, sets);
            Map<LongBuffer, Best> known = new HashMap<>();
            for (int i = 0; i < firsts.size(); i++) {
                if (SlotTable.has(firstLeft, i)) {
                    long[] row = pairs.row(firsts.candidate(i), Slot.SECOND_DRIVE);
                    boolean m2 = inM2(firsts.candidate(i));
                    for (boolean secondM2 : new boolean[] {false, true}) {
                        double gain = firstGain[i] + places.of(m2, secondM2);
                        long[] going = going(secondLeft, row, secondM2);
                        for (int k = 0; beside != null && k < going.length; k++) {
                            going[k] &= beside[i][k];
                        }
                        if (!SlotTable.empty(going)) {
                            add(
                                    all,
                                    i,
                                    known.computeIfAbsent(LongBuffer.wrap(going), this::best),
                                    gain);
                        }
                    }
                    sumUp(all, i);
                }
            }
            return all;
        }

        /** The second drives of one sort that go with a first one. */
        private long[] going(long[] left, long[] row, boolean m2) {
            long[] going = left.clone();
            for (int k = 0; k < going.length; k++) {
                going[k] &= m2 ? secondsInM2[k] : ~secondsInM2[k];
                going[k] &= row == null ? -1 : row[k];
            }
            return going;
        }

        /** Least price and most net gain of some second drives, by set. */
        private record Best(long[] minor, double[][] net) {}

        private Best best(LongBuffer going) {
            long[] some = going.array();
            Best best = new Best(new long[sets], new double[worth.length][sets]);
            for (int s = 0; s < sets; s++) {
                best.minor[s] = seconds.leastMinor(some, s);
                for (int w = 0; w < worth.length; w++) {
                    best.net[w][s] = seconds.mostNet(some, s, w);
                }
            }
            return best;
        }

        private void add(DrivePairs all, int i, Best best, double gain) {
            long[] minor = firsts.candidate(i).minorBySet();
            for (int s = 0; s < sets; s++) {
                all.leastWith[i][s] = Math.min(all.leastWith[i][s], minor[s] + best.minor[s]);
                for (int w = 0; w < worth.length; w++) {
                    double net = gain - worth[w] * minor[s] + best.net[w][s];
                    all.netWith[i][w][s] = Math.max(all.netWith[i][w][s], net);
                }
            }
        }

        private void sumUp(DrivePairs all, int i) {
            for (int s = 0; s < sets; s++) {
                all.least[s] = Math.min(all.least[s], all.leastWith[i][s]);
                for (int w = 0; w < worth.length; w++) {
                    all.net[w][s] = Math.max(all.net[w][s], all.netWith[i][w][s]);
                }
            }
        }
    }
}
