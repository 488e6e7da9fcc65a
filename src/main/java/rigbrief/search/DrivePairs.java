package rigbrief.search;

import java.nio.LongBuffer;
import java.util.ArrayList;
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

    /** Second drives in an M.2 place and others. */
    private static final int SORTS = 2;

    /** Stands for no row: any second drive goes. */
    private static final long[] ANY = {};

    /** Least price and most net gain of some second drives, by set. */
    private record Best(long[] minor, double[][] net) {}

    /**
     * First drives that the same second ones go with, that lose the same beside a pair and take the
     * same places: of them the best for each supplier set and worth stands for all.
     */
    private static final class Cell {
        private final int first;
        private final long[] row;
        private final long[] place;
        private final int m2;
        private final long[] minor;
        private final double[][] net;

        Cell(int first, long[] row, long[] place, int m2, int worths, int sets) {
            this.first = first;
            this.row = row;
            this.place = place;
            this.m2 = m2;
            this.minor = new long[sets];
            this.net = new double[worths][sets];
            clear(minor, net);
        }
    }

    private final SlotTable firsts;
    private final double[] worth;
    private final double[] losses;
    private final double[][] placesLoss = new double[SORTS][SORTS];
    private final int[] cellOf;
    private final List<Cell> cells;
    private final Best[][] best;

    private DrivePairs(
            SlotTable firsts,
            double[] worth,
            int sets,
            double[] losses,
            PlacesLoss places,
            int[] cellOf,
            List<Cell> cells) {
        super(worth.length, sets);
        this.firsts = firsts;
        this.worth = worth;
        this.losses = losses;
        this.cellOf = cellOf;
        this.cells = cells;
        this.best = new Best[cells.size()][];
        for (int m2 = 0; m2 < SORTS; m2++) {
            for (int sort = 0; sort < SORTS; sort++) {
                placesLoss[m2][sort] = places.of(m2 > 0, sort > 0);
            }
        }
    }

    // Reckoned when asked: kept for every drive and supplier set they would fill the memory.
    @Override
    long leastWith(int first, int set) {
        long least = Long.MAX_VALUE;
        for (Best some : best[cellOf[first]]) {
            if (some != null) {
                least = Math.min(least, some.minor[set]);
            }
        }
        return least == Long.MAX_VALUE ? least : firsts.candidate(first).minorBySet()[set] + least;
    }

    @Override
    double netWith(int first, int w, int set) {
        double gain = losses == null ? firsts.openGain(first) : firsts.gain(first) + losses[first];
        return gain
                - worth[w] * firsts.candidate(first).minorBySet()[set]
                + beside(cellOf[first], w, set);
    }

    /** Most net gain of second drives beside a cell's first ones, places taken off. */
    private double beside(int cell, int w, int set) {
        double most = Double.NEGATIVE_INFINITY;
        for (int sort = 0; sort < SORTS; sort++) {
            Best some = best[cell][sort];
            if (some != null) {
                most = Math.max(most, placesLoss[cells.get(cell).m2][sort] + some.net[w][set]);
            }
        }
        return most;
    }

    /** Counts all first drives, as {@link #count} would each. */
    private void count(Bounder.AliveSets alive) {
        for (int c = 0; c < best.length; c++) {
            Cell cell = cells.get(c);
            double lost =
                    losses == null
                            ? 0
                            : firsts.gain(cell.first)
                                    + losses[cell.first]
                                    - firsts.openGain(cell.first);
            for (int sort = 0; sort < SORTS; sort++) {
                if (best[c][sort] != null) {
                    count(alive, cell, best[c][sort], lost + placesLoss[cell.m2][sort]);
                }
            }
        }
    }

    private void count(Bounder.AliveSets alive, Cell cell, Best with, double lost) {
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            least[s] = Math.min(least[s], cell.minor[s] + with.minor[s]);
        }
        for (int w = 0; w < net.length; w++) {
            double[] most = net[w];
            double[] first = cell.net[w];
            double[] second = with.net[w];
            for (int k = 0; k < alive.count(); k++) {
                int s = alive.get(k);
                double both = first[s] + lost + second[s];
                if (both > most[s]) {
                    most[s] = both;
                }
            }
        }
    }

    /** Bounds pairs of drives out of what is left of both slots. */
    static final class Bounds {
        /** Figures of cells to remember, eight bytes each; all are forgotten then. */
        private static final long MOST_FIGURES = 2_000_000;

        private final SlotTable firsts;
        private final SlotTable seconds;
        private final int[] classOf;
        private final PairTable pairs;
        private final double[] worth;
        private final int sets;
        private final long[] secondsInM2;
        private final Map<LongBuffer, Map<Object, Cells>> known = new HashMap<>();
        private long figures;

        private record Cells(int[] cellOf, List<Cell> cells) {}

        /**
         * Nothing yet.
         *
         * @param classOf number of a class of first drives that all lose the same beside a pair but
         *     for what is lost while the slot is open, by index
         */
        Bounds(
                SlotTable firsts,
                SlotTable seconds,
                int[] classOf,
                PairTable pairs,
                double[] worth,
                int sets) {
            this.firsts = firsts;
            this.seconds = seconds;
            this.classOf = classOf;
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
            Cells in = cells(firstLeft, beside);
            DrivePairs all =
                    new DrivePairs(firsts, worth, sets, firstLosses, places, in.cellOf, in.cells);
            clear(all.least, all.net);
            Map<LongBuffer, Best> bestOf = new HashMap<>();
            Map<long[], Map<long[], Best[]>> besideRow = new IdentityHashMap<>();
            for (int c = 0; c < all.best.length; c++) {
                Cell cell = in.cells.get(c);
                all.best[c] =
                        besideRow
                                .computeIfAbsent(cell.row, any -> new IdentityHashMap<>())
                                .computeIfAbsent(
                                        cell.place, any -> best(alive, secondLeft, cell, bestOf));
            }
            all.count(alive);
            return all;
        }

        private Cells cells(long[] firstLeft, DriveRoom.Beside beside) {
            if (figures > MOST_FIGURES) {
                known.clear();
                figures = 0;
            }
            return known.computeIfAbsent(
                            LongBuffer.wrap(firstLeft.clone()), any -> new IdentityHashMap<>())
                    .computeIfAbsent(
                            beside == null ? ANY : beside, any -> compute(firstLeft, beside));
        }

        private Cells compute(long[] firstLeft, DriveRoom.Beside beside) {
            int[] cellOf = new int[firsts.size()];
            List<Cell> cells = new ArrayList<>();
            // Rows are shared by like drives, so that the same array means the same second drives.
            Map<long[], Map<long[], Map<Integer, Integer>>> numbers = new IdentityHashMap<>();
            for (int i = 0; i < cellOf.length; i++) {
                if (SlotTable.has(firstLeft, i)) {
                    int first = i;
                    long[] own = pairs.row(firsts.candidate(i), Slot.SECOND_DRIVE);
                    long[] row = own == null ? ANY : own;
                    long[] place = beside == null ? ANY : beside.of(i);
                    int m2 = inM2(firsts.candidate(i)) ? 1 : 0;
                    cellOf[i] =
                            numbers.computeIfAbsent(row, any -> new IdentityHashMap<>())
                                    .computeIfAbsent(place, any -> new HashMap<>())
                                    .computeIfAbsent(
                                            SORTS * classOf[i] + m2,
                                            any -> {
                                                cells.add(
                                                        new Cell(
                                                                first,
                                                                row,
                                                                place,
                                                                m2,
                                                                worth.length,
                                                                sets));
                                                return cells.size() - 1;
                                            });
                    take(cells.get(cellOf[i]), i);
                }
            }
            figures += (long) cells.size() * sets * (1 + worth.length);
            return new Cells(cellOf, cells);
        }

        private void take(Cell cell, int first) {
            long[] minor = firsts.candidate(first).minorBySet();
            double gain = firsts.openGain(first);
            for (int s = 0; s < sets; s++) {
                cell.minor[s] = Math.min(cell.minor[s], minor[s]);
                for (int w = 0; w < worth.length; w++) {
                    cell.net[w][s] = Math.max(cell.net[w][s], gain - worth[w] * minor[s]);
                }
            }
        }

        /** The best second drives of each sort beside a cell's; null where none of a sort goes. */
        private Best[] best(
                Bounder.AliveSets alive, long[] left, Cell cell, Map<LongBuffer, Best> bestOf) {
            Best[] best = new Best[SORTS];
            for (int sort = 0; sort < SORTS; sort++) {
                long[] going = going(left, cell, sort > 0);
                if (!SlotTable.empty(going)) {
                    best[sort] =
                            bestOf.computeIfAbsent(
                                    LongBuffer.wrap(going), some -> best(alive, some.array()));
                }
            }
            return best;
        }

        /** The second drives of one sort that go with a first one and find a place beside it. */
        private long[] going(long[] left, Cell cell, boolean m2) {
            long[] going = left.clone();
            for (int k = 0; k < going.length; k++) {
                going[k] &= m2 ? secondsInM2[k] : ~secondsInM2[k];
                going[k] &= cell.row == ANY ? -1 : cell.row[k];
                going[k] &= cell.place == ANY ? -1 : cell.place[k];
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
