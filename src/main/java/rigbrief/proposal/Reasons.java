package rigbrief.proposal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rigbrief.assess.Assessment;
import rigbrief.goal.Goal;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.quantity.Money;
import rigbrief.rule.Rule;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.Standing;

/**
 * Says of every part what it does for the brief, and what it was chosen over.
 *
 * <p>What it was chosen over is found by putting every other candidate of its slot in its place,
 * all else unchanged: the best sound one is the runner-up; where none is sound, the rule that turns
 * most of the cheaper ones away is named.
 */
final class Reasons {
    private final Problem problem;
    private final Standing standing;
    private final Objective objective;
    private final Assessment it;

    Reasons(Problem problem, Standing standing, Objective objective) {
        this.problem = problem;
        this.standing = standing;
        this.objective = objective;
        this.it = problem.assessor().assess(standing.build());
    }

    /** One reason per filled slot, in slot order. */
    List<PartReason> all() {
        List<PartReason> reasons = new ArrayList<>();
        for (Slot slot : standing.build().filled().keySet()) {
            reasons.add(
                    new PartReason(slot, capital(Merits.of(slot, it)) + ". " + chosenOver(slot)));
        }
        return reasons;
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private String chosenOver(Slot slot) {
        if (problem.assessor().pricing().kept(slot, standing.build().part(slot))) {
            return "The client's own, so nothing else was looked at.";
        }
        Standing runnerUp = null;
        Map<String, Integer> refusals = new LinkedHashMap<>();
        int cheaper = 0;
        for (Candidate other : problem.candidates().of(slot)) {
            if (other != standing.choices().get(slot.ordinal())) {
                Standing swapped = swapped(other);
                if (swapped.sound() && swapped.betterThan(runnerUp, objective)) {
                    runnerUp = swapped;
                }
                if (swapped.totalMinor() < standing.totalMinor()) {
                    cheaper++;
                    refusal(swapped, refusals);
                }
            }
        }
        return runnerUp != null ? comparison(slot, runnerUp) : nothingElse(cheaper, refusals);
    }

    private Standing swapped(Candidate other) {
        List<Candidate> choices = new ArrayList<>(standing.choices());
        choices.set(other.slot().ordinal(), other);
        return problem.standing(choices);
    }

    private void refusal(Standing swapped, Map<String, Integer> refusals) {
        if (!swapped.sound()) {
            Assessment other = problem.assessor().assess(swapped.build());
            for (Rule rule : problem.rules()) {
                if (Problem.askable(rule, other.build()) && rule.forbids(rule.check(other))) {
                    refusals.merge(rule.info().id(), 1, Integer::sum);
                    return;
                }
            }
        }
    }

    private static String nothingElse(int cheaper, Map<String, Integer> refusals) {
        if (cheaper == 0 || refusals.isEmpty()) {
            return "Nothing else on offer keeps every rule in this place.";
        }
        Map.Entry<String, Integer> most = null;
        for (Map.Entry<String, Integer> refusal : refusals.entrySet()) {
            most = most == null || refusal.getValue() > most.getValue() ? refusal : most;
        }
        return "Nothing else keeps every rule here; of %d cheaper ones rule %s turns %d away."
                .formatted(cheaper, most.getKey(), most.getValue());
    }

    private String comparison(Slot slot, Standing other) {
        String name =
                other.build().has(slot)
                        ? other.build().part(slot).name()
                                + (other.build().pieces(slot) > 1
                                        ? " x" + other.build().pieces(slot)
                                        : "")
                        : "leaving the place empty";
        return "Chosen over %s: %s.".formatted(name, difference(other));
    }

    /** Money and the goal that differs most, as seen from the chosen part. */
    private String difference(Standing other) {
        long minor = standing.totalMinor() - other.totalMinor();
        Assessment compared = problem.assessor().assess(other.build());
        Goal most = null;
        long mostPoints = 0;
        for (Goal goal : problem.goals()) {
            long points = (long) problem.weight(goal) * (goal.utility(it) - goal.utility(compared));
            boolean larger = Math.abs(points) > Math.abs(mostPoints);
            if (!goal.info().id().equals("value") && larger) {
                most = goal;
                mostPoints = points;
            }
        }
        String money = minor == 0 ? "same price" : money(minor);
        if (most == null) {
            return minor == 0 ? "the same in everything that counts here" : money;
        }
        return "%s, %s %.2f against %.2f"
                .formatted(
                        money,
                        most.info().id(),
                        most.utility(it) / (double) Goal.FULL,
                        most.utility(compared) / (double) Goal.FULL);
    }

    private String money(long minor) {
        Money amount = Money.ofMinor(Math.abs(minor), problem.assessor().brief().currency());
        return amount + (minor > 0 ? " dearer" : " cheaper");
    }
}
