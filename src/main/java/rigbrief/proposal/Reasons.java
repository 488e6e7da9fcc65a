package rigbrief.proposal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
            Choice choice = chosenOver(slot);
            String text = capital(Merits.of(slot, it)) + ". " + words(choice);
            reasons.add(new PartReason(slot, text, Optional.of(choice)));
        }
        return reasons;
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private Choice chosenOver(Slot slot) {
        if (problem.assessor().pricing().kept(slot, standing.build().part(slot))) {
            return new Choice.Own();
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

    private static Choice nothingElse(int cheaper, Map<String, Integer> refusals) {
        Map.Entry<String, Integer> most = null;
        for (Map.Entry<String, Integer> refusal : refusals.entrySet()) {
            most = most == null || refusal.getValue() > most.getValue() ? refusal : most;
        }
        return most == null
                ? new Choice.Only(cheaper, Optional.empty(), 0)
                : new Choice.Only(cheaper, Optional.of(most.getKey()), most.getValue());
    }

    private static Optional<String> name(Slot slot, Standing other) {
        if (!other.build().has(slot)) {
            return Optional.empty();
        }
        int pieces = other.build().pieces(slot);
        return Optional.of(other.build().part(slot).name() + (pieces > 1 ? " x" + pieces : ""));
    }

    /** Money and the goal that differs most, as seen from the chosen part. */
    private Choice comparison(Slot slot, Standing other) {
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
        return new Choice.Over(
                name(slot, other),
                minor,
                Optional.ofNullable(most).map(goal -> goal.info().id()),
                most == null ? 0 : most.utility(it),
                most == null ? 0 : most.utility(compared));
    }

    private static String turnedAway(Choice.Only only) {
        return only.cheaper() == 1
                ? "the one cheaper rule %s turns away".formatted(only.rule().orElseThrow())
                : "of %d cheaper ones rule %s turns %d away"
                        .formatted(only.cheaper(), only.rule().orElseThrow(), only.turnedAway());
    }

    private String words(Choice choice) {
        if (choice instanceof Choice.Own) {
            return "The client's own, so nothing else was looked at.";
        }
        if (choice instanceof Choice.Only only) {
            return only.rule().isEmpty()
                    ? "Nothing else on offer keeps every rule in this place."
                    : "Nothing else keeps every rule here; %s.".formatted(turnedAway(only));
        }
        Choice.Over over = (Choice.Over) choice;
        return "Chosen over %s: %s."
                .formatted(over.other().orElse("leaving the place empty"), difference(over));
    }

    private String difference(Choice.Over over) {
        boolean samePrice = over.dearerMinor() == 0;
        String money = samePrice ? "same price" : money(over.dearerMinor());
        if (over.goal().isEmpty()) {
            return samePrice ? "the same in everything that counts here" : money;
        }
        return String.format(
                Locale.ROOT,
                "%s, %s %.2f against %.2f",
                money,
                over.goal().get(),
                over.tenThousandths() / (double) Goal.FULL,
                over.otherTenThousandths() / (double) Goal.FULL);
    }

    private String money(long minor) {
        Money amount = Money.ofMinor(Math.abs(minor), problem.assessor().brief().currency());
        return amount + (minor > 0 ? " dearer" : " cheaper");
    }
}
