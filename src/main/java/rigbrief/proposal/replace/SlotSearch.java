package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessor;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Candidates;
import rigbrief.presolve.ReplacementCandidates;
import rigbrief.rule.Rules;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SharedTables;
import rigbrief.search.Standing;

/** Asks the certifier for the best build in which some slots may change and all others stay. */
final class SlotSearch {
    private final Assessor assessor;
    private final ReplacementCandidates candidates;
    private final Clauses clauses;
    private final Limits limits;
    private final List<Goal> goals = new ArrayList<>();
    private long steps;
    private long mostSteps;
    private int searches;
    private boolean complete = true;

    SlotSearch(
            Assessor assessor, ReplacementCandidates candidates, Clauses clauses, Limits limits) {
        this.assessor = assessor;
        this.candidates = candidates;
        this.clauses = clauses;
        this.limits = limits;
        this.mostSteps = limits.steps();
        for (Goal goal : Goals.ALL) {
            if (assessor.brief().wishes().weight(goal.info().id()) > 0) {
                goals.add(goal);
            }
        }
    }

    /**
     * The best sound build.
     *
     * @param changing slots that may change
     * @param limitMinor most that it may cost
     * @param rival a build to beat; the answer is this very one when nothing beats it
     */
    Optional<Standing> best(
            Set<Slot> changing, Objective objective, long limitMinor, Optional<Standing> rival) {
        Candidates some = some(changing);
        if (some.impossible()) {
            return rival;
        }
        Problem problem = problem(some, limitMinor);
        Optional<Standing> start = emptied(problem, changing, objective, rival);
        Certificate certificate =
                new Certifier(problem, objective, Math.max(1, mostSteps - steps), limits.stop())
                        .run(start);
        searches++;
        steps += certificate.steps();
        complete &= certificate.complete();
        return certificate.best();
    }

    /** Whether any sound build exists; empty when the steps ran out before that was known. */
    Optional<Boolean> exists(Set<Slot> changing, long limitMinor) {
        Candidates some = some(changing);
        if (some.impossible()) {
            return Optional.of(false);
        }
        Certificate certificate =
                new Certifier(
                                problem(some, limitMinor),
                                Objective.leastMoney(),
                                Math.max(1, mostSteps - steps),
                                limits.stop())
                        .untilFirst()
                        .run(Optional.empty());
        searches++;
        steps += certificate.steps();
        if (certificate.best().isPresent()) {
            return Optional.of(true);
        }
        return certificate.complete() ? Optional.of(false) : Optional.empty();
    }

    private Candidates some(Set<Slot> changing) {
        int mask = Clauses.mask(changing);
        return candidates.changing(changing, candidate -> clauses.allow(candidate, mask));
    }

    private Problem problem(Candidates some, long limitMinor) {
        return new Problem(assessor, some, Rules.ALL, goals, limitMinor, new SharedTables());
    }

    /**
     * A build for which nothing is left to buy pays for no new delivery, which the certifier's
     * bounds do not see; so leaving the slots empty is tried here.
     */
    private Optional<Standing> emptied(
            Problem problem, Set<Slot> changing, Objective objective, Optional<Standing> rival) {
        List<Candidate> choices = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            List<Candidate> list = problem.candidates().of(slot);
            Candidate choice = list.get(0);
            if (changing.contains(slot) && !choice.none()) {
                return rival;
            }
            choices.add(choice);
        }
        Standing standing = problem.standing(choices);
        boolean better =
                standing.sound()
                        && standing.totalMinor() <= problem.limitMinor()
                        && standing.betterThan(rival.orElse(null), objective);
        return better ? Optional.of(standing) : rival;
    }

    /** Allows as many steps again. */
    void extend() {
        mostSteps += limits.steps();
        complete = true;
    }

    /** Whether every search so far went to its end. */
    boolean complete() {
        return complete;
    }

    /** Whether all steps are used up. */
    boolean exhausted() {
        return steps >= mostSteps || limits.stop().getAsBoolean();
    }

    long steps() {
        return steps;
    }

    int searches() {
        return searches;
    }
}
