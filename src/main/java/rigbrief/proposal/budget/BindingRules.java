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

    private record Refusal(Slot slot, String rule, int count) {
        String words() {
            return "rule %s, which turns %d cheaper %s away from slot %s"
                    .formatted(rule, count, count == 1 ? "choice" : "choices", slot.word());
        }
    }

    private final Problem problem;
    private final Standing standing;

    BindingRules(Problem problem, Standing standing) {
        this.problem = problem;
        this.standing = standing;
    }

    /** The rules that refuse most, one per slot, in words. */
    List<String> words() {
        List<Refusal> refusals = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            count(slot).entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .ifPresent(
                            most ->
                                    refusals.add(
                                            new Refusal(slot, most.getKey(), most.getValue())));
        }
        return refusals.stream()
                .sorted(Comparator.comparingInt(Refusal::count).reversed())
                .limit(MOST)
                .map(Refusal::words)
                .toList();
    }

    private Map<String, Integer> count(Slot slot) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Candidate candidate : problem.candidates().of(slot)) {
            if (candidate != standing.choices().get(slot.ordinal())) {
                List<Candidate> choices = new ArrayList<>(standing.choices());
                choices.set(slot.ordinal(), candidate);
                Assessment it = problem.assessor().assess(problem.build(choices));
                if (it.cost().totalMinor() < standing.totalMinor()) {
                    refuser(it, counts);
                }
            }
        }
        return counts;
    }

    private void refuser(Assessment it, Map<String, Integer> counts) {
        for (Rule rule : problem.rules()) {
            if (Problem.askable(rule, it.build()) && rule.forbids(rule.check(it))) {
                counts.merge(rule.info().id(), 1, Integer::sum);
                return;
            }
        }
    }
}
