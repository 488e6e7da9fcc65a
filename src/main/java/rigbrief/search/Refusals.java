package rigbrief.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;

/**
 * Which candidates of an open slot rules refuse beside what is decided, asked once: the same case
 * with the same cooler comes up beside many boards. Mutable.
 */
final class Refusals {
    /** Rules about more slots seldom meet the same parts again. */
    static final int MOST_SLOTS = 5;

    /** Answers to remember, by what is decided; all are forgotten then, and asked again. */
    private static final int MOST_ROWS = 20_000;

    private final Problem problem;
    private final Map<Rule, Map<List<Object>, Row>> known = new IdentityHashMap<>();
    private final Map<Rule, Map<Slot, int[]>> like = new IdentityHashMap<>();
    private int rows;

    Refusals(Problem problem) {
        this.problem = problem;
    }

    /** What is known of the candidates of one slot beside what is decided. */
    private static final class Row {
        private final long[] asked;
        private final long[] refused;

        Row(int candidates) {
            asked = new long[(candidates + 63) / 64];
            refused = new long[asked.length];
        }
    }

    /** The candidates, by index, that a rule lets into a slot that is open. */
    IntPredicate allowed(Rule rule, SlotTable open, Unfinished it) {
        if (rule.reads().size() > MOST_SLOTS) {
            return i -> !refuses(rule, open.candidate(i), it);
        }
        Row row = row(rule, open, it);
        int[] like = like(rule, open);
        return i -> {
            int first = like[i];
            if (!SlotTable.has(row.asked, first)) {
                row.asked[first >> 6] |= 1L << first;
                row.refused[first >> 6] |=
                        refuses(rule, open.candidate(first), it) ? 1L << first : 0;
            }
            return !SlotTable.has(row.refused, first);
        };
    }

    /** For each candidate of an open slot the first one that the rule can't tell from it. */
    private int[] like(Rule rule, SlotTable open) {
        return like.computeIfAbsent(rule, any -> new EnumMap<>(Slot.class))
                .computeIfAbsent(
                        open.slot(),
                        slot -> {
                            Map<List<Object>, Integer> first = new HashMap<>();
                            int[] likes = new int[open.size()];
                            for (int i = 0; i < likes.length; i++) {
                                int index = i;
                                likes[i] =
                                        first.computeIfAbsent(
                                                asked(rule, open.candidate(i)), any -> index);
                            }
                            return likes;
                        });
    }

    private List<Object> asked(Rule rule, Candidate candidate) {
        Part part = candidate.partOrNull();
        return part == null
                ? List.of()
                : List.of(
                        candidate.pieces(),
                        problem.assessor().pricing().kept(candidate.slot(), part),
                        rule.asks(candidate.slot(), part));
    }

    private Row row(Rule rule, SlotTable open, Unfinished it) {
        if (rows > MOST_ROWS) {
            known.clear();
            rows = 0;
        }
        return known.computeIfAbsent(rule, any -> new HashMap<>())
                .computeIfAbsent(
                        decided(rule, open.slot(), it),
                        any -> {
                            rows++;
                            return new Row(open.size());
                        });
    }

    /** What the rule asks of the parts that are decided, and which slot is open. */
    private List<Object> decided(Rule rule, Slot open, Unfinished it) {
        List<Object> decided = new ArrayList<>(4 * MOST_SLOTS);
        decided.add(open);
        for (Slot slot : rule.reads()) {
            if (slot == open || !it.has(slot)) {
                continue;
            }
            Part part = it.part(slot);
            decided.add(slot);
            if (part != null) {
                decided.add(it.pieces(slot));
                decided.add(problem.assessor().pricing().kept(slot, part));
                decided.add(rule.asks(slot, part));
            }
        }
        return decided;
    }

    private static boolean refuses(Rule rule, Candidate candidate, Unfinished it) {
        it.decide(candidate);
        boolean refused = rule.forbids(rule.check(it.assessment()));
        it.undo(candidate.slot());
        return refused;
    }
}
