package rigbrief.search;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
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
    private final Map<List<Integer>, long[][]> known = new HashMap<>();

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

    /** The second drives that find a place beside each first one, by index. */
    long[][] beside(Unfinished it) {
        List<Integer> key = new ArrayList<>();
        for (Slot slot : DECIDED) {
            key.add(it.choices()[slot.ordinal()].index());
        }
        long[][] found = known.get(key);
        if (found == null) {
            found = compute(it);
            known.put(key, found);
        }
        return found;
    }

    private long[][] compute(Unfinished it) {
        long[][] beside = new long[firsts.size()][];
        for (int i = 0; i < firsts.size(); i++) {
            if (firstSort[i] == i) {
                beside[i] = new long[(seconds.size() + 63) / 64];
                it.decide(firsts.candidate(i));
                for (int j = 0; j < seconds.size(); j++) {
                    int like = secondSort[j];
                    boolean fits =
                            like < j
                                    ? SlotTable.has(beside[i], like)
                                    : fits(it, seconds.candidate(j));
                    beside[i][j >> 6] |= fits ? 1L << j : 0;
                }
                it.undo(Slot.SECOND_DRIVE);
            } else {
                beside[i] = beside[firstSort[i]];
            }
        }
        it.undo(Slot.DRIVE);
        return beside;
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
