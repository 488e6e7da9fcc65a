package rigbrief.search;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessment;
import rigbrief.goal.Goal;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;

/** One state of the local search: a candidate in every slot, assessed on first use. */
final class Sketch {
    private final Problem problem;
    private final Objective objective;
    private final Candidate[] choices;
    private Assessment assessment;
    private final Map<Goal, Long> points = new IdentityHashMap<>();
    private boolean broken;

    Sketch(Problem problem, Objective objective, Candidate[] choices) {
        this.problem = problem;
        this.objective = objective;
        this.choices = choices;
    }

    Objective objective() {
        return objective;
    }

    /**
     * By how much a rule is broken. Asked of every rule before any goal, in the order of the
     * constraints.
     */
    long excess(Rule rule) {
        long excess = Problem.excess(rule, assessment());
        broken |= excess > 0;
        return excess;
    }

    long overLimit() {
        long excess = problem.overLimit(assessment());
        broken |= excess > 0;
        return excess;
    }

    long totalMinor() {
        return assessment().cost().totalMinor();
    }

    /**
     * A goal's points; 0 without weight, and for a broken build, whose utility nobody will enjoy.
     */
    long points(Goal goal) {
        if (broken) {
            return 0;
        }
        return points.computeIfAbsent(
                goal,
                any -> {
                    int weight = problem.weight(goal);
                    return weight == 0 ? 0 : (long) weight * goal.utility(assessment());
                });
    }

    private Assessment assessment() {
        if (assessment == null) {
            assessment = problem.assessor().assess(problem.build(List.of(choices)));
        }
        return assessment;
    }
}
