package rigbrief.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;

/**
 * Which candidates of two slots go together, by the rules that read no third slot.
 *
 * <p>Rows are made when first asked for, by asking the rule objects themselves, of like candidates
 * only once.
 */
final class PairTable {
    private static final int SLOTS = Slot.values().length;

    private final Problem problem;
    private final Rule[][][] rules = new Rule[SLOTS][SLOTS][];
    private final long[][][][] rows = new long[SLOTS][SLOTS][][];
    private final int[][][] like = new int[SLOTS][SLOTS][];

    PairTable(Problem problem) {
        this.problem = problem;
        for (Slot a : Slot.values()) {
            for (Slot b : Slot.values()) {
                List<Rule> both = new ArrayList<>();
                for (Rule rule : problem.rules()) {
                    if (a != b
                            && rule.reads().size() == 2
                            && rule.reads().contains(a)
                            && rule.reads().contains(b)) {
                        both.add(rule);
                    }
                }
                rules[a.ordinal()][b.ordinal()] = both.toArray(Rule[]::new);
            }
        }
    }

    /** Whether a rule reads just these two slots. */
    boolean related(Slot a, Slot b) {
        return rules[a.ordinal()][b.ordinal()].length > 0;
    }

    /** Candidates of slot b that go with one of slot a; null when no rule reads just these two. */
    long[] row(Candidate chosen, Slot b) {
        Slot a = chosen.slot();
        if (rules[a.ordinal()][b.ordinal()].length == 0) {
            return null;
        }
        long[][] known = rows[a.ordinal()][b.ordinal()];
        if (known == null) {
            known = new long[problem.candidates().of(a).size()][];
            rows[a.ordinal()][b.ordinal()] = known;
        }
        int first = like(a, b)[chosen.index()];
        if (known[first] == null) {
            known[first] = compute(problem.candidates().of(a).get(first), b);
        }
        return known[first];
    }

    /** For each candidate of slot a the first one that the rules about b can't tell from it. */
    private int[] like(Slot a, Slot b) {
        int[] known = like[a.ordinal()][b.ordinal()];
        if (known == null) {
            Map<List<Object>, Integer> first = new HashMap<>();
            known =
                    problem.candidates().of(a).stream()
                            .mapToInt(it -> first.computeIfAbsent(asked(it, b), any -> it.index()))
                            .toArray();
            like[a.ordinal()][b.ordinal()] = known;
        }
        return known;
    }

    private List<Object> asked(Candidate candidate, Slot b) {
        Slot a = candidate.slot();
        Part part = candidate.partOrNull();
        List<Object> asked = new ArrayList<>();
        if (part != null) {
            asked.add(candidate.pieces());
            asked.add(problem.assessor().pricing().kept(a, part));
            for (Rule rule : rules[a.ordinal()][b.ordinal()]) {
                asked.add(rule.asks(a, part));
            }
        }
        return asked;
    }

    private long[] compute(Candidate chosen, Slot b) {
        List<Candidate> others = problem.candidates().of(b);
        int[] likeOther = like(b, chosen.slot());
        long[] bits = new long[(others.size() + 63) / 64];
        Part[] parts = new Part[SLOTS];
        int[] pieces = new int[SLOTS];
        parts[chosen.slot().ordinal()] = chosen.partOrNull();
        pieces[chosen.slot().ordinal()] = chosen.pieces();
        for (Candidate other : others) {
            int first = likeOther[other.index()];
            boolean goes;
            if (first < other.index()) {
                goes = SlotTable.has(bits, first);
            } else {
                parts[b.ordinal()] = other.partOrNull();
                pieces[b.ordinal()] = other.pieces();
                goes = together(chosen.slot(), b, Build.of(parts, pieces));
            }
            if (goes) {
                bits[other.index() >> 6] |= 1L << other.index();
            }
        }
        return bits;
    }

    private boolean together(Slot a, Slot b, Build pair) {
        Assessment it = problem.assessor().assess(pair);
        for (Rule rule : rules[a.ordinal()][b.ordinal()]) {
            if (rule.forbids(rule.check(it))) {
                return false;
            }
        }
        return true;
    }
}
