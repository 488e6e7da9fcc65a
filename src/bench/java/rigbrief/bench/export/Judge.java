package rigbrief.bench.export;

import java.util.Collection;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;
import rigbrief.search.Problem;

/** Asks the program's own rule objects about some slots of a choice. Confined to one thread. */
public final class Judge {
    private static final int SLOTS = Slot.values().length;

    private final Problem problem;
    private final List<List<Candidate>> domains;

    Judge(Problem problem, List<List<Candidate>> domains) {
        this.problem = problem;
        this.domains = domains;
    }

    /**
     * Whether a rule forbids what some slots hold; the other slots stay empty.
     *
     * @param choice by slot, the place of its candidate in the slot's domain
     */
    public boolean broken(Rule rule, int[] choice, Collection<Slot> filled) {
        return rule.forbids(rule.check(assess(choice, filled)));
    }

    Assessment assess(int[] choice, Collection<Slot> filled) {
        Part[] parts = new Part[SLOTS];
        int[] pieces = new int[SLOTS];
        for (Slot slot : filled) {
            Candidate candidate = domains.get(slot.ordinal()).get(choice[slot.ordinal()]);
            parts[slot.ordinal()] = candidate.partOrNull();
            pieces[slot.ordinal()] = candidate.pieces();
        }
        return problem.assessor().assess(Build.of(parts, pieces));
    }
}
