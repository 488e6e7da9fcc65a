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

/** Sorts the kits beside a pair by the least rate on any board; what is left of the supplies. */
final class FeedClasses {
    /** More would bound closer and take longer than that saves. Measured. */
    private static final int KIT_CLASSES = 3;

    private final Supply quietest;
    private final Supply loudest;
    private final long[][] kits;
    private final List<Foresight.Rates> rates;

    private FeedClasses(
            Supply quietest, Supply loudest, long[][] kits, List<Foresight.Rates> rates) {
        this.quietest = quietest;
        this.loudest = loudest;
        this.kits = kits;
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
        // Where quiet does not count, rates only decide what gets too hot.
        int classes = Math.min(sound.quietCounts() ? KIT_CLASSES : 1, sorted.size());
        int[] least = new int[classes];
        for (int r = 0; r < classes; r++) {
            least[r] = sorted.get(r * sorted.size() / classes);
        }
        int[] kitClass = new int[kits.size()];
        Arrays.fill(kitClass, -1);
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
        long[][] byClass = new long[classes][kitsLeft.length];
        for (int m = 0; m < rates.length; m++) {
            if (kitClass[m] >= 0) {
                byClass[kitClass[m]][m >> 6] |= 1L << m;
            }
        }
        List<Supply> bySound = bySound(it.pair(), sound, supplies, suppliesLeft);
        return new FeedClasses(bySound.get(0), bySound.get(bySound.size() - 1), byClass, ranges);
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

    private static List<Supply> bySound(
            Outlook.Pair pair, SoundOutlook sound, SlotTable supplies, long[] left) {
        List<Supply> sorted = new ArrayList<>();
        for (int i = 0; i < supplies.size(); i++) {
            if (SlotTable.has(left, i)) {
                sorted.add((Supply) supplies.candidate(i).partOrNull());
            }
        }
        sorted.sort(Comparator.comparingDouble(supply -> sound.supplyDba(pair, supply)));
        return sorted;
    }

    /** Kits of each class, as domains. */
    long[][] kits() {
        return kits;
    }

    /** Rates of each kit class. */
    List<Foresight.Rates> rates() {
        return rates;
    }

    /** The supply that sounds least beside the pair. */
    Supply quietest() {
        return quietest;
    }

    /** The supply that sounds most beside the pair. */
    Supply loudest() {
        return loudest;
    }
}
