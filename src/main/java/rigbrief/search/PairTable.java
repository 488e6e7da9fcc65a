package rigbrief.search;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;

/**
 * Which candidates of two slots go together, by the rules that read no third slot.
 *
 * <p>Rows are made when first asked for, by asking the rule objects themselves.
 */
final class PairTable {
    private static final int SLOTS = Slot.values().length;

    private final Problem problem;
    private final Rule[][][] rules = new Rule[SLOTS][SLOTS][];
    private final long[][][][] rows = new long[SLOTS][SLOTS][][];

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
        if (known[chosen.index()] == null) {
            known[chosen.index()] = compute(chosen, b);
        }
        return known[chosen.index()];
    }

    private long[] compute(Candidate chosen, Slot b) {
        List<Candidate> others = problem.candidates().of(b);
        long[] bits = new long[(others.size() + 63) / 64];
        Part[] parts = new Part[SLOTS];
        int[] pieces = new int[SLOTS];
        parts[chosen.slot().ordinal()] = chosen.partOrNull();
        pieces[chosen.slot().ordinal()] = chosen.pieces();
        for (Candidate other : others) {
            parts[b.ordinal()] = other.partOrNull();
            pieces[b.ordinal()] = other.pieces();
            if (together(chosen.slot(), b, Build.of(parts, pieces))) {
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
