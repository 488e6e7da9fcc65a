package rigbrief.search;

import java.nio.LongBuffer;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
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

    /** Stands for no row: any second drive goes. */
    private static final long[] ANY = {};

    /** Second drives in an M.2 place and others. */
    private static final int SORTS = 2;

    /** Least price and most net gain of some second drives, by set. */
    private record Best(long[] minor, double[][] net) {}

    private final SlotTable firsts;
    private final double[] worth;
    private final Best[] best;
    private final double[] gain;

    private DrivePairs(SlotTable firsts, double[] worth, int sets) {
        super(worth.length, sets);
        this.firsts = firsts;
        this.worth = worth;
        this.best = new Best[SORTS * firsts.size()];
        this.gain = new double[SORTS * firsts.size()];
    }

    // Reckoned when asked: kept for every drive and supplier set they would fill the memory.
    @Override
    long leastWith(int first, int set) {
        long least = Long.MAX_VALUE;
        for (int i = SORTS * first; i < SORTS * (first + 1); i++) {
            if (best[i] != null) {
                least = Math.min(least, best[i].minor[set]);
            }
        }
        return least == Long.MAX_VALUE ? least : firsts.candidate(first).minorBySet()[set] + least;
    }

    @Override
    double netWith(int first, int w, int set) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = SORTS * first; i < SORTS * (first + 1); i++) {
            if (best[i] != null) {
                most = Math.max(most, gain[i] + best[i].net[w][set]);
            }
        }
        return most - worth[w] * firsts.candidate(first).minorBySet()[set];
    }

    /** Counts all first drives that are left, as {@link #count} would each. */
    private void count(Bounder.AliveSets alive, long[] firstLeft, List<Best> seconds) {
        for (int k = 0; k < alive.count() && !seconds.isEmpty(); k++) {
            int s = alive.get(k);
            long below = Long.MAX_VALUE;
            for (Best best : seconds) {
                below = Math.min(below, best.minor[s]);
            }
            for (int i : firsts.byPrice(s)) {
                if (SlotTable.has(firstLeft, i)) {
                    // In the order of price: none behind can be better.
                    if (firsts.candidate(i).minorBySet()[s] + below >= least[s]) {
                        break;
                    }
                    least[s] = Math.min(least[s], leastWith(i, s));
                }
            }
            for (int w = 0; w < worth.length; w++) {
                double above = Double.NEGATIVE_INFINITY;
                for (Best best : seconds) {
                    above = Math.max(above, best.net[w][s]);
                }
                for (int i : firsts.byNet(w, s)) {
                    if (SlotTable.has(firstLeft, i)) {
                        double price = worth[w] * firsts.candidate(i).minorBySet()[s];
                        if (firsts.openGain(i) - price + above <= net[w][s]) {
                            break;
                        }
                        net[w][s] = Math.max(net[w][s], netWith(i, w, s));
                    }
                }
            }
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
         * @param alive supplier sets to look at; of the others nothing is known
         * @param firstLeft what is left of the first drive's slot
         * @param secondLeft what is left of the second drive's slot
         * @param firstLosses what each first drive is known to lose, by index; null for nothing
         * @param places what two drives lose together in places
         * @param beside second drives that find a place beside each first one; null for all
         */
        DrivePairs of(
                Bounder.AliveSets alive,
                long[] firstLeft,
                long[] secondLeft,
                double[] firstLosses,
                PlacesLoss places,
                DriveRoom.Beside beside) {
            DrivePairs all = new DrivePairs(firsts, worth, sets);
            clear(all.least, all.net);
            Map<LongBuffer, Best> known = new HashMap<>();
            // Rows are shared by like drives, so that the same array means the same second drives.
            Map<long[], Map<long[], Best[]>> groups = new IdentityHashMap<>();
            for (int i = 0; i < firsts.size(); i++) {
                if (SlotTable.has(firstLeft, i)) {
                    long[] row = pairs.row(firsts.candidate(i), Slot.SECOND_DRIVE);
                    long[] place = beside == null ? null : beside.of(i);
                    Best[] best =
                            groups.computeIfAbsent(
                                            row == null ? ANY : row,
                                            any -> new IdentityHashMap<>())
                                    .computeIfAbsent(
                                            place == null ? ANY : place,
                                            any -> best(alive, secondLeft, row, place, known));
                    boolean m2 = inM2(firsts.candidate(i));
                    double gain =
                            firstLosses == null
                                    ? firsts.openGain(i)
                                    : firsts.gain(i) + firstLosses[i];
                    for (int sort = 0; sort < SORTS; sort++) {
                        all.best[SORTS * i + sort] = best[sort];
                        all.gain[SORTS * i + sort] = gain + places.of(m2, sort > 0);
                    }
                }
            }
            all.count(alive, firstLeft, List.copyOf(known.values()));
            return all;
        }

        /** The best second drives of each sort; null where none of a sort goes. */
        private Best[] best(
                Bounder.AliveSets alive,
                long[] left,
                long[] row,
                long[] place,
                Map<LongBuffer, Best> known) {
            Best[] best = new Best[SORTS];
            for (int sort = 0; sort < SORTS; sort++) {
                long[] going = going(left, row, place, sort > 0);
                if (!SlotTable.empty(going)) {
                    best[sort] = known.computeIfAbsent(
                                    LongBuffer.wrap(going), some -> best(alive, some.array()));
                }
            }
            return best;
        }

        /** The second drives of one sort that go with a first one and find a place beside it. */
        private long[] going(long[] left, long[] row, long[] place, boolean m2) {
            long[] going = left.clone();
            for (int k = 0; k < going.length; k++) {
                going[k] &= m2 ? secondsInM2[k] : ~secondsInM2[k];
                going[k] &= row == null ? -1 : row[k];
                going[k] &= place == null ? -1 : place[k];
            }
            return going;
        }

        private Best best(Bounder.AliveSets alive, long[] some) {
            Best best = new Best(new long[sets], new double[worth.length][sets]);
            for (int k = 0; k < alive.count(); k++) {
                int s = alive.get(k);
                best.minor[s] = seconds.leastMinor(some, s);
                for (int w = 0; w < worth.length; w++) {
                    best.net[w][s] = seconds.mostNet(some, s, w);
                }
            }
            return best;
        }
    }
}
