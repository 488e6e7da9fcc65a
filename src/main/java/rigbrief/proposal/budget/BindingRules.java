package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessment;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;
import rigbrief.search.Problem;
import rigbrief.search.Standing;

/**
 * Which rules keep a build from being cheaper: every cheaper part is put in the place of each part,
 * all else unchanged, and the rule that refuses it is counted.
 */
final class BindingRules {
    private static final int MOST = 3;

    private final Problem problem;
    private final Standing standing;

    BindingRules(Problem problem, Standing standing) {
        this.problem = problem;
        this.standing = standing;
    }

    /** Whether some cheaper part can take the place of another, all else unchanged. */
    boolean cheaperFits() {
        for (Slot slot : Slot.values()) {
            for (Assessment it : cheaper(slot)) {
                if (problem.rules().stream().noneMatch(rule -> refuses(rule, it))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The rules that refuse most, one per slot. */
    List<Turned> most() {
        List<Turned> refusals = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            count(slot).entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .ifPresent(
                            most -> refusals.add(new Turned(most.getKey(), slot, most.getValue())));
        }
        return refusals.stream()
                .sorted(Comparator.comparingInt(Turned::count).reversed())
                .limit(MOST)
                .toList();
    }

    private Map<String, Integer> count(Slot slot) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Assessment it : cheaper(slot)) {
            problem.rules().stream()
                    .filter(rule -> refuses(rule, it))
                    .findFirst()
                    .ifPresent(rule -> counts.merge(rule.info().id(), 1, Integer::sum));
        }
        return counts;
    }

    /** The builds that cost less with another part in a slot, sound or not. */
    private List<Assessment> cheaper(Slot slot) {
        List<Assessment> cheaper = new ArrayList<>();
        for (Candidate candidate : problem.candidates().of(slot)) {
            if (candidate != standing.choices().get(slot.ordinal())) {
                List<Candidate> choices = new ArrayList<>(standing.choices());
                choices.set(slot.ordinal(), candidate);
                Assessment it = problem.assessor().assess(problem.build(choices));
                if (it.cost().totalMinor() < standing.totalMinor()) {
                    cheaper.add(it);
                }
            }
        }
        return cheaper;
    }

    private static boolean refuses(Rule rule, Assessment it) {
        return Problem.askable(rule, it.build()) && rule.forbids(rule.check(it));
    }
}
