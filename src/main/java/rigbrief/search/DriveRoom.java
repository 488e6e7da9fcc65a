package rigbrief.search;

import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigbrief.part.Drive;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;

/**
 * Which second drives find a place beside which first ones on a board in a case.
 *
 * <p>Rules about places ask a drive for its form and its bus alone, so that one drive of each such
 * sort is asked for all.
 */
final class DriveRoom {
    private static final Set<Slot> BOTH = EnumSet.of(Slot.DRIVE, Slot.SECOND_DRIVE);
    private static final Set<Slot> DECIDED =
            EnumSet.of(Slot.PROCESSOR, Slot.GRAPHICS, Slot.BOARD, Slot.CASE);

    private final List<Rule> rules = new ArrayList<>();
    private final SlotTable firsts;
    private final SlotTable seconds;
    private final int[] firstSort;
    private final int[] secondSort;
    private final Map<List<Integer>, Beside> known = new HashMap<>();
    private final Map<List<LongBuffer>, Beside> different = new HashMap<>();

    /** Second drives that find a place beside first ones; the same object for the same places. */
    static final class Beside {
        private final int[] firstSort;
        private final Map<Integer, long[]> bySort;

        private Beside(int[] firstSort, Map<Integer, long[]> bySort) {
            this.firstSort = firstSort;
            this.bySort = bySort;
        }

        /** Those beside one first drive, by index. */
        long[] of(int first) {
            return bySort.get(firstSort[first]);
        }
    }

    DriveRoom(Problem problem, SlotTable firsts, SlotTable seconds) {
        this.firsts = firsts;
        this.seconds = seconds;
        this.firstSort = sorts(firsts);
        this.secondSort = sorts(seconds);
        Set<Slot> most = EnumSet.copyOf(BOTH);
        most.addAll(DECIDED);
        for (Rule rule : problem.rules()) {
            Set<Slot> reads = rule.reads();
            if (reads.size() > 2 && reads.containsAll(BOTH) && most.containsAll(reads)) {
                rules.add(rule);
            }
        }
    }

    private static int[] sorts(SlotTable table) {
        Map<Object, Integer> first = new HashMap<>();
        int[] sorts = new int[table.size()];
        for (int i = 0; i < sorts.length; i++) {
            Candidate candidate = table.candidate(i);
            Object sort = "none";
            if (!candidate.none()) {
                Drive drive = (Drive) candidate.partOrNull();
                sort = List.of(drive.form(), drive.bus());
            }
            sorts[i] = first.computeIfAbsent(sort, any -> candidate.index());
        }
        return sorts;
    }

    /** Whether everything that places depend on is decided. */
    static boolean decided(Unfinished it) {
        for (Slot slot : DECIDED) {
            if (!it.has(slot)) {
                return false;
            }
        }
        return true;
    }

    /** The second drives that find a place beside each first one. */
    Beside beside(Unfinished it) {
        List<Integer> key = new ArrayList<>();
        for (Slot slot : DECIDED) {
            key.add(it.choices()[slot.ordinal()].index());
        }
        Beside found = known.get(key);
        if (found == null) {
            Map<Integer, long[]> bySort = compute(it);
            List<LongBuffer> rows = bySort.values().stream().map(LongBuffer::wrap).toList();
            found = different.computeIfAbsent(rows, any -> new Beside(firstSort, bySort));
            known.put(key, found);
        }
        return found;
    }

    private Map<Integer, long[]> compute(Unfinished it) {
        Map<Integer, long[]> bySort = new LinkedHashMap<>();
        for (int i = 0; i < firsts.size(); i++) {
            if (firstSort[i] == i) {
                long[] row = new long[(seconds.size() + 63) / 64];
                it.decide(firsts.candidate(i));
                for (int j = 0; j < seconds.size(); j++) {
                    int like = secondSort[j];
                    boolean fits =
                            like < j ? SlotTable.has(row, like) : fits(it, seconds.candidate(j));
                    row[j >> 6] |= fits ? 1L << j : 0;
                }
                it.undo(Slot.SECOND_DRIVE);
                bySort.put(i, row);
            }
        }
        it.undo(Slot.DRIVE);
        return bySort;
    }

    private boolean fits(Unfinished it, Candidate second) {
        it.decide(second);
        for (Rule rule : rules) {
            if (rule.forbids(rule.check(it.assessment()))) {
                return false;
            }
        }
        return true;
    }
}
