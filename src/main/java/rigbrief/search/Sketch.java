package rigbrief.search;

import java.util.List;
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

    Sketch(Problem problem, Objective objective, Candidate[] choices) {
        this.problem = problem;
        this.objective = objective;
        this.choices = choices;
    }

    Objective objective() {
        return objective;
    }

    long excess(Rule rule) {
        return Problem.excess(rule, assessment());
    }

    long overLimit() {
        return problem.overLimit(assessment());
    }

    long totalMinor() {
        return assessment().cost().totalMinor();
    }

    /** A goal's points; 0 for a goal without weight. */
    long points(Goal goal) {
        int weight = problem.weight(goal);
        return weight == 0 ? 0 : (long) weight * goal.utility(assessment());
    }

    private Assessment assessment() {
        if (assessment == null) {
            assessment = problem.assessor().assess(problem.build(List.of(choices)));
        }
        return assessment;
    }
}
