package rigbrief.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import rigbrief.assess.Foresight;
import rigbrief.part.Board;
import rigbrief.part.Memory;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;

/** Sorts the supplies beside a pair by their sound and the kits by the least rate on any board. */
final class FeedClasses {
    /** More would bound closer and take longer than that saves. Measured. */
    private static final int SUPPLY_CLASSES = 1;

    private static final int KIT_CLASSES = 3;

    private final int[] supplyClass;
    private final List<Supply> quietest = new ArrayList<>();
    private final List<Supply> loudest = new ArrayList<>();
    private final int[] kitClass;
    private final List<Foresight.Rates> rates;

    private FeedClasses(int[] supplyClass, int[] kitClass, List<Foresight.Rates> rates) {
        this.supplyClass = supplyClass;
        this.kitClass = kitClass;
        this.rates = rates;
    }

    /** The classes of what is left beside a pair. */
    static FeedClasses of(
            Unfinished it,
            SoundOutlook sound,
            SlotTable supplies,
            long[] suppliesLeft,
            SlotTable kits,
            long[] kitsLeft,
            SlotTable boards,
            long[] boardsLeft) {
        int[] most = new int[kits.size()];
        int[] rates = rates(it, kits, kitsLeft, boards, boardsLeft, most);
        TreeSet<Integer> distinct = new TreeSet<>();
        for (int rate : rates) {
            if (rate > 0) {
                distinct.add(rate);
            }
        }
        List<Integer> sorted = List.copyOf(distinct);
        int classes = Math.min(KIT_CLASSES, sorted.size());
        int[] least = new int[classes];
        for (int r = 0; r < classes; r++) {
            least[r] = sorted.get(r * sorted.size() / classes);
        }
        int[] kitClass = new int[kits.size()];
        Arrays.fill(kitClass, Feeds.NO_CLASS);
        for (int m = 0; m < rates.length; m++) {
            for (int r = 0; r < classes; r++) {
                kitClass[m] = rates[m] >= least[r] ? r : kitClass[m];
            }
        }
        List<Foresight.Rates> ranges = new ArrayList<>();
        for (int r = 0; r < classes; r++) {
            int highest = least[r];
            for (int m = 0; m < rates.length; m++) {
                highest = kitClass[m] == r ? Math.max(highest, most[m]) : highest;
            }
            ranges.add(new Foresight.Rates(least[r], highest));
        }
        FeedClasses made = new FeedClasses(new int[supplies.size()], kitClass, ranges);
        made.sortSupplies(it.pair(), sound, supplies, suppliesLeft);
        return made;
    }

    /** The least rate of each kit on any board that is left, in MT/s; 0 where none takes it. */
    private static int[] rates(
            Unfinished it,
            SlotTable kits,
            long[] kitsLeft,
            SlotTable boards,
            long[] boardsLeft,
            int[] mostOf) {
        Processor processor = (Processor) it.part(Slot.PROCESSOR);
        int[] rates = new int[kits.size()];
        for (int m = 0; m < kits.size(); m++) {
            if (!SlotTable.has(kitsLeft, m)) {
                continue;
            }
            Memory memory = (Memory) kits.candidate(m).partOrNull();
            int modules = memory.modules() * kits.candidate(m).pieces();
            int most = Math.min(memory.mts(), processor.memoryMts(memory.type()));
            mostOf[m] = most * Math.min(modules, 2) / 2;
            int least = Integer.MAX_VALUE;
            for (int b = 0; b < boards.size(); b++) {
                Board board = (Board) boards.candidate(b).partOrNull();
                if (SlotTable.has(boardsLeft, b) && board.memoryType() == memory.type()) {
                    least = Math.min(least, Math.min(most, board.memoryMts(modules)));
                }
            }
            rates[m] = least == Integer.MAX_VALUE ? 0 : least * Math.min(modules, 2) / 2;
        }
        return rates;
    }

    private void sortSupplies(
            Outlook.Pair pair, SoundOutlook sound, SlotTable supplies, long[] left) {
        List<Integer> sorted = new ArrayList<>();
        double[] dba = new double[supplies.size()];
        for (int i = 0; i < supplies.size(); i++) {
            if (SlotTable.has(left, i)) {
                dba[i] = sound.supplyDba(pair, supply(supplies, i));
                sorted.add(i);
            }
        }
        sorted.sort(Comparator.<Integer>comparingDouble(i -> dba[i]).thenComparingInt(i -> i));
        double from = dba[sorted.get(0)];
        double width = (dba[sorted.get(sorted.size() - 1)] - from) / SUPPLY_CLASSES;
        int before = -1;
        for (int i : sorted) {
            int third =
                    width <= 0
                            ? 0
                            : (int)
                                    Math.min(
                                            SUPPLY_CLASSES - 1,
                                            Math.floor((dba[i] - from) / width));
            if (third != before) {
                quietest.add(supply(supplies, i));
                loudest.add(supply(supplies, i));
                before = third;
            }
            loudest.set(loudest.size() - 1, supply(supplies, i));
            supplyClass[i] = quietest.size() - 1;
        }
    }

    private static Supply supply(SlotTable supplies, int index) {
        return (Supply) supplies.candidate(index).partOrNull();
    }

    int[] supplyClass() {
        return supplyClass;
    }

    int[] kitClass() {
        return kitClass;
    }

    /** Number of supply classes. */
    int supplyClasses() {
        return quietest.size();
    }

    /** Rates of each kit class. */
    List<Foresight.Rates> rates() {
        return rates;
    }

    Supply quietest(int supplyClass) {
        return quietest.get(supplyClass);
    }

    Supply loudest(int supplyClass) {
        return loudest.get(supplyClass);
    }
}
